// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Assumptions;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.calculator.circuit.CircuitCalculator;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.engine.SourceText;
import twinfeed.calculator.flow.FlowCalculator;
import twinfeed.calculator.pressure.PressureCalculator;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.Assumption;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Series;
import twinfeed.model.assessment.Step;
import twinfeed.model.assessment.Supply;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;
import twinfeed.units.text.Texts;

/** A record says all that the calculators answered of a house, beside which it stands here. */
class AssessmentRecordTest {
    private static final List<Calculator> CALCULATORS =
            List.of(new FlowCalculator(), new PressureCalculator(), new CircuitCalculator());
    private static final FindingText WORDS = new FindingText(
            new Runner(CALCULATORS, (mean, spread, month, southern) -> mean + spread + month), Locale.UK);
    private static final SourceText SOURCES = SourceText.in(Locale.UK);

    /** With tolerances and works: the unit that is there, and one other heater. */
    private static AssessedJob judged(String heater) {
        TwinfeedService service = new TwinfeedService(CALCULATORS);
        return service.judge(service.open(Demo.FOLDER.resolve("alder-beck.job"), null), null, heater, Locale.UK);
    }

    /** As the house is, which is quick. */
    private static AssessedJob asItIs() {
        TwinfeedService service = new TwinfeedService(CALCULATORS);
        return service.quickAssess(service.open(Demo.FOLDER.resolve("alder-beck.job"), null), Locale.UK);
    }

    private static OptionAssessment option(AssessedJob judged, String heater) {
        return judged.record().getOptions().stream()
                .filter(option -> option.getHeaterId().equals(heater))
                .findFirst()
                .orElseThrow();
    }

    /** The findings in all options as the house is, beside what the calculators answered. */
    private static void eachFinding(AssessedJob judged, BiConsumer<twinfeed.calculator.Finding, Finding> compares) {
        List<OptionResult> options = judged.assessed().options();
        assertEquals(options.size(), judged.record().getOptions().size());
        for (int i = 0; i < options.size(); i++) {
            compare(
                    options.get(i).findings(),
                    judged.record().getOptions().get(i).getFindings(),
                    compares);
        }
    }

    private static void compare(
            List<twinfeed.calculator.Finding> answered,
            List<Finding> recorded,
            BiConsumer<twinfeed.calculator.Finding, Finding> compares) {
        assertEquals(answered.size(), recorded.size());
        for (int i = 0; i < answered.size(); i++) {
            compares.accept(answered.get(i), recorded.get(i));
        }
    }

    @Test
    void aRecordNamesRulesProgramAndAssumptions() {
        AssessedJob judged = asItIs();
        AssessmentResult assessed = judged.assessed();
        Assessment record = judged.record();
        assertEquals(SOURCES.of(assessed.rules().title()), record.getRules());
        assertEquals(SOURCES.of(assessed.rules().caution()), record.getRulesNote());
        assertEquals(TwinfeedService.VERSION, record.getProgram());
        assertEquals(assessed.assumptions().size(), record.getAssumptions().size());
        for (int i = 0; i < assessed.assumptions().size(); i++) {
            Assumptions.Assumption made = assessed.assumptions().get(i);
            Assumption told = record.getAssumptions().get(i);
            assertEquals(made.key(), told.getKey());
            assertEquals(WORDS.assumption(made), told.getText());
            assertEquals(made.tabulated() ? true : null, told.getTabulated(), told.getKey());
        }
        assertEquals(
                2,
                assessed.assumptions().stream()
                        .map(Assumptions.Assumption::tabulated)
                        .distinct()
                        .count());
    }

    @Test
    void anOptionNamesItsHeaterAndWhatDecides() {
        AssessedJob judged = judged("h105");
        OptionAssessment present = option(judged, "h85");
        assertEquals("Heater 8.5 kW, two-element", present.getTitle());
        assertEquals(8.5, present.getPowerKw());
        assertEquals(Verdict.SUITS_WITH_WORK, present.getVerdict());
        assertEquals("circuit.capacity", present.getBinding());
        assertEquals(List.of(), present.getUnmended());
        assertTrue(present.getPresent());
        assertEquals("circuit.smallestConductor", option(judged, "h105").getBinding());
        assertFalse(option(judged, "h105").getPresent());
    }

