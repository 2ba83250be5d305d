// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.pressure.remedy.WaterChanges;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Length;
import twinfeed.units.Pressure;
import twinfeed.units.Temperature;

/** Works change the copy that they are given, help the check that offers them, and are offered only where they can. */
class WaterRemediesTest {
    /** A house that lacks pressure for every reason at once. */
    private static Survey weak() {
        Survey survey = Samples.survey();
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("1.6 bar"));
        survey.getWater().getTest().setRunningPressure(Pressure.valueOf("0.9 bar"));
        survey.getWater().getSegments().get(0).setMaterial(PipeMaterial.LEAD);
        survey.getWater().getSegments().get(0).setBore(Length.valueOf("12 mm"));
        survey.getWater()
                .getSegments()
                .add(SampleHouse.pipe("inlet", PipeMaterial.COPPER, "13.6 mm", "0.2 m", "0 m", "strainer-fouled"));
        return survey;
    }

    private static Finding finding(Survey survey, String check) {
        return Houses.finding(survey, Samples.heater(), check);
    }

    private static Remedy remedy(Survey survey, String check, String id) {
        return finding(survey, check).remedies().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(check + " does not offer " + id));
    }

    @ParameterizedTest
    @ValueSource(strings = {"full-bore-valve", "strainer-clean", "branch-22", "service-pipe", "break-tank-pump"})
    void eachHelpsTheRunningPressure(String id) {
        Survey survey = weak();
        Survey edited = EcoreUtil.copy(survey);
        remedy(survey, "pressure.running", id).edit().accept(edited);
        assertTrue(Fixtures.value(finding(edited, "pressure.running"))
                > Fixtures.value(finding(survey, "pressure.running")) + 1e-4);
        assertTrue(EcoreUtil.equals(survey, weak()), "only the copy changes");
    }

    /** A small domestic set of break tank and pump: 3 bar shut, 2.2 bar at 20 L/min (engineering judgement). */
    @Test
    void aPumpLeavesTheTestOfASmallSet() {
        Survey edited = weak();
        remedy(weak(), "pressure.running", "break-tank-pump").edit().accept(edited);
        assertEquals(3.0e5, edited.getWater().getTest().getStaticPressure().si(), 1);
        assertEquals(2.2e5, edited.getWater().getTest().getRunningPressure().si(), 1);
        assertEquals(20 / 60e3, edited.getWater().getTest().getFlow().si(), 1e-9);
    }

    /** Ofwat's guaranteed standard: 7 m of head, rounded to 0.7 bar. */
    @Test
    void theStaticPressureIsComparedWithTheGuaranteedStandard() {
        assertEquals(0.7, Fixtures.limit(finding(weak(), "pressure.standard")), 1e-9);
    }

    /** Taking the taps off the pipe is no remedy for 48 °C that a frail person asks for: adult skin burns deeply in 20 min (table; memory). */
    @Test
    void aPumpIsNoRemedyForWaterThatIsAskedForTooHot() {
        Survey survey = weak();
        survey.setCustomer(SurveyFactory.eINSTANCE.createCustomer());
        survey.getCustomer().setVulnerable(true);
        survey.setTargetOutlet(Temperature.valueOf("48 °C"));
        remedy(survey, "pressure.running", "break-tank-pump").edit().accept(survey);
        Finding asked = finding(survey, "pressure.tapOpens");
        assertEquals(Outcome.FAILS, asked.outcome());
        assertEquals("asked", asked.variant());
        assertTrue(asked.rulesOut());
        assertEquals(List.of(), asked.remedies());
        survey.setTargetOutlet(Temperature.valueOf("41 °C"));
        assertEquals("noTap", finding(survey, "pressure.tapOpens").variant());
    }

    /** A supply that has nothing left at the flow of the instructions is not said to give "-0.01 bar". */
    @Test
    void noPressureAtAllIsSaid() {
        Survey survey = weak();
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("0.9 bar"));
        survey.getWater().getTest().setRunningPressure(Pressure.valueOf("0.3 bar"));
        Finding running = finding(survey, "pressure.running");
        assertTrue(Fixtures.value(running) < 0);
        String words = new FindingText(Houses.runner(), Locale.ENGLISH).sentence(running);
        assertTrue(words.startsWith("The supply cannot bring 8 L/min up to the heater at all"), words);
    }

    private static double flow(Feed feed) {
        return feed.taps().get(0).flowM3PerS();
    }

    /** Outlets are fitted to the readings of the house as surveyed; with more pressure they give more. */
    @Test
    void aTapIsTheSameTapAfterTheWork() {
        Survey survey = weak();
        Survey edited = EcoreUtil.copy(survey);
        remedy(survey, "pressure.running", "service-pipe").edit().accept(edited);
        Feed before = Mapped.feed(survey);
        Feed after = Mapped.feed(survey, edited);
        for (int i = 0; i < before.taps().size(); i++) {
            assertEquals(
                    before.taps().get(i).tap().outlet(),
                    after.taps().get(i).tap().outlet());
        }
        assertTrue(flow(after) > 1.02 * flow(before));
    }

    /**
     * Water out of a break tank is not fit to drink, so the kitchen tap stays on the main (Water Supply (Water Fittings) Regulations 1999,
     * schedule 2, paragraph 26; memory): a tap that opens takes nothing from the pumped shower.
     */
    @Test
    void aPumpFeedsTheShowerAlone() {
        Survey survey = weak();
        survey.getWater().getDrawOffs().forEach(tap -> tap.setTeeAfter("rising main"));
        Survey edited = EcoreUtil.copy(survey);
        remedy(survey, "pressure.running", "break-tank-pump").edit().accept(edited);
        Feed pumped = Mapped.feed(survey, edited);
        assertEquals(List.of(), pumped.taps());
        assertEquals("rising main", edited.getWater().getTest().getGaugeAfter(), "the set stands at the last tee");
        assertEquals(1.1, pumped.riseM(), 1e-12, "only its own branch is left between pump and shower");
        assertEquals("noTap", finding(edited, "pressure.tapOpens").variant());
        assertEquals(Outcome.PASSES, finding(edited, "pressure.switch").outcome());
    }

    @Test
    void anOwnBranchHelpsAgainstOpenTaps() {
        Survey survey = weak();
        survey.getWater().getDrawOffs().forEach(tap -> tap.setTeeAfter("rising main"));
        Survey edited = EcoreUtil.copy(survey);
        Remedy own = remedy(survey, "pressure.dropOut", "own-branch");
        own.edit().accept(edited);
        assertTrue(Fixtures.value(finding(edited, "pressure.switch"))
                > Fixtures.value(finding(survey, "pressure.switch")));
        assertEquals(new BigDecimal("5.5"), own.items().get(1).quantity());
        // The taps keep the old pipe and so their flows.
        Feed ownFeed = Mapped.feed(survey, edited);
        assertEquals(flow(Mapped.feed(survey)), flow(ownFeed), 1e-6 * flow(ownFeed));
        assertEquals(0, ownFeed.shared(2));
        assertEquals(Mapped.feed(survey).riseM(), ownFeed.riseM(), 1e-12);
        double before = Mapped.feed(survey).taps().get(0).tap().outlet().resistancePaPerFlow2();
        double after = ownFeed.taps().get(0).tap().outlet().resistancePaPerFlow2();
        assertEquals(before, after, 0, "the tap itself stays what it is");
    }

    @Test
    void whatIsNotThereIsNotOffered() {
        Survey survey = Samples.survey();
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("1.0 bar"));
        survey.getWater().getTest().setRunningPressure(Pressure.valueOf("0.5 bar"));
        survey.getWater().getSegments().subList(1, 3).forEach(pipe -> {
            pipe.setBore(Length.valueOf("20.2 mm"));
            pipe.getFittings().clear();
        });
        survey.getWater().getDrawOffs().clear();
        List<String> offered = finding(survey, "pressure.running").remedies().stream()
                .map(Remedy::id)
                .toList();
        assertEquals(List.of("break-tank-pump"), offered);
    }

    @Test
    void worksCanFollowOneAnother() {
        Survey survey = weak();
        survey.getWater().getDrawOffs().forEach(tap -> tap.setTeeAfter("rising main"));
        double before = Fixtures.value(finding(survey, "pressure.running"));
        List<Remedy> works = finding(survey, "pressure.dropOut").remedies();
        assertEquals(6, works.size());
        for (Remedy work : works) {
            work.edit().accept(survey);
        }
        Finding after = finding(survey, "pressure.running");
        assertTrue(Fixtures.value(after) > before);
        assertTrue(after.remedies().isEmpty());
    }

    @Test
    void aSuitableHouseIsOfferedNothing() {
        Survey survey = Samples.survey();
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("4.0 bar"));
        survey.getWater().getTest().setRunningPressure(Pressure.valueOf("3.4 bar"));
        for (String check : List.of("pressure.running", "pressure.switch", "pressure.static", "pressure.summer")) {
            Finding finding = finding(survey, check);
            assertFalse(finding.rulesOut(), check);
            assertTrue(finding.remedies().isEmpty(), check);
        }
    }

    /** What the new pipe no longer takes at the test's flow is gained where the gauge sits behind it. */
    @Test
    void aNewServicePipeRaisesTheRunningPressure() {
        Survey survey = weak();
        double before = survey.getWater().getTest().getRunningPressure().si();
        WaterChanges.renewService(survey);
        double gained = survey.getWater().getTest().getRunningPressure().si() - before;
        assertTrue(gained > 0.1e5 && gained < 0.7e5, "gained " + gained);
        assertEquals(PipeMaterial.PE, survey.getWater().getSegments().get(0).getMaterial());
        assertTrue(survey.getWater().getTest().getRunningPressure().si()
                < survey.getWater().getTest().getStaticPressure().si());
    }
}
