// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.ServiceLoader;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.calculator.engine.AssessmentResult;
import twinfeed.calculator.engine.CalculatorProblem;
import twinfeed.calculator.engine.IntakeModel;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.search.WorkCost;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.engineering.water.MainsTemperature;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.job.Job;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;
import twinfeed.pdf.QuotePdf;
import twinfeed.pricing.TranslatedBook;
import twinfeed.workbook.QuoteWorkbook;

/**
 * Opens jobs and price books and assesses jobs with the calculators that were found: the service that window and command line start from. Beside
 * it, and made with it, stand {@link twinfeed.usecase.faults.FaultFindingService}, {@link twinfeed.usecase.quote.QuotingService},
 * {@link twinfeed.usecase.quote.IssuedQuotes} and {@link twinfeed.usecase.completion.CompletionService}. Stateless but for its
 * calculators; thread-safe.
 */
@Component(service = TwinfeedService.class)
public final class TwinfeedService {
    /** Version of the program, as outputs name it. */
    public static final String VERSION = ProgramVersion.read();

    private static final IntakeModel INTAKE =
            (mean, spread, month, southern) -> new MainsTemperature(mean, spread, southern).inMonth(Month.of(month));

    private final Runner runner;

    private final List<CalculatorProblem> folderProblems;

    private final boolean sideBySide;

    /** With the calculators that the framework found, those of the folder for third parties among them. */
    @Activate
    public TwinfeedService(
            @Reference CalculatorFolder folder,
            @Reference(policyOption = ReferencePolicyOption.GREEDY) List<Calculator> calculators) {
        this(calculators, folder.problems());
    }

    /** With these calculators. */
    public TwinfeedService(List<Calculator> calculators) {
        this(calculators, List.of());
    }

    private TwinfeedService(List<Calculator> calculators, List<CalculatorProblem> folderProblems) {
        this(new Runner(new ArrayList<>(calculators), INTAKE), folderProblems, true);
    }

    private TwinfeedService(Runner runner, List<CalculatorProblem> folderProblems, boolean sideBySide) {
        this.runner = runner;
        this.folderProblems = List.copyOf(folderProblems);
        this.sideBySide = sideBySide;
    }

