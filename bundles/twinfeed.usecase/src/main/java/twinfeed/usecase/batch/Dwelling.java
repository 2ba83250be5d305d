// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;

/**
 * One dwelling of a list, judged and priced.
 *
 * @param row its row in the list, from 1
 * @param name what it is called
 * @param readings where each reading of the list's columns is from
 * @param judged what follows from its survey
 * @param quote its draft quote; absent if nothing can be offered
 * @param why why nothing can be offered; empty if something can
 * @param faults what is likely to have failed; absent if nothing is complained of, or there is no unit
 */
record Dwelling(
        int row,
        String name,
        List<DwellingReading> readings,
        AssessedJob judged,
        @Nullable Quote quote,
        String why,
        @Nullable FaultSheet faults) {
    Dwelling {
        readings = List.copyOf(readings);
    }
}
