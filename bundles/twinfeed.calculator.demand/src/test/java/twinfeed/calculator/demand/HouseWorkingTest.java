// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.FormulaCall;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.rules.OwnRules;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Power;

/** Where the figures of a house's demand come from, line by line, and what is left out of it. */
class HouseWorkingTest {
    @TempDir
    Path folder;

    private static final String LOADS = "survey.electricity.loads";

    private final Survey survey = Houses.house("120 A", "160 A");

    private List<Load> loads() {
        return survey.getElectricity().getLoads();
    }

    /** Lines of a working, each with what it is called and where it is from. */
    private static List<String> lines(Finding finding) {
        return finding.working().steps().stream()
                .filter(step -> step.symbol().startsWith("I") || step.symbol().startsWith("P"))
                .map(step -> step.source() + " <- " + step.origin())
                .toList();
    }

    @Test
    void everyLoadIsNamedWithTheReadingThatItsCurrentIsFrom() {
        Load lighting = loads().get(2);
        lighting.setCurrent(null);
        lighting.setPower(Power.valueOf("1.38 kW"));
        Finding fuse = DemandChecksTest.finding(survey, "demand.serviceFuse");
        List<String> lines = lines(fuse);
        assertTrue(lines.contains("cooker <- " + LOADS + "[cooker].current"), lines.toString());
        assertTrue(lines.contains("ring 1 <- " + LOADS + "[ring].current"), lines.toString());
        assertTrue(lines.contains("ring 2 <- " + LOADS + "[ring].current"), lines.toString());
        assertTrue(lines.contains("lighting <- " + LOADS + "[lighting].power"), lines.toString());
        assertTrue(lines.contains("upstairs shower <- " + LOADS + "[upstairs shower].current"), lines.toString());
        List<Step> steps = fuse.working().steps();
        double total = steps.stream()
                .filter(step -> step.symbol().equals("Id"))
                .findFirst()
                .orElseThrow()
                .value();
        assertEquals(DemandChecksTest.DEMAND_A, total, 1e-9);
    }

    @Test
    void aLoadWithoutANameIsKnownByItsNumber() {
        Load second = loads().get(1);
        second.setName(null);
        second.setCurrent(null);
        assertEquals(
                List.of(LOADS + "[2].current"),
                DemandChecksTest.finding(survey, "demand.serviceFuse").missing());
    }

    @Test
    void theUnitThatIsThereAndOneOfItsKindAddNoLoad() {
        Finding stronger = DemandChecksTest.finding(survey, "demand.asItIs");
        assertEquals(Outcome.NOT_APPLICABLE, outcome(stronger));
        Finding present = DemandChecksTest.finding(survey, "demand.asItIs", true);
        assertEquals(DemandChecksTest.DEMAND_A, present.printed().value(), 1e-9);
        assertFalse(present.working().steps().isEmpty());
        survey.setUnit(SurveyFactory.eINSTANCE.createPresentUnit());
        survey.getUnit().setHeaterId("h85");
        assertEquals(Outcome.NOT_APPLICABLE, outcome(DemandChecksTest.finding(survey, "demand.asItIs")));
        survey.getUnit().setHeaterId("h95");
        assertEquals(
                DemandChecksTest.DEMAND_A,
                DemandChecksTest.finding(survey, "demand.asItIs").printed().value(),
                1e-9);
    }

    private static Outcome outcome(Finding finding) {
        return finding.outcome();
    }

    @Test
    void afterTheOperatorHasChangedTheFuseItIsConfirmed() {
        survey.getElectricity().setServiceFuseConfirmed(false);
        DemandRemedies.largerFuse(60, 90).get(0).edit().accept(survey);
        assertEquals(true, survey.getElectricity().getServiceFuseConfirmed());
        assertEquals(
                100.0,
                DemandChecksTest.finding(survey, "demand.operator").arguments().get("fuse"));
    }

    @Test
    void behindAPriorityUnitAShowerHasACurrentAndNoPower() {
        Load upstairs = loads().get(3);
        upstairs.setCurrent(null);
        upstairs.setPower(Power.valueOf("9.2 kW"));
        SecondShower second = SecondShower.of(survey.getElectricity(), 230);
        assertEquals(new SecondShower(3, 40), second);
        second.priority(35).edit().accept(survey);
        assertNull(upstairs.getPower());
        assertEquals(5, upstairs.getCurrent().si(), 1e-9);
    }

