// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import java.util.List;
import twinfeed.calculator.RemedyKind;
import twinfeed.calculator.RemedyKind.Stage;

/** The kinds of work against too high a demand, in the order in which they are proposed, with the price-book codes that they need. */
final class DemandRemedyKinds {
    static final List<RemedyKind> ALL = List.of(
            RemedyKind.of("storage-time-switch", Stage.LOAD, "storage-time-switch"),
            RemedyKind.of("vehicle-load-management", Stage.LOAD, "vehicle-load-management"),
            RemedyKind.of("priority-unit", Stage.LOAD, "priority-unit"),
            RemedyKind.of("consumer-unit", Stage.CONSUMER_UNIT, "consumer-unit", "notification"),
            RemedyKind.of("operator-fuse", Stage.OUTSIDE_PARTY, "operator-fuse"));

    private DemandRemedyKinds() {}
}