    /** With the calculators of the class path, for batch engines, benchmarks and tests. */
    public static TwinfeedService onClassPath() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return new TwinfeedService(found);
    }

    /**
     * The same, which plans the works of a job's heaters one after the other: for lists, of which several rows are judged at once already
     * and threads of threads would only wait for one another.
     */
    public TwinfeedService oneByOne() {
        return new TwinfeedService(runner, folderProblems, false);
    }

    /** What is wrong with calculators: files that brought none, those left out and those that broke the rules while they ran. */
    public List<CalculatorProblem> problems() {
        return Stream.concat(folderProblems.stream(), runner.problems().stream())
                .toList();
    }

    /** The calculators in the order in which they run. */
    public List<Calculator> calculators() {
        return runner.calculators();
    }

    /** Key of the first check that answers a topic. */
    public Optional<String> check(CheckTopic topic) {
        return runner.calculators().stream()
                .flatMap(calculator -> calculator.descriptor().checks().stream())
                .filter(check -> check.topic() == topic)
                .map(Check::key)
                .findFirst();
    }

    /** All formulas that the calculators publish, by name. */
    public List<NamedFormula> formulas() {
        return runner.calculators().stream()
                .map(Calculator::descriptor)
                .flatMap(statement -> statement.formulas().stream()
                        .map(formula -> new NamedFormula(statement.id(), statement.texts(), formula)))
                .sorted(java.util.Comparator.comparing(NamedFormula::name))
                .toList();
    }

    /** The formula of a name. */
    public Optional<NamedFormula> formula(String name) {
        return formulas().stream().filter(each -> each.name().equals(name)).findFirst();
    }

    /**
     * Opens a job and its catalogue.
     *
     * @param file the job's file
     * @param catalogue a catalogue to be used instead of the one that the job names
     * @throws twinfeed.model.io.InputException if either cannot be used; every problem is in its message
     */
    public OpenedJob open(Path file, @Nullable Path catalogue) {
        return new JobOpening(runner.calculators()).open(file, catalogue, null);
    }

    /**
     * The same, which also warns of days on which something is said to have been done and which are still to come.
     *
     * @param today today's date
     */
    public OpenedJob open(Path file, @Nullable Path catalogue, LocalDate today) {
        return new JobOpening(runner.calculators()).open(file, catalogue, today);
    }

    /**
     * Checks a job that was made from an opened one, whose catalogue it keeps.
     *
     * @throws twinfeed.model.io.InputException if it cannot be used; every problem is in its message
     */
    public OpenedJob checked(OpenedJob pattern, Job job) {
        return new JobOpening(runner.calculators()).checked(pattern, job);
    }

    /**
     * Reads a price book, *.csv or *.xlsx.
     *
     * @throws twinfeed.model.io.InputException if it cannot be used; nothing of it is taken then
     */
    public PriceBook book(Path file) {
        return new BookOpening().open(file);
    }

    /**
     * What taking over a price list would do, row by row.
     *
     * @param file the list, *.csv or *.xlsx
     * @param present the book that it would take the place of; absent for none
     * @throws twinfeed.model.io.InputException if it cannot be read as rows at all
     */
    public BookReport bookReport(Path file, @Nullable PriceBook present) {
        return BookReport.of(new BookOpening().report(file), present, new PriceCodes(runner.calculators()));
    }

    /** Codes that quotes may need and a book lacks, by what needs them. */
    public List<BookReport.Lack> lacking(PriceBook book) {
        return new PriceCodes(runner.calculators()).lacking(book);
    }

    /**
     * Assesses a job and finds the least costly work for every heater that does not suit as the house is.
     *
     * @param opened the job
     * @param book price book by which work is compared; without one the fewest works win
     * @param heater id of the one candidate that is asked for, or null for all of the survey
     * @param locale language of the texts
     */
    public AssessedJob judge(OpenedJob opened, @Nullable PriceBook book, @Nullable String heater, Locale locale) {
        Candidates candidates = new Candidates(opened);
        AssessedJob judged = judgeCandidates(
                opened,
                heater == null ? candidates.all() : candidates.only(heater),
                BookCosts.of(book, opened),
                locale);
        return priced(judged, book, locale);
    }

    /**
     * The same for all heaters of the survey, for somebody who may not want the answer any more before it is there.
     *
     * @param wanted whether it is still wanted; asked by several threads
     * @param cache keeps what calculators answered, so that after one edit of the job only those are run that read what was edited
     * @throws NoLongerWantedException if it was not
     */
    public AssessedJob judge(
            OpenedJob opened, @Nullable PriceBook book, Locale locale, BooleanSupplier wanted, AnswerCache cache) {
        AssessedJob judged =
                judge(opened, new Candidates(opened).all(), BookCosts.of(book, opened), locale, wanted, cache);
        return priced(judged, book, locale);
    }

    /**
     * The same with the names of heaters in the language, as far as the price book has them in it, and with the works among its assumptions that
     * could not be priced.
     */
    private AssessedJob priced(AssessedJob judged, @Nullable PriceBook book, Locale locale) {
        if (book != null) {
            judged.record().getOptions().stream()
                    .filter(option -> option.getTitle() != null)
                    .forEach(option -> option.setTitle(TranslatedBook.text(book, locale, option.getTitle())));
            new AssessmentMapper(runner, locale).addUnpriced(judged.record(), book, UnpricedWork.of(judged, book));
        }
        return judged;
    }

    /**
     * The same for all heaters of the survey and others of the catalogue beside them.
     *
     * @param heaters ids of the heaters that are asked for, or {@link twinfeed.pricing.QuoteRequest#PRESENT}
     * @throws twinfeed.model.io.InputException if the catalogue has no such heater; the nearest is named
     */
    public AssessedJob judgeWith(OpenedJob opened, @Nullable PriceBook book, List<String> heaters, Locale locale) {
        AssessedJob judged =
                judgeCandidates(opened, new Candidates(opened).with(heaters), BookCosts.of(book, opened), locale);
        return priced(judged, book, locale);
    }

    /**
     * Assesses a job as the house is, neither counting tolerances nor looking for work: quick, for a first look while
     * {@link #judge} is under way. Verdicts may still change.
     *
     * @param opened the job
     * @param locale language of the texts
     */
    public AssessedJob quickAssess(OpenedJob opened, Locale locale) {
        List<Candidate> candidates = new Candidates(opened).all();
        Survey survey = Candidates.withPresentHeater(opened.job().getSurvey(), candidates);
        AssessmentResult assessed = runner.assess(survey, candidates);
        List<WorkPlan> plans = withoutWork(assessed);
        return new AssessedJob(
                opened, assessed, plans, new AssessmentMapper(runner, locale).record(survey, assessed, plans, VERSION));
    }

    /**
     * What the checks say of heaters in a house as it stands, neither counting tolerances nor looking for work.
     *
     * @param house the house, with the data of the unit that is there
     * @param candidates the heaters
     * @param locale language of the texts
     */
    public Assessment asItStands(Survey house, List<Candidate> candidates, Locale locale) {
        AssessmentResult assessed = runner.assess(house, candidates);
        return new AssessmentMapper(runner, locale).record(house, assessed, withoutWork(assessed), VERSION);
    }

    private static List<WorkPlan> withoutWork(AssessmentResult assessed) {
        return assessed.options().stream()
                .map(option -> new WorkPlan(
                        List.of(),
                        option,
                        option,
                        option.verdict(),
                        List.of(),
                        WorkCost.BY_COUNT.of(List.of()),
                        false,
                        List.of()))
                .toList();
    }

    /**
     * The same as {@link #judge(OpenedJob, PriceBook, String, Locale)} for chosen heaters, work being compared by these costs.
     *
     * @param candidates heaters of the job, see {@link Candidates}
     * @param costs see {@link BookCosts#of}
     */
    public AssessedJob judgeCandidates(
            OpenedJob opened, List<Candidate> candidates, WorkCost.Source costs, Locale locale) {
        return judge(opened, candidates, costs, locale, () -> true, null);
    }

    private AssessedJob judge(
            OpenedJob opened,
            List<Candidate> candidates,
            WorkCost.Source costs,
            Locale locale,
            BooleanSupplier wanted,
            @Nullable AnswerCache cache) {
        Survey survey = Candidates.withPresentHeater(opened.job().getSurvey(), candidates);
        AssessmentResult assessed = runner.assess(survey, candidates);
        List<WorkPlan> plans = new Planning(runner, costs, sideBySide, wanted, cache).plans(survey, assessed.options());
        AssessmentResult sure = new AssessmentResult(
                assessed.rules(),
                assessed.grid(),
                plans.stream().map(WorkPlan::before).toList(),
                assessed.assumptions());
        return new AssessedJob(
                opened, sure, plans, new AssessmentMapper(runner, locale).record(survey, sure, plans, VERSION));
    }

    /**
     * Makes ready for writing quotes on a spare thread, which takes longer than judging a job on a machine just started. Calling it is never
     * necessary.
     *
     * @param asPdf whether they are written as PDF too
     */
    public void prepareWriting(boolean asPdf) {
        prepare(QuoteWorkbook::prepare, "workbook preparation");
        if (asPdf) {
            prepare(QuotePdf::prepare, "PDF preparation");
        }
    }

    private static void prepare(Runnable task, String name) {
        Thread thread = new Thread(task, name);
        thread.setDaemon(true);
        // A run that ends early, for example at unusable input, closes the bundles under it. Nobody needs the
        // preparation then, and writing says for itself what goes wrong.
        thread.setUncaughtExceptionHandler((ended, nothing) -> {});
        thread.start();
    }
}
