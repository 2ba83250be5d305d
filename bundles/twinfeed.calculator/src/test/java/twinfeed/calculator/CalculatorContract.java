// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.expression.Expression;
import twinfeed.calculator.formula.Answer;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.calculator.formula.Arguments;
import twinfeed.calculator.formula.Formula;
import twinfeed.calculator.formula.Parameter;
import twinfeed.calculator.formula.Step;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.units.text.Texts;

/**
 * What every calculator has to keep. A bundle extends this class with its calculator, and with a survey and a heater that have
 * every reading which its checks need.
 */
public abstract class CalculatorContract {
    private static final double TOLERANCE = 1e-9;

    private final List<Calculator> calculators;
    private final Supplier<Survey> surveys;
    private final Supplier<Heater> heaters;

    /**
     * For a bundle's calculator.
     *
     * @param calculator the calculator under test
     * @param surveys a survey with every reading that the checks need; a new one at each call
     * @param heaters a heater with every datum that the checks need; a new one at each call
     */
    protected CalculatorContract(Calculator calculator, Supplier<Survey> surveys, Supplier<Heater> heaters) {
        this.calculators = List.of(calculator);
        this.surveys = surveys;
        this.heaters = heaters;
    }

    private List<Calculator> calculators() {
        return calculators;
    }

    private Survey survey() {
        return surveys.get();
    }

    private Heater heater() {
        return heaters.get();
    }

    private Runner runner() {
        Set<SharedQuantity> wanted = new LinkedHashSet<>();
        calculators()
                .forEach(calculator -> wanted.addAll(calculator.descriptor().consumes()));
        calculators()
                .forEach(calculator -> wanted.removeAll(calculator.descriptor().provides()));
        List<Calculator> all = new ArrayList<>(calculators());
        if (!wanted.isEmpty()) {
            all.add(new StandInCalculator(List.copyOf(wanted)));
        }
        return new Runner(all, (mean, spread, month, southern) -> mean);
    }

    private List<Finding> findings(Survey survey, Heater heater) {
        return runner().assess(survey, List.of(new Candidate(heater, false)))
                .options()
                .get(0)
                .findings();
    }

    private List<Finding> findings() {
        return findings(survey(), heater());
    }

    @Test
    void idsAreUniqueAndWellFormed() {
        Set<String> ids = new LinkedHashSet<>();
        for (Calculator calculator : calculators()) {
            String id = calculator.descriptor().id();
            assertTrue(id.matches("[a-z][a-z0-9.-]*"), id);
            assertTrue(ids.add(id), "twice: " + id);
        }
    }

    @Test
    void checkKeysAreUnique() {
        Set<String> keys = new LinkedHashSet<>();
        for (Calculator calculator : calculators()) {
            calculator
                    .descriptor()
                    .checks()
                    .forEach(check -> assertTrue(keys.add(check.key()), "twice: " + check.key()));
        }
    }

    @Test
    void statementsHaveTheirTexts() {
        for (Calculator calculator : calculators()) {
            CalculatorDescriptor statement = calculator.descriptor();
            List<String> wanted = new ArrayList<>(List.of("title"));
            statement.checks().forEach(check -> wanted.add("check." + check.key()));
            statement.parameters().forEach(parameter -> wanted.add("parameter." + parameter.key()));
            statement.formulas().forEach(formula -> {
                wanted.add("formula." + formula.name());
                formula.parameters().forEach(parameter -> wanted.add("parameter." + parameter.key()));
            });
            wanted.forEach(key -> assertTrue(statement.texts().has(key), statement.id() + " lacks the text " + key));
        }
    }

    @Test
    void everyCheckIsAnsweredOnce() {
        List<String> answered =
                findings().stream().map(finding -> finding.check().key()).toList();
        for (Calculator calculator : calculators()) {
            for (Check check : calculator.descriptor().checks()) {
                assertEquals(1, answered.stream().filter(check.key()::equals).count(), check.key());
            }
        }
    }

    @Test
    void nothingBreaksOnAnEmptySurvey() {
        Survey empty = SurveyFactory.eINSTANCE.createSurvey();
        Heater bare = CatalogueFactory.eINSTANCE.createHeater();
        for (Finding finding : findings(empty, bare)) {
            assertFalse(finding.check().equals(Runner.BROKEN), () -> "broke: " + finding.arguments());
            assertTrue(finding.outcome() != Outcome.FAILS, finding.check().key() + " fails on an empty survey");
        }
    }

