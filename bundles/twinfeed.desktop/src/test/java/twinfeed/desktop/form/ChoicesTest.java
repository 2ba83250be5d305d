// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EAttribute;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage.Literals;

/** The answers that a person can pick in the survey of Alder Beck. */
final class ChoicesTest {
    @TempDir
    Path folder;

    private JobSession session;
    private Choices choices;

    @BeforeEach
    void open() throws Exception {
        session = OpenHouse.alderBeck(folder);
        choices = new Choices(session, new Words(Locale.UK));
    }

    private List<Object> values(EAttribute attribute) {
        List<Choice> offered = choices.of(attribute, null);
        assertEquals(new Choice(null, "not recorded"), offered.get(0));
        return Arrays.asList(offered.stream().skip(1).map(Choice::value).toArray());
    }

    private String text(EAttribute attribute, Object value) {
        return choices.of(attribute, null).stream()
                .filter(choice -> value.equals(choice.value()))
                .findFirst()
                .orElseThrow()
                .text();
    }

    @Test
    void answersOfTheModelAreYesAndNoAndItsWords() {
        assertEquals(List.of(true, false), values(Literals.WATER_TEST__AT_PEAK));
        assertEquals("yes", text(Literals.WATER_TEST__AT_PEAK, true));
        assertEquals("no", text(Literals.WATER_TEST__AT_PEAK, false));
        assertEquals(List.of(PipeMaterial.values()), values(Literals.PIPE_SEGMENT__MATERIAL));
        assertEquals("polyethylene service pipe", text(Literals.PIPE_SEGMENT__MATERIAL, PipeMaterial.PE));
    }

    @Test
    void heatersComeFromTheCatalogueAndPipesFromTheSurvey() {
        assertEquals(
                List.of("h75", "h85", "h90", "h95", "h95s", "h105", "h105s", "h108"),
                values(Literals.PRESENT_UNIT__HEATER_ID));
        assertEquals("Heater 9.0 kW at 230 V, two-element", text(Literals.PRESENT_UNIT__HEATER_ID, "h90"));
        session.catalogue().getHeaters().get(0).setTitle(null);
        assertEquals("h75", text(Literals.PRESENT_UNIT__HEATER_ID, "h75"), "a heater without a title goes by its id");
        session.survey().getWater().getSegments().add(SurveyFactory.eINSTANCE.createPipeSegment());
        session.survey().getWater().getSegments().get(0).setName(" ");
        assertEquals(List.of("rising main", "shower branch"), values(Literals.WATER_TEST__GAUGE_AFTER));
        assertEquals("rising main", text(Literals.DRAW_OFF__TEE_AFTER, "rising main"));
        session.survey().setWater(null);
        assertEquals(List.of(), values(Literals.WATER_TEST__GAUGE_AFTER));
    }

    @Test
    void ruleSetSaysWhichDevicesCablesAndMethodsThereAre() {
        assertEquals("circuit-breaker, type B", text(Literals.PROTECTIVE_DEVICE__KIND, "breaker-b"));
        assertEquals("flat twin and earth, 70 °C thermoplastic", text(Literals.CABLE_SEGMENT__CABLE, "flat-70"));
        assertEquals("C \u2013 clipped direct or buried in masonry", text(Literals.CABLE_SEGMENT__METHOD, "C"));
        assertEquals(List.of("100", "101", "102", "103", "C", "A"), values(Literals.CABLE_SEGMENT__METHOD));
        assertEquals("BS 7671:2018+A2:2022 tables", text(Literals.SURVEY__RULES, "bs7671-2018-a2"));
        assertEquals("United Kingdom, from a header tank", text(Literals.SURVEY__CLIMATE, "uk-tank"));
        session.survey().setRules("iec60364-5-52");
        assertTrue(
                values(Literals.CABLE_SEGMENT__METHOD).stream().noneMatch("100"::equals),
                "method 100 is one of BS 7671: " + values(Literals.CABLE_SEGMENT__METHOD));
    }

    @Test
    void calculatorsBringQuestionsAndTheDesktopFittings() {
        assertEquals(
                "Does it go cold when another tap is opened?", text(Literals.SYMPTOM__KEY, "goesColdWhenTapOpens"));
        assertEquals("stop valve", text(Literals.FITTING__KIND, "stop-valve"));
        assertEquals("double check valve", text(Literals.WATER_FEED__BACKFLOW_PROTECTION, "double-check-valve"));
        assertEquals(List.of("none", "pull-cord", "wall"), values(Literals.ISOLATOR__KIND));
        assertEquals(List.of(), values(Literals.SURVEY__TAKEN_BY), "anybody may have taken it");
        assertEquals(
                List.of(), values(Literals.ISOLATION_TICK__STEP), "steps are ticked in their order and never picked");
    }

    @Test
    void answerThatNobodyKnowsHereStaysOnOffer() {
        List<Choice> offered = choices.of(Literals.ISOLATOR__KIND, "lever");
        assertEquals(new Choice("lever", "lever (not known here)"), offered.get(offered.size() - 1));
        assertEquals(4, choices.of(Literals.ISOLATOR__KIND, "wall").size(), "and one that is known is not there twice");
    }
}
