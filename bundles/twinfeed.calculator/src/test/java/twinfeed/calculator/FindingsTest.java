// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;

/** A pressure of 1.8 bar is found where 1.5 bar have to be there, and the like. */
class FindingsTest {
    private static final Check PRESSURE =
            Check.of("made.pressure", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.PRESSURE, "survey.notes");
    private static final Check ADVICE = Check.of("made.advice", FindingClass.ADVICE, LimitType.AT_MOST, Kind.RATIO);

    private final Survey survey = SurveyFactory.eINSTANCE.createSurvey();
    private final Findings findings = new Findings("made-up", new Readings(survey), Fixtures.candidate());

    private static Finding.Figures printed(Finding finding) {
        return Objects.requireNonNull(finding.printed());
    }

    private Finding last() {
        return findings.list().get(findings.list().size() - 1);
    }

    @Test
    void whatIsSaidOfAFindingIsKept() {
        Condition january = Condition.of(new Intake(1, 8), 230.0, new DrawOffState(0, List.of()));
        Series curve = new Series(
                "curve",
                Series.Axis.of("length", Kind.LENGTH),
                Series.Axis.of("pressure", Kind.PRESSURE),
                List.of(),
                new double[] {0, 5},
                new double[] {3e5, 1.8e5});
        Remedy work = Fixtures.work("pump");
        findings.on(PRESSURE)
                .compare(1.2e5, 1.5e5)
                .variant("gauge")
                .condition(january)
                .argument("by", "scale")
                .source("maker's instructions")
                .series(() -> curve)
                .remedy(work)
                .working(() -> Working.start()
                        .input("p", "pressure", 1.2, "bar", "survey")
                        .build())
                .limitIs("leastPressure", "heater[h95].pressure")
                .add();
        Finding finding = last();
        assertEquals("made-up", finding.calculator());
        assertEquals(Outcome.FAILS, finding.outcome());
        assertEquals(new Finding.Figures(1.2e5, 1.5e5, -3e4, true), finding.figures());
        assertEquals(1.2, printed(finding).value(), 1e-12);
        assertEquals(1.5, printed(finding).limit(), 1e-12);
        assertEquals(-0.3, printed(finding).margin(), 1e-12);
        assertSame(finding.figures(), finding.limited());
        assertEquals(january, finding.condition());
        assertEquals("gauge", finding.variant());
        assertEquals(Map.of("by", "scale"), finding.arguments());
        assertEquals("maker's instructions", finding.source());
        assertEquals(List.of(curve), finding.series());
        assertEquals(List.of(work), finding.remedies());
        assertTrue(finding.rulesOut() && finding.stands());
        assertEquals(
                List.of(
                        new Step("lim", "leastPressure", 1.5, "bar", null, "", "heater[h95].pressure"),
                        new Step("p", "pressure", 1.2, "bar", null, "survey", "")),
                finding.working().steps());
    }

