// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.choices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.search.WorkCost;

/** A work that the estimator does not want is taken only where nothing else does. */
final class WorksLeftOutTest {
    private static final WorkCost.Source COSTS = WorksLeftOut.of(WorkCost.BY_COUNT, QuoteChoices.NONE.without("pump"));

    private static Remedy work(String id) {
        return new Remedy(id, id, Map.of(), List.of(), true, 3, survey -> {});
    }

    @Test
    void anyOtherSetThatDoesIsTakenBefore() {
        WorkCost unwanted = COSTS.of(List.of(work("pump")));
        WorkCost others = COSTS.of(List.of(work("main"), work("cable"), work("device")));
        assertTrue(others.compareTo(unwanted) < 0, others + " and " + unwanted);
        assertTrue(unwanted.compareTo(COSTS.of(List.of(work("pump"), work("main")))) < 0, "a work more costs more");
    }

    @Test
    void theOthersCostWhatTheyCost() {
        List<Remedy> works = List.of(work("main"), work("cable"));
        assertEquals(WorkCost.BY_COUNT.of(works), COSTS.of(works));
        assertEquals(3, COSTS.of(List.of(work("pump"))).leadDays());
        assertEquals(
                WorkCost.BY_COUNT.of(List.of(work("pump"))).price(),
                COSTS.of(List.of(work("pump"))).price());
    }
}
