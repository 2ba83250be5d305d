// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Context;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.RemedyKind;
import twinfeed.calculator.RemedyKind.Stage;
import twinfeed.calculator.engine.Runner;

/** Works as a person would try them: the cheapest stage first, what nobody declares last. */
class WorkOrderTest {
    /** A calculator that offers some kinds of work. */
    private record Offering(String id, List<RemedyKind> kinds) implements Calculator {
        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Offering.class)
                    .id(id)
                    .texts(Runner.TEXTS)
                    .remedies(kinds)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> {};
        }
    }

    private static final WorkOrder ORDER = new WorkOrder(List.of(
            new Offering("water", List.of(RemedyKind.of("pipe", Stage.PIPE), RemedyKind.of("strainer", Stage.FITTING))),
            new Offering(
                    "current",
                    List.of(
                            RemedyKind.of("cable", Stage.CABLE),
                            RemedyKind.of("pipe", Stage.OUTSIDE_PARTY),
                            RemedyKind.of("clip", Stage.FITTING),
                            RemedyKind.of("box", Stage.FITTING)))));

    private static Remedy work(String id, String kind) {
        return new Remedy(id, kind, Map.of(), List.of(), false, 0, survey -> {});
    }

    private static List<String> ordered(Remedy... works) {
        return ORDER.of(List.of(works)).stream().map(Remedy::id).toList();
    }

    @Test
    void stagesComeInTheirOrder() {
        assertEquals(
                List.of("strainer", "pipe", "cable"),
                ordered(work("cable", "cable"), work("pipe", "pipe"), work("strainer", "strainer")));
    }

    @Test
    void withinAStageCalculatorsComeByTheirIdAndKindsAsTheyDeclareThem() {
        assertEquals(
                List.of("clip", "box", "strainer"),
                ordered(work("box", "box"), work("strainer", "strainer"), work("clip", "clip")));
    }

    @Test
    void worksOfAKindComeByTheirIdAndUnknownKindsLast() {
        assertEquals(
                List.of("cable-10", "cable-16", "a"),
                ordered(work("a", "nobody's"), work("cable-16", "cable"), work("cable-10", "cable")));
    }
}
