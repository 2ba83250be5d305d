// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.DrawOffState;
import twinfeed.calculator.Finding;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Grid;
import twinfeed.calculator.Intake;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.model.assessment.FindingClass;
import twinfeed.units.Kind;

class GridFocusTest {
    private static final Check CHECK = Check.of("made.up", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);

    private static Grid focused(Condition... named) {
        List<Finding> findings = new ArrayList<>();
        for (Condition condition : named) {
            new FindingBuilder("made-up", CHECK, findings::add)
                    .compare(2, 1)
                    .condition(condition)
                    .add();
        }
        Grid all = new Grid(
                List.of(
                        new Intake(0, 5),
                        new Intake(1, 4),
                        new Intake(2, 9),
                        new Intake(3, 12),
                        new Intake(7, 18),
                        new Intake(8, 17)),
                new double[] {216.2, 225, 230, 240, 253},
                2,
                List.of(new DrawOffState(0, List.of()), new DrawOffState(1, List.of("basin"))));
        return new GridFocus(OptionResult.of(Fixtures.candidate(), findings)).apply(all);
    }

    private static List<Integer> months(Grid grid) {
        return grid.intakes().stream().map(Intake::month).toList();
    }

    @Test
    void theExtremesAndTheSurveysOwnVoltageStandBy() {
        Grid grid = focused(Condition.NONE);
        assertEquals(List.of(0, 1, 7), months(grid), "winter design, the coldest and the warmest month");
        assertArrayEquals(new double[] {216.2, 230, 253}, grid.voltages());
        assertEquals(1, grid.nominal());
        assertEquals(2, grid.drawOffs().size());
    }

    @Test
    void whatAFindingNamedStays() {
        Grid grid =
                focused(Condition.of(new Intake(3, 12), null, null), Condition.NONE, Condition.of(null, 240.0, null));
        assertEquals(List.of(0, 1, 3, 7), months(grid));
        assertArrayEquals(new double[] {216.2, 230, 240, 253}, grid.voltages());
        assertEquals(1, grid.nominal());
    }
}