    @Test
    void nothingBreaksOnAFullSurvey() {
        for (Finding finding : findings()) {
            assertFalse(finding.check().equals(Runner.BROKEN), () -> "broke: " + finding.arguments());
            assertTrue(
                    finding.outcome() != Outcome.CANNOT_TELL,
                    () -> finding.check().key() + " cannot tell on a full survey: " + finding.missing());
        }
    }

    @TestFactory
    Stream<DynamicTest> aMissingReadingGivesCannotTell() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Calculator calculator : calculators()) {
            for (Check check : calculator.descriptor().checks()) {
                for (String need : check.needs()) {
                    tests.add(DynamicTest.dynamicTest(
                            check.key() + " without " + need, () -> withoutReading(check, need)));
                }
            }
        }
        return tests.stream();
    }

    private void withoutReading(Check check, String need) {
        Survey survey = survey();
        Heater heater = heater();
        remove(need.startsWith("heater.") ? heater : survey, need.substring(need.indexOf('.') + 1));
        Finding finding = findings(survey, heater).stream()
                .filter(each -> each.check().key().equals(check.key()))
                .findFirst()
                .orElseThrow(() -> new AssertionError(check.key() + " is not answered"));
        assertTrue(
                finding.outcome() == Outcome.CANNOT_TELL || finding.outcome() == Outcome.NOT_APPLICABLE,
                () -> check.key() + " without " + need + " says " + finding.outcome());
        if (finding.outcome() == Outcome.CANNOT_TELL) {
            assertFalse(finding.missing().isEmpty(), check.key() + " does not say what is missing");
        }
    }

    private static void remove(EObject owner, String path) {
        int dot = path.indexOf('.');
        EStructuralFeature feature = owner.eClass().getEStructuralFeature(dot < 0 ? path : path.substring(0, dot));
        assertNotNull(feature, path);
        if (dot < 0) {
            owner.eUnset(feature);
            return;
        }
        Object value = owner.eGet(feature);
        for (Object each : value instanceof List<?> list ? list : List.of(value)) {
            remove((EObject) each, path.substring(dot + 1));
        }
    }

    @Test
    void workingsComputeTheirFindings() {
        List<org.junit.jupiter.api.function.Executable> checks = new ArrayList<>();
        for (Finding finding : findings()) {
            checks.add(() -> workingComputes(finding));
        }
        assertAll(checks);
    }

    private static void workingComputes(Finding finding) {
        Map<String, Double> values = new LinkedHashMap<>();
        Step last = null;
        for (Step step : finding.working().steps()) {
            if (step.expression() != null) {
                double again = Expression.parse(step.expression()).evaluate(values);
                assertEquals(
                        step.value(),
                        again,
                        tolerance(step.value()),
                        finding.check().key() + " " + step.symbol());
            }
            values.put(step.symbol(), step.value());
            last = step;
        }
        Finding.Figures figures = finding.printed();
        if (last != null && figures != null) {
            assertEquals(
                    figures.value(),
                    last.value(),
                    tolerance(figures.value()),
                    finding.check().key() + ": the last step is not the value");
        }
    }

    private static double tolerance(double value) {
        return TOLERANCE * Math.max(1e-6, Math.abs(value));
    }

    @Test
    void workingsAreInWords() {
        FindingText words = new FindingText(runner(), Locale.ENGLISH);
        for (Finding finding : findings()) {
            for (Step step : finding.working().steps()) {
                complete(words.meaning(finding.calculator(), step));
            }
        }
    }

    @Test
    void findingsRemediesAndAssumptionsAreInWords() {
        Runner runner = runner();
        FindingText words = new FindingText(runner, Locale.ENGLISH);
        AssessmentResult assessed = runner.assess(survey(), List.of(new Candidate(heater(), false)));
        assessed.assumptions().forEach(assumption -> complete(words.assumption(assumption)));
        for (Finding finding : assessed.options().get(0).findings()) {
            complete(words.title(finding));
            complete(words.sentence(finding));
            finding.remedies().forEach(remedy -> complete(words.remedy(finding.calculator(), remedy)));
            finding.series().forEach(series -> {
                Texts texts = runner.texts(finding.calculator());
                complete(texts.get(Locale.ENGLISH, "series." + series.key()));
                complete(texts.get(Locale.ENGLISH, "axis." + series.xAxis().key()));
                complete(texts.get(Locale.ENGLISH, "axis." + series.yAxis().key()));
            });
        }
    }

    private static void complete(String text) {
        assertFalse(text.matches("(?s).*[\\[{][A-Za-z][A-Za-z0-9.:_-]*[]}].*"), () -> "text is not complete: " + text);
    }

    /** What a calculator offers, it declares beforehand: the kind of work, and the price-book codes that it needs. */
    @Test
    void offeredWorkIsDeclared() {
        for (Finding finding : findings()) {
            for (Remedy work : finding.remedies()) {
                assertTrue(
                        calculators().stream()
                                .map(Calculator::descriptor)
                                .filter(each -> each.id().equals(finding.calculator()))
                                .flatMap(each -> each.remedies().stream())
                                .anyMatch(kind -> kind.declares(work)),
                        finding.check().key() + " offers " + work);
            }
        }
    }

    @Test
    void figuresAgreeWithOutcomes() {
        for (Finding finding : findings()) {
            Finding.Figures figures = finding.printed();
            if (figures != null
                    && finding.check().limitType() != LimitType.REPORT
                    && finding.outcome() == Outcome.PASSES) {
                assertTrue(figures.margin() >= 0, finding.check().key() + " passes with a negative margin");
            }
        }
    }

    /** Where one check alone is asked, others may be left out, but it is answered as where all are. */
    @Test
    void aCheckThatIsAskedAloneIsAnsweredAlike() {
        Survey survey = survey();
        Candidate present = new Candidate(heater(), true);
        Runner runner = runner();
        for (Finding finding : runner.judge(survey, present).findings()) {
            String key = finding.check().key();
            List<String> alone = runner
                    .rejudging(survey, survey, present, grid -> grid, new Readings(survey), Set.of(key), null)
                    .all()
                    .stream()
                    .filter(each -> each.check().key().equals(key))
                    .map(CalculatorContract::figures)
                    .toList();
            assertEquals(List.of(figures(finding)), alone);
        }
    }

    private static String figures(Finding finding) {
        return finding.check().key() + " " + finding.outcome() + " " + finding.figures();
    }

    @Test
    void sameInputSameOutput() {
        assertEquals(plain(findings()), plain(findings()));
    }

    private static List<String> plain(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.check().key()
                        + finding.outcome()
                        + finding.printed()
                        + finding.condition()
                        + new java.util.TreeMap<>(finding.arguments())
                        + finding.working())
                .toList();
    }

    @Test
    void theSurveyIsNotChanged() {
        Survey survey = survey();
        Survey before = EcoreUtil.copy(survey);
        findings(survey, heater());
        assertTrue(EcoreUtil.equals(before, survey));
    }

    @TestFactory
    Stream<DynamicTest> everyRangeEndSurvives() {
        List<DynamicTest> tests = new ArrayList<>();
        for (Calculator calculator : calculators()) {
            for (Formula formula : calculator.descriptor().formulas()) {
                for (boolean least : new boolean[] {true, false}) {
                    tests.add(DynamicTest.dynamicTest(
                            formula.name() + (least ? " least" : " most"), () -> atEnd(calculator, formula, least)));
                }
            }
        }
        return tests.stream();
    }

    private static void atEnd(Calculator calculator, Formula formula, boolean least) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (Parameter parameter : formula.parameters()) {
            Kind kind = parameter.kind();
            if (kind != null) {
                double end = least ? parameter.least() : parameter.most();
                typed.put(parameter.key(), Quantities.ofSi(kind, end).toString());
            } else if (!parameter.words().isEmpty()) {
                typed.put(
                        parameter.key(),
                        parameter.words().get(least ? 0 : parameter.words().size() - 1));
            }
        }
        try {
            Answer answer = formula.apply(Arguments.parse(formula.parameters(), typed));
            assertTrue(
                    answer.results().isEmpty() == !answer.trouble().isEmpty(),
                    formula.name() + " has neither result nor trouble, or both");
            answer.results()
                    .forEach(result ->
                            complete(calculator.descriptor().texts().get(Locale.ENGLISH, "result." + result.key())));
            if (!answer.trouble().isEmpty()) {
                complete(calculator.descriptor().texts().get(Locale.ENGLISH, "trouble." + answer.trouble()));
            }
        } catch (ArgumentException refused) {
            assertNotNull(refused.getMessage());
        }
    }
}