    @Test
    void thePriorityUnitIsPutBeforeTheStrongestSingleShower() {
        assertFalse(SecondShower.of(null, 230).exists());
        ElectricalFeed feed = SurveyFactory.eINSTANCE.createElectricalFeed();
        assertFalse(SecondShower.of(feed, 230).exists());
        feed.getLoads().add(SampleHouse.load("no load", LoadKind.SHOWER, "0 A"));
        assertFalse(SecondShower.of(feed, 230).exists());
        Load two = SampleHouse.load("two", LoadKind.SHOWER, "40 A");
        two.setCount(2);
        feed.getLoads().add(0, two);
        assertFalse(SecondShower.of(feed, 230).exists(), "one unit cannot hold back two");
        two.setCount(1);
        assertEquals(new SecondShower(0, 40), SecondShower.of(feed, 230));
        assertTrue(SecondShower.of(feed, 230).exists());
        feed.getLoads().add(SampleHouse.load("as strong", LoadKind.SHOWER, "40 A"));
        assertEquals(0, SecondShower.of(feed, 230).place(), "the first of two");
    }

    @Test
    void whereTheRatingLacksAHalfTheCurrentComesFromNowhere() {
        SharedQuantities none = SharedQuantities.consumedOnly(null, java.util.Set.<SharedQuantity>of());
        assertNotSame(CurrentSource.UNKNOWN, source(Houses.heater(), none));
        Heater noVoltage = Houses.heater();
        noVoltage.setVoltage(null);
        assertSame(CurrentSource.UNKNOWN, source(noVoltage, none));
        Heater noPower = Houses.heater();
        noPower.setPower(null);
        assertSame(CurrentSource.UNKNOWN, source(noPower, none));
    }

    private static CurrentSource source(Heater heater, SharedQuantities shared) {
        return new ShowerCase(new Candidate(heater, false), shared).currentSource();
    }

    private static Answer answer(String typed) {
        return FormulaCall.answer(MaximumDemand.FORMULA, typed, " ");
    }

    @Test
    void aFormulaSaysWhatItAddsAndNothingThatIsNone() {
        Answer cooker = answer("cooker=30A shower=40A");
        assertEquals(
                List.of("shower 1", "cooker 2"),
                cooker.working().steps().stream()
                        .filter(step ->
                                step.symbol().startsWith("I") && !step.symbol().equals("Id"))
                        .map(Step::source)
                        .toList());
        for (String typed : List.of("cooker=30A", "cooker=30A socket=yes rules=iec60364-5-52")) {
            assertTrue(
                    answer(typed).working().steps().stream()
                            .noneMatch(step -> step.expression() != null
                                    && (step.expression().contains("0 * 5")
                                            || step.expression().contains("1 * 0"))),
                    typed);
        }
        assertFalse(answer("shower=60A fuse=60A").warnings().contains("overFuse"), "as much as the fuse carries");
        assertEquals("", answer("shower=0A").trouble());
        assertEquals("", answer("shower=1000A").trouble());
    }

    /** A rule set of one's own, in which electric vehicles are forgotten. */
    @Test
    void aKindWithoutALineInTheRuleSetMakesTheSumUnknown() throws IOException {
        Path diversity = OwnRules.copyInto(folder).resolve("diversity.csv");
        Files.writeString(diversity, Files.readString(diversity).replaceAll("(?m)^vehicle,.*\\R", ""));
        try {
            survey.setRules(OwnRules.ID);
            assertEquals(
                    Outcome.FAILS,
                    DemandChecksTest.finding(survey, "demand.serviceFuse").outcome());
            loads().add(SampleHouse.load("wall box", LoadKind.VEHICLE, "32 A"));
            Finding fuse = DemandChecksTest.finding(survey, "demand.serviceFuse");
            assertEquals(Outcome.CANNOT_TELL, fuse.outcome());
            assertEquals("noDiversity", fuse.variant());
            assertEquals(
                    "noDiversity", answer("vehicle=32A rules=" + OwnRules.ID).trouble());
            assertEquals("", answer("shower=32A rules=" + OwnRules.ID).trouble());
        } finally {
            OwnRules.forget();
        }
    }
}