    @Test
    void aHeaterWithoutTitleOrPowerGoesByItsId() {
        Heater nameless = CatalogueFactory.eINSTANCE.createHeater();
        nameless.setId("x1");
        OptionAssessment option = new TwinfeedService(List.of())
                .asItStands(SurveyFactory.eINSTANCE.createSurvey(), List.of(new Candidate(nameless, false)), Locale.UK)
                .getOptions()
                .get(0);
        assertEquals("x1", option.getTitle());
        assertNull(option.getPowerKw());
    }

    @Test
    void aFindingSaysWhatItsCheckAnswered() {
        AssessedJob judged = asItIs();
        Set<String> seen = new TreeSet<>();
        eachFinding(judged, (answer, record) -> {
            String key = answer.check().key();
            assertEquals(key, record.getKey());
            assertEquals(answer.calculator(), record.getCalculator(), key);
            assertEquals(WORDS.title(answer), record.getTitle(), key);
            assertEquals(WORDS.sentence(answer), record.getText(), key);
            assertEquals(WORDS.forCustomer(answer), record.getCustomerText(), key);
            assertEquals(
                    answer.remedies().stream()
                            .map(work -> WORDS.remedy(answer.calculator(), work))
                            .toList(),
                    record.getOffers(),
                    key);
            seen.add(record.getOffers().isEmpty() ? "no offer" : "offer");
            assertEquals(answer.check().kind(), record.getKind(), key);
            assertEquals(answer.outcome(), record.getOutcome(), key);
            assertEquals(answer.condition().subject(), record.getSubject(), key);
            String condition = WORDS.condition(answer.condition());
            assertEquals(condition.isEmpty() ? null : condition, record.getCondition(), key);
            seen.add(condition.isEmpty() ? "no condition" : "condition");
            String source = answer.source().isEmpty() ? null : SOURCES.of(answer.source());
            assertEquals(source, record.getSource(), key);
            seen.add(source == null ? "no source" : "source");
            assertEquals(key.startsWith("circuit.") ? Supply.ELECTRICITY : Supply.WATER, record.getSupply(), key);
            assertEquals(answer.check().topic() != CheckTopic.OTHER, record.isSetTopic(), key);
            assertEquals(answer.check().topic(), record.getTopic(), key);
        });
        assertEquals(Set.of("condition", "no condition", "source", "no source", "offer", "no offer"), seen);
    }

    @Test
    void figuresStandInTheUnitThatIsPrinted() {
        AssessedJob judged = asItIs();
        Set<String> seen = new TreeSet<>();
        eachFinding(judged, (answer, record) -> {
            twinfeed.calculator.Finding.Figures figures = answer.printed();
            String key = answer.check().key();
            boolean limited = figures != null && figures.limited();
            assertEquals(figures == null ? null : answer.check().unit().symbol(), record.getUnit(), key);
            assertEquals(figures == null ? null : (Double) figures.value(), record.getValue(), key);
            assertEquals(limited ? (Double) figures.limit() : null, record.getLimit(), key);
            assertEquals(limited ? (Double) figures.margin() : null, record.getMargin(), key);
            seen.add(figures == null ? "none" : limited ? "limited" : "reported");
        });
        assertEquals(Set.of("limited", "none", "reported"), seen);
    }

