// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.FeedProfile;
import twinfeed.calculator.Finding;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.Series;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.FindingText;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.engine.SourceText;
import twinfeed.calculator.formula.Step;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Assumption;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.RemedyItem;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.RemedyPrices;
import twinfeed.units.text.Texts;

/**
 * Copies what the calculators answered into the model, with its texts in one language, for quotes, files and screens. Workings and curves are
 * written when they are first asked for.
 */
final class AssessmentMapper {
    private static final AssessmentFactory MAKE = AssessmentFactory.eINSTANCE;

    private final Runner runner;
    private final FindingText words;
    private final WorkOrder order;
    private final Locale locale;
    private final SourceText sources;
    private final Object oneAtATime = new Object();

    AssessmentMapper(Runner runner, Locale locale) {
        this.runner = runner;
        this.locale = locale;
        this.sources = SourceText.in(locale);
        this.words = new FindingText(runner, locale);
        this.order = new WorkOrder(runner.calculators());
    }

    /**
     * Records an assessment.
     *
     * @param survey the house as surveyed
     * @param assessed the results
     * @param plans a plan for each option, in the same order
     * @param program version of the program
     */
    Assessment record(Survey survey, AssessmentResult assessed, List<WorkPlan> plans, String program) {
        Assessment record = MAKE.createAssessment();
        record.setRules(sources.of(assessed.rules().title()));
        record.setRulesNote(sources.of(assessed.rules().caution()));
        record.setProgram(program);
        for (int i = 0; i < assessed.options().size(); i++) {
            record.getOptions().add(option(survey, assessed.options().get(i), plans.get(i)));
        }
        assessed.assumptions().forEach(each -> {
            Assumption assumption = MAKE.createAssumption();
            assumption.setKey(each.key());
            assumption.setText(words.assumption(each));
            if (each.tabulated()) {
                assumption.setTabulated(true);
            }
            record.getAssumptions().add(assumption);
        });
        return record;
    }

    private OptionAssessment option(Survey survey, OptionResult result, WorkPlan plan) {
        Heater heater = result.candidate().heater();
        OptionAssessment option = MAKE.createOptionAssessment();
        option.setHeaterId(heater.getId());
        option.setTitle(heater.getTitle() == null ? heater.getId() : heater.getTitle());
        option.setPresent(result.candidate().present());
        option.setPowerKw(heater.getPower() == null ? null : heater.getPower().si() / 1000);
        option.setVerdict(plan.verdict());
        result.binding().ifPresent(finding -> option.setBinding(finding.check().key()));
        result.findings().forEach(finding -> option.getFindings().add(finding(finding)));
        order.of(plan.works()).forEach(work -> option.getRemedies().add(remedy(work, plan)));
        afterWork(survey, plan).forEach(finding -> option.getAfterWork().add(finding));
        option.getUnmended().addAll(plan.unmended());
        return option;
    }

    /** The answers with the works done; a working stands only where the work changed something, the others are above. */
    private List<twinfeed.model.assessment.Finding> afterWork(Survey survey, WorkPlan plan) {
        RenewedReadings renewed = new RenewedReadings(survey, plan.works());
        return plan.works().isEmpty()
                ? List.of()
                : plan.after().findings().stream()
                        .map(finding -> finding(finding, () -> changed(finding, plan.before()), renewed::origin))
                        .toList();
    }

    private static boolean changed(Finding after, OptionResult before) {
        return before.finding(after.check().key())
                .filter(finding -> finding.outcome() == after.outcome()
                        && Objects.equals(finding.figures(), after.figures())
                        && finding.working().equals(after.working()))
                .isEmpty();
    }

    private twinfeed.model.assessment.Finding finding(Finding finding) {
        return finding(finding, () -> true, Step::origin);
    }

    private twinfeed.model.assessment.Finding finding(
            Finding finding, BooleanSupplier withWorking, Function<Step, String> origin) {
        RecordedFinding record = new RecordedFinding(
                oneAtATime,
                new RecordedFinding.Sentences(() -> words.sentence(finding), () -> words.forCustomer(finding)),
                () -> withWorking.getAsBoolean() ? steps(finding, origin) : List.of(),
                () -> finding.series().stream()
                        .map(series -> series(finding, series))
                        .toList());
        record.setKey(finding.check().key());
        record.setCalculator(finding.calculator());
        record.setTitle(words.title(finding));
        record.setKind(finding.check().kind());
        CheckTopics.mark(record, finding.check().topic(), runner.supply(finding.calculator()));
        record.setOutcome(finding.outcome());
        figures(finding, record);
        String condition = words.condition(finding.condition());
        record.setCondition(condition.isEmpty() ? null : condition);
        record.setSource(finding.source().isEmpty() ? null : sources.of(finding.source()));
        chance(finding, record);
        record.getMissing().addAll(words.missing(finding));
        record.getMissingPaths().addAll(finding.missing());
        record.getNeeds().addAll(finding.check().needs());
        record.setSubject(finding.condition().subject());
        finding.remedies().forEach(offer -> record.getOffers().add(words.remedy(finding.calculator(), offer)));
        return record;
    }

