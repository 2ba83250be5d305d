// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.ServiceLoader;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Remedy;
import twinfeed.usecase.WorkOrder;

/** Works are proposed in the order in which a person would try them. */
class WorkOrderTest {
    private static Remedy work(String id, String kind) {
        return new Remedy(id, kind, Map.of(), List.of(), false, 0, survey -> {});
    }

    private static List<String> order(Remedy... works) {
        return WorkOrder.of(List.of(works)).stream().map(Remedy::id).toList();
    }

    @Test
    void theCheapestTestComesFirstAndThePumpLast() {
        assertEquals(
                List.of("task-test-apart", "strainer-clean", "repipe-main", "cable-10", "break-tank-pump"),
                order(
                        work("break-tank-pump", "breakTankPumpAfterMain"),
                        work("cable-10", "cable"),
                        work("repipe-main", "repipeMain"),
                        work("strainer-clean", "strainerClean"),
                        work("task-test-apart", "test-apart")));
    }

    @Test
    void whatTheOrderDoesNotKnowComesLastByItsName() {
        assertEquals(
                List.of("service-pipe", "a-stranger", "b-stranger"),
                order(work("b-stranger", "b"), work("a-stranger", "a"), work("service-pipe", "servicePipe")));
    }

    /** A calculator names each kind of its work in its messages: a new kind has to be given its place. */
    @Test
    void everyKindOfWorkHasItsPlace() throws Exception {
        TreeSet<String> kinds = new TreeSet<>();
        for (Calculator calculator : ServiceLoader.load(Calculator.class)) {
            Class<?> type = calculator.getClass();
            String base = type.getSimpleName().replace("Calculator", "");
            try (InputStream in = type.getResourceAsStream(base + ".properties")) {
                Properties texts = new Properties();
                texts.load(in);
                texts.stringPropertyNames().stream()
                        .filter(key -> key.startsWith("remedy."))
                        .forEach(key -> kinds.add(key.split("\\.")[1]));
            }
        }
        assertFalse(kinds.isEmpty());
        kinds.removeIf(WorkOrder::knows);
        assertEquals(new TreeSet<>(), kinds);
    }
}
