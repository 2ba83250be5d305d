// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.visit.FaultSheet;

/**
 * What one state of a survey says about the fault of the unit that is there.
 *
 * @param revision that state, as {@link FaultSearch} counts them
 * @param priced whether repair and replacement were priced
 * @param sheet the job sheet; null if none could be made
 * @param trouble why there is none, in words; empty if there is one
 */
public record FaultResult(long revision, boolean priced, @Nullable FaultSheet sheet, String trouble) {}
