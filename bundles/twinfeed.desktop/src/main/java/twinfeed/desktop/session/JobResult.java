// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;

/**
 * What followed from one state of a survey.
 *
 * @param revision that state
 * @param complete whether tolerances were counted and work was looked for; until then verdicts are not known
 * @param judged findings and plans; null if the survey could not be judged
 * @param quote the draft of the quote; null without findings or without a price book
 * @param trouble why something is lacking, in words; empty if nothing is
 */
public record JobResult(
        long revision, boolean complete, @Nullable AssessedJob judged, @Nullable Quote quote, String trouble) {}