    /** The interval is that of the margin in the unit that is printed; a check in words has none. */
    @Test
    void howSureAFindingIsStandsBesideIt() {
        AssessedJob judged = judged("h105");
        Set<String> seen = new TreeSet<>();
        eachFinding(judged, (answer, record) -> {
            PassProbability chance = answer.chance();
            String key = answer.check().key();
            boolean interval = chance != null && answer.figures() != null;
            assertEquals(chance == null ? null : (Double) chance.passes(), record.getChance(), key);
            DisplayUnit unit = answer.check().unit();
            assertEquals(interval ? (Double) unit.fromSi(chance.interval().low()) : null, record.getLow(), key);
            assertEquals(interval ? (Double) unit.fromSi(chance.interval().high()) : null, record.getHigh(), key);
            boolean named = chance != null && !chance.interval().remeasure().isEmpty();
            assertEquals(named ? WORDS.remeasure(chance) : null, record.getRemeasure(), key);
            seen.add(chance == null ? "not asked" : named ? "measure again" : "nothing to measure");
        });
        assertEquals(Set.of("measure again", "not asked", "nothing to measure"), seen);
    }

    @Test
    void aCurveHasTitlesUnitsAndItsPoints() {
        AssessedJob judged = asItIs();
        Series along = option(judged, "h85").getFindings().stream()
                .filter(finding -> finding.getKey().equals("circuit.voltageDrop"))
                .flatMap(finding -> finding.getSeries().stream())
                .findFirst()
                .orElseThrow();
        twinfeed.calculator.Series drawn = judged.assessed().options().get(0).findings().stream()
                .filter(finding -> finding.check().key().equals("circuit.voltageDrop"))
                .flatMap(finding -> finding.series().stream())
                .findFirst()
                .orElseThrow();
        Texts texts = new CircuitCalculator().descriptor().texts();
        assertEquals(drawn.key(), along.getKey());
        assertEquals(texts.get(Locale.UK, "series." + drawn.key()), along.getTitle());
        assertEquals(texts.get(Locale.UK, "axis." + drawn.xAxis().key()), along.getXTitle());
        assertEquals(texts.get(Locale.UK, "axis." + drawn.yAxis().key()), along.getYTitle());
        assertEquals(List.of("m", "V"), List.of(along.getXUnit(), along.getYUnit()));
        assertEquals(
                List.of("start", "board to loft", "loft, under insulation", "drop to the shower"), along.getLabels());
        assertEquals(Arrays.stream(drawn.x()).boxed().toList(), along.getX(), "metres are SI");
        assertEquals(Arrays.stream(drawn.y()).boxed().toList(), along.getY(), "volts are SI");
        assertTrue(along.getX().size() > 1);
    }

    @Test
    void aLineOfAWorkingHasItsMeaningSourceAndOrigin() {
        AssessedJob judged = asItIs();
        Set<String> seen = new TreeSet<>();
        eachFinding(judged, (answer, record) -> {
            List<twinfeed.calculator.formula.Step> steps = answer.working().steps();
            assertEquals(steps.size(), record.getSteps().size(), answer.check().key());
            for (int i = 0; i < steps.size(); i++) {
                twinfeed.calculator.formula.Step step = steps.get(i);
                Step line = record.getSteps().get(i);
                assertEquals(step.symbol(), line.getSymbol());
                assertEquals(WORDS.meaning(answer.calculator(), step), line.getMeaning());
                assertEquals(step.value(), line.getValue());
                assertEquals(step.unit(), line.getUnit());
                assertEquals(step.expression(), line.getExpression());
                assertEquals(step.source().isEmpty() ? null : SOURCES.of(step.source()), line.getSource());
                assertEquals(step.origin().isEmpty() ? null : step.origin(), line.getOrigin());
                seen.add(step.source().isEmpty() ? "no source" : "source");
                seen.add(step.origin().isEmpty() ? "no origin" : "origin");
            }
        });
        assertEquals(Set.of("no origin", "no source", "origin", "source"), seen);
    }