    private static void figures(Finding finding, twinfeed.model.assessment.Finding record) {
        Finding.@Nullable Figures figures = finding.printed();
        if (figures != null) {
            record.setUnit(finding.check().unit().symbol());
            record.setValue(figures.value());
            if (figures.limited()) {
                record.setLimit(figures.limit());
                record.setMargin(figures.margin());
            }
        }
    }

    private void chance(Finding finding, RecordedFinding record) {
        @Nullable PassProbability chance = finding.chance();
        if (chance != null) {
            record.setChance(chance.passes());
            record.later(() -> {
                if (finding.figures() != null) {
                    record.setLow(
                            finding.check().unit().fromSi(chance.interval().low()));
                    record.setHigh(
                            finding.check().unit().fromSi(chance.interval().high()));
                }
                record.setRemeasure(chance.interval().remeasure().isEmpty() ? null : words.remeasure(chance));
            });
        }
    }

    private List<twinfeed.model.assessment.Step> steps(Finding finding, Function<Step, String> origin) {
        return finding.working().steps().stream()
                .map(step -> step(finding, step, origin.apply(step)))
                .toList();
    }

    private twinfeed.model.assessment.Step step(Finding finding, Step step, String origin) {
        String source = step.source().isEmpty() ? "" : sources.of(step.source());
        return StepMapper.record(step, words.meaning(finding.calculator(), step), source, origin);
    }

    private twinfeed.model.assessment.Series series(Finding finding, Series series) {
        Texts texts = runner.texts(finding.calculator());
        twinfeed.model.assessment.Series record = MAKE.createSeries();
        record.setKey(series.key());
        record.setTitle(texts.get(locale, "series." + series.key()));
        record.setXTitle(texts.get(locale, "axis." + series.xAxis().key()));
        record.setXUnit(series.xAxis().unit().symbol());
        record.setYTitle(texts.get(locale, "axis." + series.yAxis().key()));
        record.setYUnit(series.yAxis().unit().symbol());
        series.labels().stream().map(label -> label(texts, label)).forEach(record.getLabels()::add);
        for (double x : series.x()) {
            record.getX().add(series.xAxis().unit().fromSi(x));
        }
        for (double y : series.y()) {
            record.getY().add(series.yAxis().unit().fromSi(y));
        }
        return record;
    }

    /** A label in the reader's language where the calculator has words for it, for instance of a month; a name of the survey as it is. */
    private String label(Texts texts, String label) {
        if (label.equals(FeedProfile.START)) {
            return Runner.TEXTS.get(locale, "profile.start");
        }
        String word = texts.find(locale, "label." + label);
        return word == null ? label : word;
    }

    private twinfeed.model.assessment.Remedy remedy(Remedy work, WorkPlan plan) {
        twinfeed.model.assessment.Remedy record = MAKE.createRemedy();
        record.setId(work.id());
        record.setKey(work.kind());
        record.setTitle(words("remedy.", work).orElse(work.id()));
        words("customer.remedy.", work).ifPresent(record::setCustomerTitle);
        record.setEnquiry(work.enquiry());
        record.setLeadDays(work.leadDays());
        record.getMends().addAll(mends(work, plan));
        for (Remedy.Item item : work.items()) {
            RemedyItem each = MAKE.createRemedyItem();
            each.setCode(item.code());
            each.setQuantity(item.quantity());
            record.getItems().add(each);
        }
        return record;
    }

    /** Checks that failed before, pass with all the works done, and offered this one. */
    private static List<String> mends(Remedy work, WorkPlan plan) {
        return plan.before().findings().stream()
                .filter(Finding::rulesOut)
                .filter(finding ->
                        finding.remedies().stream().anyMatch(each -> each.id().equals(work.id())))
                .map(finding -> finding.check().key())
                .toList();
    }

    /** Adds what was assumed of works that a price book has no price for. */
    void addUnpriced(Assessment record, PriceBook book, List<UnpricedWork> unpriced) {
        for (UnpricedWork each : unpriced) {
            Assumption assumption = MAKE.createAssumption();
            assumption.setKey(RemedyPrices.UNPRICED);
            List<String> works = each.works().stream()
                    .map(work -> words("remedy.", work).orElse(work.id()))
                    .distinct()
                    .toList();
            assumption.setText(each.text(locale, Objects.requireNonNullElse(book.getTitle(), ""), works));
            record.getAssumptions().add(assumption);
        }
    }

    /** Two calculators may word a kind of work each for itself: the words are those that its arguments fill. */
    private Optional<String> words(String prefix, Remedy work) {
        String key = prefix + work.kind();
        return runner.calculators().stream()
                .map(calculator -> calculator.descriptor().texts())
                .filter(texts -> texts.filledBy(key, work.arguments()))
                .findFirst()
                .map(texts -> texts.format(locale, key, work.arguments()));
    }
}
