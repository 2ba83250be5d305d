// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Assumptions;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Context;
import twinfeed.calculator.DrawOffState;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.Intake;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.MarginInterval;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.calculator.formula.Step;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Kind;
import twinfeed.units.Quantity;
import twinfeed.units.text.Texts;

/** What is said of any check, whatever its calculator's own words: every outcome with all its values, in every language. */
class FindingTextTest {
    private static final Check PASSING = check("made.passing");
    private static final Check FAILING = check("made.failing");
    private static final Check CLOSE = check("made.close");
    private static final Check BLIND = check("made.blind");
    private static final Check UNNAMED = check("made.unnamed");
    private static final Check BESIDE = check("made.beside");
    private static final Check SILENT = check("made.silent");

    private static Check check(String key) {
        return Check.of(key, FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
    }

    @Test
    void everyOutcomeIsSaidWithItsValues() {
        Runner runner = Fixtures.runner(new SyntheticCalculator(
                "made-up", List.of(PASSING, FAILING, CLOSE, BLIND, UNNAMED, BESIDE, SILENT), (survey, findings) -> {
                    findings.on(PASSING).compare(1, 0).add();
                    findings.on(FAILING).compare(-1, 0).add();
                    findings.on(CLOSE).compare(0.1, 0).add();
                    findings.on(BLIND)
                            .cannotTell(List.of("survey.water.test.flow"))
                            .add();
                    findings.on(UNNAMED).cannotTell(List.of()).add();
                    findings.on(BESIDE).outcome(Outcome.NOT_APPLICABLE).add();
                }));
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        List<Finding> findings = new ArrayList<>();
        runner.judge(survey, Fixtures.candidate())
                .findings()
                .forEach(each -> findings.add(
                        each.check().equals(CLOSE)
                                ? each.withChance(
                                        new PassProbability(0.37, new MarginInterval(0, 1, "survey.water.test.flow")))
                                : each));
        Set<Outcome> said = EnumSet.noneOf(Outcome.class);
        for (Locale locale : List.of(Locale.UK, Locale.GERMAN)) {
            FindingText words = new FindingText(runner, locale);
            for (Finding finding : findings) {
                said.add(finding.outcome());
                String sentence = words.sentence(finding);
                assertFalse(sentence.matches("(?s).*[{}\u2026\\[\\]].*"), sentence);
            }
        }
        assertEquals(EnumSet.allOf(Outcome.class), said);
        FindingText english = new FindingText(runner, Locale.UK);
        assertTrue(findings.stream().map(english::sentence).anyMatch(text -> text.contains("37 %")));
    }

    @Test
    void everyReadingThatACheckMayLackHasAName() {
        for (Locale locale : List.of(Locale.UK, Locale.GERMAN)) {
            FindingText words = new FindingText(Fixtures.runner(), locale);
            List<String> paths = new ArrayList<>();
            quantities("survey", SurveyPackage.Literals.SURVEY, paths);
            quantities("heater", CataloguePackage.Literals.HEATER, paths);
            assertTrue(
                    paths.containsAll(List.of("heater.throttleMinimum", "survey.water.mainPipe.fittings.k")), "walked");
            assertEquals(
                    List.of(),
                    paths.stream()
                            .filter(path -> words.reading(path).equals(path))
                            .toList());
        }
    }

    /** What is measured or picked; names, notes and the record of who did what are wanted by no check. */
    private static void quantities(String path, EClass owner, List<String> found) {
        for (EStructuralFeature feature : owner.getEAllStructuralFeatures()) {
            String here = path + "." + feature.getName();
            if (feature instanceof EReference reference && reference.isContainment()) {
                quantities(here, reference.getEReferenceType(), found);
            } else if (Quantity.class.isAssignableFrom(feature.getEType().getInstanceClass())
                    || feature.getEType() instanceof EEnum
                    || feature.getName().equals("k")) {
                found.add(here);
            }
        }
    }

    /** A calculator with words of its own, of which a test makes up one finding. */
    private record Worded(Consumer<Findings> answers) implements Calculator {
        static final Check FLOW = Check.of("made.flow", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.FLOW);
        static final Check PLAIN = check("made.plain");

        @Override
        public CalculatorDescriptor descriptor() {
            return CalculatorDescriptor.of(Worded.class)
                    .texts(new Texts(FindingTextTest.class, "MadeUp"))
                    .checks(FLOW, PLAIN)
                    .build();
        }

        @Override
        public Assessor prepare(Context context) {
            return (candidate, shared, findings) -> answers.accept(findings);
        }

        static Finding of(Consumer<Findings> answers) {
            return Fixtures.runner(new Worded(answers))
                    .judge(SurveyFactory.eINSTANCE.createSurvey(), Fixtures.candidate())
                    .findings()
                    .get(0);
        }
    }

    private static final Runner WORDED = Fixtures.runner(new Worded(findings -> {}));
    private static final FindingText ENGLISH = new FindingText(WORDED, Locale.UK);
    private static final FindingText GERMAN = new FindingText(WORDED, Locale.GERMANY);

    /** 6 L/min where 8 L/min are wanted. */
    private static Finding tooLittle(String variant) {
        return Worded.of(findings -> findings.on(Worded.FLOW)
                .compare(1e-4, 8 / 60_000.0)
                .variant(variant)
                .argument("by", "scale")
                .condition(Condition.of(new Intake(1, 8), 216.2, new DrawOffState(2, List.of("basin", "kitchen tap"))))
                .add());
    }

    @Test
    void aFindingIsSaidInTheWordsOfItsCalculator() {
        Finding finding = tooLittle("");
        assertEquals("Flow of the made-up tap", ENGLISH.title(finding));
        assertEquals(
                "Only 6.0 L/min, 2.0 short of 8.0, January, basin + kitchen tap open, 216 V.",
                ENGLISH.sentence(finding));
        assertEquals(
                "Nur 6,0 L/min, 2,0 weniger als 8,0, Januar, basin + kitchen tap geöffnet, 216 V.",
                GERMAN.sentence(finding));
        assertEquals("Too little comes out of scale.", ENGLISH.forCustomer(finding));
        assertEquals("Blocked by scale: margin -2.0.", ENGLISH.sentence(tooLittle("blocked")));
        assertEquals("The scale is blocked.", ENGLISH.forCustomer(tooLittle("blocked")));
        assertEquals("Too little comes out of scale.", ENGLISH.forCustomer(tooLittle("unworded")));
        assertEquals(ENGLISH.sentence(finding), ENGLISH.sentence(tooLittle("unworded")));
    }

    @Test
    void whatHasNoWordsOfItsOwnIsSaidInCommonOnes() {
        Finding plain =
                Worded.of(findings -> findings.on(Worded.PLAIN).compare(1, 2).add());
        assertEquals("Beyond the limit.", ENGLISH.sentence(plain));
        assertNull(ENGLISH.forCustomer(plain));
        Finding passing =
                Worded.of(findings -> findings.on(Worded.FLOW).compare(2, 1).add());
        assertEquals("Within the limit.", ENGLISH.sentence(passing));
        assertNull(ENGLISH.forCustomer(passing), "what passes is no news");
        Finding close = tooLittle("blocked").withChance(new PassProbability(0.37, new MarginInterval(0, 1, "")));
        assertEquals(
                "Too close to call: the chance that it passes is 37 %. Measure again: all readings.",
                ENGLISH.sentence(close));
        assertNull(ENGLISH.forCustomer(close));
        Finding boxed = tooLittle("blocked")
                .withChance(new PassProbability(0.55, new MarginInterval(0, 1, "heater.realPower")));
        assertFalse(ENGLISH.sentence(boxed).contains("Measure again"), ENGLISH.sentence(boxed));
        assertTrue(
                ENGLISH.sentence(boxed).contains("of a new one only its maker can say more"), ENGLISH.sentence(boxed));
    }

    @Test
    void whatIsMissingIsSaidAndHowToMakeItGoodWhereItIsOneThing() {
        String valve = "a test of the supply with the stop valve fully open";
        assertEquals(
                "Cannot tell yet. Missing: " + valve + ". Open the valve fully and take the two-point test again.",
                ENGLISH.sentence(missing("survey.water.stopValveOpen")));
        assertEquals(
                "Cannot tell yet. Missing: " + valve + ", bore of a pipe (loft).",
                ENGLISH.sentence(missing("survey.water.stopValveOpen", "survey.water.segments[loft].bore")));
        assertEquals("Cannot tell: no calculator gave a figure that it needs.", ENGLISH.sentence(missing()));
        assertEquals("survey.moon", ENGLISH.reading("survey.moon"));
        Finding advice = Worded.of(findings -> findings.on(Worded.FLOW)
                .compare(1, 2)
                .variant("none")
                .outcome(Outcome.NOT_APPLICABLE)
                .add());
        assertEquals("Does not apply here.", ENGLISH.sentence(advice));
    }

    private static Finding missing(String... paths) {
        return Worded.of(
                findings -> findings.on(Worded.FLOW).cannotTell(List.of(paths)).add());
    }

    @Test
    void aConditionIsSaidByItsParts() {
        assertEquals("", ENGLISH.condition(Condition.NONE));
        assertEquals("loft", ENGLISH.condition(Condition.of("loft")));
        assertEquals(
                "winter design, 5.0 °C, other taps shut",
                ENGLISH.condition(Condition.of(new Intake(0, 5), null, new DrawOffState(0, List.of()))));
        assertEquals("230 V", ENGLISH.condition(Condition.of(null, 230.0, null)));
    }

    @Test
    void assumptionsRemediesAndMeaningsAreWordedByTheirCalculator() {
        String id = WORDED.calculators().get(0).descriptor().id();
        assertEquals(
                "The tap is taken as 1.5 m high",
                ENGLISH.assumption(new Assumptions.Assumption(id, "tap", Map.of("height", 1.5), false)));
        assertEquals(
                "Voltage at the origin taken as the nominal 230 V: not measured",
                ENGLISH.assumption(
                        new Assumptions.Assumption("conditions", "supplyVoltage", Map.of("voltage", 230.0), false)));
        Remedy cleaning =
                new Remedy("clean-head", "cleaning", Map.of("what", "head"), List.of(), false, 0, survey -> {});
        assertEquals("Clean the head", ENGLISH.remedy(id, cleaning));
        Step flow = new Step("q", "flow", 6, "L/min", null, "");
        assertEquals("flow out of the tap", ENGLISH.meaning(id, flow));
        assertEquals("flow out of the tap", ENGLISH.meaning("another", flow), "taken over from it");
        assertEquals("Durchfluss der Armatur", GERMAN.meaning("another", flow));
    }
}
