// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;

/**
 * One dwelling of a list, judged and priced.
 *
 * @param row its row in the list, from 1
 * @param name what it is called
 * @param judged what follows from its survey
 * @param quote its draft quote; absent if nothing can be offered
 * @param why why nothing can be offered; empty if something can
 */
record Dwelling(int row, String name, AssessedJob judged, @Nullable Quote quote, String why) {}
