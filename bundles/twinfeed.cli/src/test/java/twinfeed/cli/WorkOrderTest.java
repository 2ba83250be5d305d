// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.ServiceLoader;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.RemedyKind;
import twinfeed.usecase.WorkOrder;

/** Works are proposed in the order in which a person would try them. */
class WorkOrderTest {
    private static Remedy work(String id, String kind) {
        return new Remedy(id, kind, Map.of(), List.of(), false, 0, survey -> {});
    }

    private static List<Calculator> calculators() {
        List<Calculator> all = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(all::add);
        return all;
    }

    private static List<String> order(Remedy... works) {
        return new WorkOrder(calculators())
                .of(List.of(works)).stream().map(Remedy::id).toList();
    }

    @Test
    void theCheapestTestComesFirstAndThePumpLast() {
        assertEquals(
                List.of(
                        "task-test-apart",
                        "strainer-clean",
                        "repipe-main",
                        "cable-10",
                        "consumer-unit",
                        "operator-fuse-100",
                        "service-pipe",
                        "break-tank-pump"),
                order(
                        work("break-tank-pump", "breakTankPumpAfterMain"),
                        work("service-pipe", "servicePipe"),
                        work("operator-fuse-100", "operator-fuse"),
                        work("consumer-unit", "consumer-unit"),
                        work("cable-10", "cable"),
                        work("repipe-main", "repipeMain"),
                        work("strainer-clean", "strainerClean"),
                        work("task-test-apart", "test-apart")));
    }

    @Test
    void workOfNoDeclaredKindComesLastByItsName() {
        assertEquals(
                List.of("service-pipe", "a-stranger", "b-stranger"),
                order(work("b-stranger", "b"), work("a-stranger", "a"), work("service-pipe", "servicePipe")));
    }

    /** A calculator names each kind of its work in its messages: it has to declare the same kinds, and no others. */
    @Test
    void everyKindOfWorkIsDeclared() throws Exception {
        for (Calculator calculator : calculators()) {
            Class<?> type = calculator.getClass();
            String base = type.getSimpleName().replace("Calculator", "");
            TreeSet<String> worded = new TreeSet<>();
            try (InputStream in = type.getResourceAsStream(base + ".properties")) {
                Properties texts = new Properties();
                texts.load(in);
                texts.stringPropertyNames().stream()
                        .filter(key -> key.startsWith("remedy."))
                        .forEach(key -> worded.add(key.split("\\.")[1]));
            }
            TreeSet<String> declared = new TreeSet<>();
            calculator.descriptor().remedies().forEach(kind -> declared.add(kind.key()));
            assertEquals(worded, declared, base);
            assertFalse(
                    calculator.descriptor().remedies().stream()
                            .map(RemedyKind::codes)
                            .anyMatch(List::isEmpty),
                    base);
        }
    }
}