    @Test
    void aFigureThatIsOnlyReportedHasNoLimit() {
        findings.on(PRESSURE).report(1.8e5).limitIs("leastPressure", "").add();
        assertEquals(Outcome.PASSES, last().outcome());
        assertNull(last().limited());
        assertEquals(1.8, printed(last()).value(), 1e-12);
        assertEquals(0, printed(last()).margin());
        assertFalse(printed(last()).limited());
        findings.on(PRESSURE)
                .outcome(Outcome.NOT_APPLICABLE)
                .limitIs("leastPressure", "")
                .add();
        assertNull(last().figures());
        assertNull(last().printed());
        assertNull(last().limited());
        assertEquals(Working.none(), last().working());
        assertThrows(IllegalArgumentException.class, () -> findings.on(PRESSURE).report(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> findings.on(PRESSURE).compare(0, Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> new Finding.Figures(0, 0, Double.NEGATIVE_INFINITY, true));
    }

    /** From 5 % to 95 % nobody can tell, whatever the figures as taken say. */
    @Test
    void anOutcomeIsTooCloseToCallWhereItsChanceIsNeitherSmallNorLarge() {
        findings.on(PRESSURE)
                .compare(1.8e5, 1.5e5)
                .remedy(Fixtures.work("pump"))
                .add();
        Finding taken = last();
        assertEquals(List.of(), taken.remedies(), "it passes");
        for (double chance : new double[] {0, 0.05, 0.95, 1}) {
            Finding sure = taken.withChance(new PassProbability(chance, new MarginInterval(0, 1, "")));
            assertEquals(Outcome.PASSES, sure.outcome());
            assertEquals(new PassProbability(chance, new MarginInterval(0, 1, "")), sure.chance());
            assertFalse(sure.stands() || sure.rulesOut());
        }
        for (double chance : new double[] {0.051, 0.5, 0.949}) {
            Finding close = taken.withChance(new PassProbability(chance, new MarginInterval(0, 1, "")));
            assertEquals(Outcome.TOO_CLOSE, close.outcome());
            assertTrue(close.stands());
            assertFalse(close.rulesOut());
            assertEquals(List.of("pump"), Fixtures.works(close));
        }
        findings.on(ADVICE).compare(2, 1).add();
        assertEquals(Outcome.FAILS, last().outcome());
        assertFalse(last().stands() || last().rulesOut(), "advice rules nothing out");
    }

    @Test
    void aCheckWaitsForItsReadingsAndForWhatOthersProvide() {
        assertTrue(findings.blocked(PRESSURE));
        assertEquals(List.of("survey.notes"), last().missing());
        assertEquals(Outcome.CANNOT_TELL, last().outcome());
        survey.setNotes("quiet street");
        Findings later = new Findings("made-up", new Readings(survey), Fixtures.candidate());
        assertFalse(later.blocked(PRESSURE));
        SharedQuantities shared = new SharedQuantities(grid());
        shared.markMissing(SharedQuantity.DESIGN_CURRENT, List.of("heater.power"));
        assertTrue(later.blocked(ADVICE, shared, SharedQuantity.DESIGN_CURRENT));
        assertEquals(List.of("heater.power"), later.list().get(0).missing());
        shared.put(SharedQuantity.DESIGN_CURRENT, 40);
        assertFalse(later.blocked(ADVICE, shared, SharedQuantity.DESIGN_CURRENT));
        assertEquals(1, later.list().size());
    }

    @Test
    void whereOnlyFiguresAreWantedNothingElseIsWorkedOut() {
        Findings figures =
                Findings.figuresOnly("made-up", new Readings(survey), Fixtures.candidate(), Set.of("made.pressure"));
        assertTrue(figures.asks(List.of(ADVICE, PRESSURE)));
        assertFalse(figures.asks(List.of(ADVICE)));
        assertTrue(findings.asks(List.of(ADVICE)), "all are asked for otherwise");
        figures.on(PRESSURE)
                .compare(1.8e5, 1.5e5)
                .outcome(Outcome.TOO_CLOSE)
                .argument("by", "scale")
                .series(() -> {
                    throw new AssertionError("nobody looks at a curve");
                })
                .remedies(() -> {
                    throw new AssertionError("nobody looks for work");
                })
                .add();
        Finding finding = figures.list().get(0);
        assertEquals(1.8, printed(finding).value(), 1e-12);
        assertEquals(Map.of(), finding.arguments());
        assertEquals(List.of(), finding.series());
        assertEquals(List.of(), finding.remedies());
    }

    @Test
    void worksAreWorkedOutOnceAndOnlyWhenAskedFor() {
        List<String> asked = new ArrayList<>();
        findings.on(PRESSURE)
                .compare(1.2e5, 1.5e5)
                .remedies(() -> {
                    asked.add("pumps");
                    return List.of(Fixtures.work("pump"), Fixtures.work("tank"));
                })
                .remedy(Fixtures.work("valve"))
                .add();
        assertEquals(List.of(), asked);
        assertEquals(List.of("pump", "tank", "valve"), Fixtures.works(last()));
        assertEquals(3, last().remedies().size());
        assertEquals(List.of("pumps"), asked);
    }

    private static Grid grid() {
        return new Grid(
                List.of(new Intake(0, 5), new Intake(1, 8), new Intake(7, 18.4)),
                new double[] {216.2, 230},
                1,
                List.of(new DrawOffState(0, List.of()), new DrawOffState(1, List.of("basin"))));
    }

    @Test
    void sharedQuantitiesExtendOverTheGrid() {
        SharedQuantities shared = new SharedQuantities(grid());
        shared.put(SharedQuantity.TERMINAL_VOLTAGE, 212, 226);
        shared.put(SharedQuantity.TARGET_FLOW, 1, 2, 3, 4, 5, 6);
        shared.put(new SharedQuantity("made.intake", "K", SharedQuantity.Extent.INTAKE), 35, 32, 21.6);
        assertEquals(
                "current.design has 2 values instead of 1",
                assertThrows(IllegalArgumentException.class, () -> shared.put(SharedQuantity.DESIGN_CURRENT, 40, 41))
                        .getMessage());
        assertEquals(
                "current.design is not finite",
                assertThrows(
                                IllegalArgumentException.class,
                                () -> shared.put(SharedQuantity.DESIGN_CURRENT, Double.NaN))
                        .getMessage());
        assertArrayEquals(new double[] {212, 226}, shared.get(SharedQuantity.TERMINAL_VOLTAGE));
        assertEquals(
                "no calculator provided current.design",
                assertThrows(IllegalStateException.class, () -> shared.get(SharedQuantity.DESIGN_CURRENT))
                        .getMessage());
        // The third intake with the second voltage is the last of six.
        assertEquals(6, shared.get(SharedQuantity.TARGET_FLOW)[grid().index(2, 1)]);
        assertEquals(
                Condition.of(new Intake(7, 18.4), 230.0, new DrawOffState(1, List.of("basin"))),
                grid().condition(2, 1, 1));
    }

    @Test
    void sharedQuantitiesSayHowTheyWereFoundAndWhatTheyLack() {
        SharedQuantities shared = new SharedQuantities(grid());
        assertEquals(Working.none(), shared.working(SharedQuantity.TERMINAL_VOLTAGE, 1));
        shared.explain(
                SharedQuantity.TERMINAL_VOLTAGE,
                at -> Working.start().input("U", "voltage", at, "V", "").build());
        assertEquals(
                1,
                shared.working(SharedQuantity.TERMINAL_VOLTAGE, 1)
                        .steps()
                        .get(0)
                        .value());
        assertEquals(List.of(), shared.missing(SharedQuantity.DESIGN_CURRENT));
        shared.markMissing(SharedQuantity.DESIGN_CURRENT, List.of("heater.power", "heater.voltage"));
        shared.markMissing(SharedQuantity.DESIGN_CURRENT, List.of("survey.notes", "heater.power"));
        assertEquals(
                List.of("heater.power", "heater.voltage", "survey.notes"),
                shared.missing(SharedQuantity.DESIGN_CURRENT));
        SharedQuantities some = SharedQuantities.consumedOnly(grid(), Set.of(SharedQuantity.DESIGN_CURRENT));
        assertTrue(some.asks(List.of(SharedQuantity.TARGET_FLOW, SharedQuantity.DESIGN_CURRENT)));
        assertFalse(some.asks(List.of(SharedQuantity.TARGET_FLOW)));
        assertTrue(shared.asks(List.of(SharedQuantity.TARGET_FLOW)));
    }

    @Test
    void sharedQuantitiesAreComparedAndTakenOverOneByOne() {
        List<SharedQuantity> voltage = List.of(SharedQuantity.TERMINAL_VOLTAGE);
        List<SharedQuantity> current = List.of(SharedQuantity.DESIGN_CURRENT);
        SharedQuantities before = new SharedQuantities(grid());
        before.put(SharedQuantity.TERMINAL_VOLTAGE, 212, 226);
        before.explain(
                SharedQuantity.TERMINAL_VOLTAGE,
                at -> Working.start().input("U", "voltage", at, "V", "").build());
        before.markMissing(SharedQuantity.DESIGN_CURRENT, List.of("heater.power"));
        SharedQuantities now = new SharedQuantities(grid());
        assertFalse(now.same(before, voltage));
        assertFalse(now.same(before, current), "it lacks nothing yet");
        now.putAgain(before, List.of(SharedQuantity.TERMINAL_VOLTAGE, SharedQuantity.DESIGN_CURRENT));
        assertTrue(now.same(before, voltage) && now.same(before, current));
        assertFalse(now.has(SharedQuantity.DESIGN_CURRENT));
        assertEquals(1, now.working(SharedQuantity.TERMINAL_VOLTAGE, 0).steps().size());
        now.put(SharedQuantity.TERMINAL_VOLTAGE, 212, 225);
        assertFalse(now.same(before, voltage));
    }

    @Test
    void gridsAreTheSameByAllTheirConditions() {
        Grid grid = grid();
        assertTrue(grid.same(grid()));
        assertFalse(grid.same(new Grid(grid.intakes(), grid.voltages(), 0, grid.drawOffs())));
        assertFalse(grid.same(new Grid(grid.intakes().subList(0, 2), grid.voltages(), 1, grid.drawOffs())));
        assertFalse(grid.same(new Grid(grid.intakes(), new double[] {216, 230}, 1, grid.drawOffs())));
        assertFalse(grid.same(
                new Grid(grid.intakes(), grid.voltages(), 1, grid.drawOffs().subList(0, 1))));
        assertEquals("survey.winterIntake", new Intake(0, 5).origin());
        assertEquals("climate.month.7", new Intake(7, 18.4).origin());
    }

    @Test
    void aCurveHasAsManyOfEachAsPoints() {
        Series.Axis axis = Series.Axis.of("month", Kind.FLOW);
        Series months = new Series("flow", axis, axis, List.of("Jan", "Jul"), new double[] {1, 7}, new double[] {4, 6});
        assertArrayEquals(new double[] {1, 7}, months.x());
        assertArrayEquals(new double[] {4, 6}, months.y());
        assertEquals(Kind.FLOW, months.xAxis().unit().kind());
        assertThrows(
                IllegalArgumentException.class,
                () -> new Series("flow", axis, axis, List.of(), new double[1], new double[2]));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Series("flow", axis, axis, List.of("Jan"), new double[2], new double[2]));
        assertTrue(FeedProfile.is(FeedProfile.VOLTAGE));
        assertFalse(FeedProfile.is("flow"));
    }

    @Test
    void anAssumptionIsRecordedOnceWhereSomebodyWantsToKnow() {
        Assumptions assumptions = new Assumptions();
        assumptions.add("made-up", "tap", Map.of("height", 1.0), false);
        assumptions.add("made-up", "tap", Map.of("height", 1.0), false);
        assumptions.add("made-up", "tap", Map.of("height", 2.0), true);
        assertEquals(
                List.of(
                        new Assumptions.Assumption("made-up", "tap", Map.of("height", 1.0), false),
                        new Assumptions.Assumption("made-up", "tap", Map.of("height", 2.0), true)),
                assumptions.list());
        Assumptions nobodys = Assumptions.unrecorded();
        nobodys.add("made-up", "tap", Map.of(), false);
        assertEquals(List.of(), nobodys.list());
    }
}