    @Test
    void workNamesWhatItFixesAndNeeds() {
        AssessedJob judged = judged("h105");
        List<Remedy> works = option(judged, "h105").getRemedies();
        assertEquals(
                List.of("full-bore-valve", "enclosure-rcbo-45", "cable-10"),
                works.stream().map(Remedy::getId).toList());
        Remedy device = works.get(1);
        assertEquals("device", device.getKey());
        assertEquals("RCBO of 45 A in a small enclosure of its own at the meter tails", device.getTitle());
        assertEquals(
                "A new safety device for the shower (RCBO, 45 A) in a new small box of its own beside the meter",
                device.getCustomerTitle());
        assertEquals(
                "A new cable to the shower, 10.2 m, laid where it can be reached",
                works.get(2).getCustomerTitle());
        assertEquals(
                "New 10 mm² cable by the same route, laid clear of insulation and of other cables, 10.2 m",
                works.get(2).getTitle());
        assertEquals(List.of("circuit.designCurrent", "circuit.rcdRating"), device.getMends());
        assertEquals(
                List.of("tails-enclosure 1", "rcbo-45 1", "task-change-device 1"),
                device.getItems().stream()
                        .map(item -> item.getCode() + " " + item.getQuantity())
                        .toList());
        assertFalse(device.getEnquiry());
        assertEquals(List.of("pressure.switch"), works.get(0).getMends(), "too close to call is not failing outright");
    }

    /** A check whose text says nothing of the work: the work goes by its id, with the delay and the enquiry that it needs. */
    @Test
    void workWithoutWordsGoesByItsId() {
        Check check = Check.of("made.up", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);
        twinfeed.calculator.Remedy work = new twinfeed.calculator.Remedy(
                "made-up-work", "madeUp", Map.of(), List.of(), true, 5, survey -> survey.setNotes("done"));
        TwinfeedService service = new TwinfeedService(
                List.of(new SyntheticCalculator("made-up", List.of(check), (survey, findings) -> findings.on(check)
                        .compare("done".equals(survey.getNotes()) ? 1 : -1, 0)
                        .remedy(work)
                        .add())));
        OpenedJob opened = service.open(Demo.FOLDER.resolve("rowan-brook.job"), null);
        Remedy record = service.judge(opened, null, "h95", Locale.UK)
                .record()
                .getOptions()
                .get(1)
                .getRemedies()
                .get(0);
        assertEquals("made-up-work", record.getTitle());
        assertNull(record.getCustomerTitle());
        assertTrue(record.getEnquiry());
        assertEquals(5, record.getLeadDays());
        assertEquals(List.of("made.up"), record.getMends());
    }

    /** What the work does not change has its working above already. */
    @Test
    void afterTheWorkAWorkingStandsOnlyWhereSomethingChanged() {
        AssessedJob judged = judged("h105");
        Set<String> seen = new TreeSet<>();
        for (int i = 0; i < judged.plans().size(); i++) {
            WorkPlan plan = judged.plans().get(i);
            compare(plan.after().findings(), judged.record().getOptions().get(i).getAfterWork(), (after, record) -> {
                twinfeed.calculator.Finding before =
                        plan.before().finding(after.check().key()).orElseThrow();
                boolean same = before.outcome() == after.outcome()
                        && Objects.equals(before.figures(), after.figures())
                        && before.working().equals(after.working());
                assertEquals(after.outcome(), record.getOutcome());
                assertEquals(
                        same ? 0 : after.working().steps().size(),
                        record.getSteps().size(),
                        after.check().key());
                if (!after.working().steps().isEmpty()) {
                    seen.add(same ? "as before" : "changed");
                }
            });
        }
        assertEquals(Set.of("as before", "changed"), seen);
    }

    @Test
    void anOptionWithoutWorkSaysNothingOfAfterwards() {
        asItIs().record().getOptions().forEach(option -> assertEquals(List.of(), option.getAfterWork()));
    }

    /** A residual-current breaker of 40 A takes the place of a breaker of 40 A: what is read at the old one is not read at the new one. */
    @Test
    void aReadingThatTheWorkRenewsIsNotReadAtTheOldThing() {
        Set<String> origins = new TreeSet<>();
        List<OptionAssessment> options = judged("h95s").record().getOptions();
        options.get(1).getAfterWork().forEach(finding -> finding.getSteps()
                .forEach(step -> origins.add(String.valueOf(step.getOrigin()))));
        assertTrue(origins.contains("done.survey.electricity.circuit.device.rating"), origins.toString());
        assertFalse(origins.contains("survey.electricity.circuit.device.rating"), origins.toString());
    }
}
