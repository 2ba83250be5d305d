// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.units.DisplayUnit;

/** A shower of 9.2 kW at 230 V takes 40 A; 10 m of cable with 4.4 mV/(A m) drop 1.76 V. */
class WorkingTest {
    private static Working.Builder current() {
        return Working.start()
                .input("P", "power", 9200, "W", "rating plate", "heater[h92].power")
                .input("U", "voltage", 230, "V", "survey")
                .step("Ib", "designCurrent", "P / U", "A", "Ohm's law");
    }

    @Test
    void eachLineFollowsFromThoseAboveIt() {
        Working.Builder builder = current()
                .input("L", "length", 10, "m", "survey")
                .input("z", "drop", 0.0044, "V/(A m)", "table")
                .step("dU", "voltageDrop", "z * Ib * L", "V", "");
        assertEquals(40, builder.value("Ib"));
        assertEquals(1.76, builder.value("dU"), 1e-12);
        assertTrue(builder.has("dU"));
        assertFalse(builder.has("dV"));
        assertEquals(
                "no symbol dV",
                assertThrows(IllegalArgumentException.class, () -> builder.value("dV"))
                        .getMessage());
        List<Step> steps = builder.build().steps();
        assertEquals(
                List.of("P", "U", "Ib", "L", "z", "dU"),
                steps.stream().map(Step::symbol).toList());
        assertEquals(new Step("P", "power", 9200, "W", null, "rating plate", "heater[h92].power"), steps.get(0));
        assertEquals(new Step("Ib", "designCurrent", 40, "A", "P / U", "Ohm's law", ""), steps.get(2));
    }

    @Test
    void aSymbolStandsForOneThing() {
        assertEquals(
                "symbol used twice: U",
                assertThrows(IllegalArgumentException.class, () -> current().input("U", "voltage", 230, "V", ""))
                        .getMessage());
    }

    @Test
    void aSharedPartIsTakenOverWithAnEndingOnItsSymbols() {
        Working part = current()
                .step("I3", "starCurrent", "max(P, 1e3) / (U * sqrt(3))", "A", "")
                .build();
        List<Step> taken = Working.start().include(part, "_2").build().steps();
        assertEquals(
                List.of(
                        new Step("P_2", "power", 9200, "W", null, "rating plate", "heater[h92].power"),
                        new Step("U_2", "voltage", 230, "V", null, "survey", ""),
                        new Step("Ib_2", "designCurrent", 40, "A", "P_2 / U_2", "Ohm's law", Origin.SHARED),
                        new Step(
                                "I3_2",
                                "starCurrent",
                                40 / Math.sqrt(3),
                                "A",
                                "max(P_2, 1e3) / (U_2 * sqrt(3))",
                                "",
                                Origin.SHARED)),
                taken.stream().map(WorkingTest::rounded).toList());
    }

    private static Step rounded(Step step) {
        double value = step.symbol().equals("I3_2") && Math.abs(step.value() - 23.094) < 0.001
                ? 40 / Math.sqrt(3)
                : step.value();
        return new Step(
                step.symbol(), step.meaning(), value, step.unit(), step.expression(), step.source(), step.origin());
    }

    @Test
    void linesThatAreThereAlreadyStay() {
        Working part = current().build();
        Working twice = current()
                .include(part, "")
                .include(part, "b")
                .include(part, "b")
                .build();
        assertEquals(
                List.of("P", "U", "Ib", "Pb", "Ub", "Ibb"),
                twice.steps().stream().map(Step::symbol).toList());
        assertEquals("", twice.steps().get(2).origin(), "the working's own line");
        Working.Builder other = Working.start().input("P", "power", 8500, "W", "survey");
        assertEquals(
                "symbol used twice: P",
                assertThrows(IllegalArgumentException.class, () -> other.include(part, ""))
                        .getMessage());
    }

    @Test
    void theRoundsOfASearchAreMarked() {
        Working searched = Working.start()
                .input("x0", "guess", 1, "", "")
                .round(1)
                .step("x1", "guess", "(x0 + 2 / x0) / 2", "", "")
                .round(2)
                .step("x2", "guess", "(x1 + 2 / x1) / 2", "", "")
                .round(0)
                .step("x", "root", "x2", "", "")
                .build();
        assertEquals(
                List.of("", "round.1", "round.2", ""),
                searched.steps().stream().map(Step::origin).toList());
        assertEquals(17 / 12.0, searched.steps().get(3).value(), 1e-15);
        Working taken = Working.start().include(searched, "").build();
        assertEquals(
                List.of("", "round.1", "round.2", Origin.SHARED),
                taken.steps().stream().map(Step::origin).toList());
    }

    @Test
    void anInputNamesItsSource() {
        Working working = Working.start()
                .rule("k", "k", RuleSets.standard(), "k", "")
                .input("d", "bore", DisplayUnit.MILLIMETRE.amount(0.0136), "pipe")
                .build();
        assertEquals(
                List.of(
                        new Step(
                                "k",
                                "k",
                                115,
                                "",
                                null,
                                "BS 7671 table 54.3: copper cpc in a thermoplastic cable (read)",
                                "rules.k"),
                        new Step("d", "bore", 13.6, "mm", null, "pipe", "")),
                working.steps());
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        assertEquals("heater[].power", Origin.heater(heater, "power"));
        heater.setId("h85");
        assertEquals("heater[h85].power", Origin.heater(heater, "power"));
    }

    @Test
    void aLineCanBePutAheadOfAllOthers() {
        Step limit = new Step("lim", "limit", 45, "A", null, "");
        Working after = current().build().after(limit);
        assertEquals(
                List.of("lim", "P", "U", "Ib"),
                after.steps().stream().map(Step::symbol).toList());
        assertEquals(List.of(limit), Working.none().after(limit).steps());
        assertEquals(List.of(), Working.none().steps());
    }

    @Test
    void aFigureIsFinite() {
        assertThrows(
                IllegalArgumentException.class,
                () -> Working.start().input("a", "a", 0, "", "").step("b", "b", "1 / a", "", ""));
    }
}
