// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.demand;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.StandInCalculator;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Current;
import twinfeed.units.Power;
import twinfeed.units.Voltage;

/** Ordinary houses: like for like is advice, and added load has the least of several remedies. All of them are invented. */
class OrdinaryHousesTest {
    private static final Runner RUNNER = new Runner(
            List.of(new DemandCalculator(), new StandInCalculator(List.of(SharedQuantity.DESIGN_CURRENT))),
            (mean, spread, day, southern) -> mean);

    private static Heater heater(String id, String power) {
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId(id);
        heater.setPower(Power.valueOf(power));
        heater.setVoltage(Voltage.valueOf("240 V"));
        return heater;
    }

    /** A house with ring circuits of 32 A, a 6 kW cooker and one shower. */
    private static Survey house(String fuse, int rings, String present) {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        ElectricalFeed feed = SurveyFactory.eINSTANCE.createElectricalFeed();
        feed.setServiceFuse(Current.valueOf(fuse));
        feed.setServiceFuseConfirmed(false);
        feed.setMainSwitch(Current.valueOf("100 A"));
        survey.setElectricity(feed);
        Load ring = SampleHouse.load("ring", LoadKind.SOCKETS, "32 A");
        ring.setCount(rings);
        feed.getLoads().add(ring);
        Load cooker = SampleHouse.load("cooker", LoadKind.COOKER, "26.09 A");
        cooker.setSocket(true);
        feed.getLoads().add(cooker);
        feed.getLoads().add(SampleHouse.load("lighting", LoadKind.LIGHTING, "6 A"));
        survey.setUnit(SurveyFactory.eINSTANCE.createPresentUnit());
        survey.getUnit().setHeater(heater("present", present));
        return survey;
    }

    private static List<Finding> findings(Survey survey, Heater heater) {
        return RUNNER.assess(survey, List.of(new Candidate(heater, false)))
                .options()
                .get(0)
                .findings();
    }

    private static Finding finding(Survey survey, Heater heater, String key) {
        return findings(survey, heater).stream()
                .filter(each -> each.check().key().equals(key))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no finding " + key));
    }

    /**
     * Shower whole, rings 32 A and 40 % of the second, cooker 10 A and 30 % of the rest and 5 A, lighting 66 % (table A1, memory): over
     * the fuse in all three houses, and no reason against a shower that draws what the old one drew.
     */
    @ParameterizedTest
    @CsvSource({"100 A, 2, 8.5 kW, 104.0", "80 A, 1, 8.5 kW, 91.2", "60 A, 1, 7.2 kW, 85.8"})
    void likeForLikeIsAdvice(String fuse, int rings, String power, double demandA) {
        Survey survey = house(fuse, rings, power);
        Heater same = heater("new", power);
        assertEquals("likeForLike", finding(survey, same, "demand.serviceFuse").variant());
        assertEquals("likeForLike", finding(survey, same, "demand.mainSwitch").variant());
        assertTrue(findings(survey, same).stream().noneMatch(Finding::rulesOut));
        Finding advice = finding(survey, same, "demand.asItIs");
        assertEquals(demandA, Fixtures.value(advice), 0.1);
        assertEquals(Outcome.FAILS, advice.outcome());
        assertFalse(advice.rulesOut());
        String words = new FindingText(RUNNER, Locale.ENGLISH).sentence(advice);
        assertTrue(words.contains("guidance"), words);
        assertTrue(words.contains("confirm the fuse"), words);
        assertTrue(words.contains("log the current for a week"), words);
    }

    @Test
    void theUnitThatIsThereAddsNothing() {
        Survey survey = house("60 A", 2, "8.5 kW");
        Heater present = survey.getUnit().getHeater();
        assertTrue(RUNNER.assess(survey, List.of(new Candidate(present, true))).options().get(0).findings().stream()
                .noneMatch(Finding::rulesOut));
    }

    @Test
    void likeForLikeWithUnknownLoadsDecidesNothingEither() {
        Survey survey = house("100 A", 2, "8.5 kW");
        survey.getElectricity().getLoads().clear();
        Heater same = heater("new", "8.5 kW");
        assertEquals(
                Outcome.NOT_APPLICABLE,
                finding(survey, same, "demand.serviceFuse").outcome());
        assertEquals(Outcome.CANNOT_TELL, finding(survey, same, "demand.asItIs").outcome());
        assertEquals(
                Outcome.CANNOT_TELL,
                finding(survey, heater("stronger", "9.5 kW"), "demand.serviceFuse")
                        .outcome());
    }

    /** One kilowatt more is added load: the sum decides, and each remedy brings it within the fuse. */
    @Test
    void addedLoadHasSeveralRemedies() {
        Survey survey = house("80 A", 1, "8.5 kW");
        survey.getElectricity().getLoads().add(SampleHouse.load("charge point", LoadKind.VEHICLE, "32 A"));
        survey.getElectricity().getLoads().add(SampleHouse.load("storage heaters", LoadKind.STORAGE, "20 A"));
        survey.getElectricity().getLoads().remove(1);
        Heater stronger = heater("stronger", "9.5 kW");
        Finding fuse = finding(survey, stronger, "demand.serviceFuse");
        assertEquals(39.583 + 32 + 3.96 + 32 + 20, Fixtures.value(fuse), 0.01);
        assertTrue(fuse.rulesOut());
        assertEquals(
                List.of("vehicle-load-management", "storage-time-switch"),
                fuse.remedies().stream().map(Remedy::id).toList(),
                "no fuse of a house carries 127.5 A");
        Survey managed = EcoreUtil.copy(survey);
        fuse.remedies().forEach(remedy -> remedy.edit().accept(managed));
        Finding after = finding(managed, stronger, "demand.serviceFuse");
        assertEquals(39.583 + 32 + 3.96, Fixtures.value(after), 0.01);
        assertEquals(Outcome.PASSES, after.outcome());
        assertEquals(List.of(), after.remedies());
        assertEquals(
                2,
                RUNNER.assess(managed, List.of(new Candidate(stronger, false))).assumptions().stream()
                        .filter(each -> each.key().equals("managed"))
                        .count());
    }

    @Test
    void theOperatorConfirmsOrUprates() {
        Survey survey = house("60 A", 1, "7.2 kW");
        Finding fuse = finding(survey, heater("stronger", "9.5 kW"), "demand.serviceFuse");
        assertEquals(95.4, Fixtures.value(fuse), 0.1);
        Remedy operator = fuse.remedies().get(0);
        assertEquals("operator-fuse-100", operator.id());
        assertTrue(new FindingText(RUNNER, Locale.ENGLISH)
                .remedy("demand", operator)
                .contains("confirmed or fitted"));
    }
}
