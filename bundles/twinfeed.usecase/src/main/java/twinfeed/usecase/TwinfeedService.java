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
import java.util.stream.Stream;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Reference;
import org.osgi.service.component.annotations.ReferencePolicyOption;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
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
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.choices.ChoicesInJob;
import twinfeed.usecase.choices.WorksLeftOut;
import twinfeed.workbook.QuoteWorkbook;

/** The use cases, the only service that the faces inject. Stateless but for its calculators; thread-safe. */
@Component(service = TwinfeedService.class)
public final class TwinfeedService {
    /** Version of the program, as outputs name it. */
    public static final String VERSION = ProgramVersion.read();

    private static final IntakeModel INTAKE =
            (mean, spread, month, southern) -> new MainsTemperature(mean, spread, southern).inMonth(Month.of(month));

    private final Runner runner;

    private final List<CalculatorProblem> folderProblems;

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
        this.runner = new Runner(new ArrayList<>(calculators), INTAKE);
        this.folderProblems = List.copyOf(folderProblems);
    }

    /** With the calculators of the class path, for batch engines, benchmarks and tests. */
    public static TwinfeedService onClassPath() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return new TwinfeedService(found);
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
                .flatMap(calculator -> calculator.statement().checks().stream())
                .filter(check -> check.topic() == topic)
                .map(Check::key)
                .findFirst();
    }

    /** All formulas that the calculators publish, by name. */
    public List<NamedFormula> formulas() {
        return runner.calculators().stream()
                .map(Calculator::statement)
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
        return new JobOpening(runner.calculators()).open(file, catalogue);
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
        return judge(opened, heater == null ? candidates.all() : candidates.only(heater), costs(book, opened), locale);
    }

    /**
     * The same for all heaters of the survey and others of the catalogue beside them.
     *
     * @param heaters ids of the heaters that are asked for, or {@link twinfeed.pricing.QuoteRequest#PRESENT}
     * @throws twinfeed.model.io.InputException if the catalogue has no such heater; the nearest is named
     */
    public AssessedJob judgeWith(OpenedJob opened, @Nullable PriceBook book, List<String> heaters, Locale locale) {
        return judge(opened, new Candidates(opened).with(heaters), costs(book, opened), locale);
    }

    /**
     * Assesses a job as the house is, neither counting tolerances nor looking for work: quick, for a first look while
     * {@link #judge} is under way. Verdicts may still change.
     *
     * @param opened the job
     * @param locale language of the texts
     */
    public AssessedJob glance(OpenedJob opened, Locale locale) {
        List<Candidate> candidates = new Candidates(opened).all();
        AssessmentResult assessed = runner.assess(withPresentHeater(opened.job().getSurvey(), candidates), candidates);
        List<WorkPlan> plans = assessed.options().stream()
                .map(option -> new WorkPlan(
                        List.of(), option, option, option.verdict(), List.of(), WorkCost.BY_COUNT.of(List.of()), false))
                .toList();
        return new AssessedJob(
                opened, assessed, plans, new AssessmentMapper(runner, locale).record(assessed, plans, VERSION));
    }

    private static WorkCost.Source costs(@Nullable PriceBook book, OpenedJob opened) {
        WorkCost.Source costs = book == null
                ? WorkCost.BY_COUNT
                : new BookCosts(book, opened.job().getSurvey().getTakenOn());
        return WorksLeftOut.of(costs, ChoicesInJob.of(opened.job()));
    }

    AssessedJob judge(OpenedJob opened, List<Candidate> candidates, WorkCost.Source costs, Locale locale) {
        Survey survey = withPresentHeater(opened.job().getSurvey(), candidates);
        AssessmentResult assessed = runner.assess(survey, candidates);
        List<WorkPlan> plans = new Planning(runner, costs).plans(survey, assessed.options());
        AssessmentResult sure = new AssessmentResult(
                assessed.rules(),
                assessed.grid(),
                plans.stream().map(WorkPlan::before).toList(),
                assessed.assumptions());
        Assessment record = new AssessmentMapper(runner, locale).record(sure, plans, VERSION);
        return new AssessedJob(opened, sure, plans, record);
    }

    /** Calculators compare with the unit that is there: its data go into a copy, for the survey may only name it. */
    static Survey withPresentHeater(Survey survey, List<Candidate> candidates) {
        Survey copy = EcoreUtil.copy(survey);
        candidates.stream().filter(Candidate::present).findFirst().ifPresent(candidate -> copy.getUnit()
                .setHeater(EcoreUtil.copy(candidate.heater())));
        return copy;
    }

    /**
     * Finds the fault of the unit that is there: ranked causes, the next step, and repair or replacement by price.
     *
     * @param opened the job
     * @param book price book for repair and replacement; null leaves prices out
     * @param date day of the prices
     * @param locale language of the texts
     * @throws twinfeed.model.io.InputException if the survey has no unit
     */
    public twinfeed.diagnosis.visit.FaultSheet faults(
            OpenedJob opened, @Nullable PriceBook book, LocalDate date, Locale locale) {
        return new FaultFindingService(this, opened, locale).sheet(book, date);
    }

    /**
     * The same for a job that was judged already, with repair and replacement priced.
     *
     * @param judged the job, judged with all its candidates and by that book
     * @param book price book for repair and replacement
     * @param date day of the prices
     * @param locale language of the texts
     * @throws twinfeed.model.io.InputException if the survey has no unit
     */
    public twinfeed.diagnosis.visit.FaultSheet faults(
            AssessedJob judged, PriceBook book, LocalDate date, Locale locale) {
        return new FaultFindingService(this, judged.opened(), locale).sheet(judged, book, date);
    }

    /**
     * The questions that a fault-finding may ask, those without opening anything first.
     *
     * @param locale language of the texts
     */
    public List<twinfeed.diagnosis.visit.FaultQuestion> faultQuestions(Locale locale) {
        FaultFindingService.readData();
        return twinfeed.diagnosis.visit.FaultQuestion.all(locale);
    }

    /**
     * Enters ticks of the safe isolation and answers into a job, then saves it; nothing is saved if one is refused. Whatever others
     * have entered meanwhile is kept: the job is read, changed and saved under a lock.
     *
     * @param file the job
     * @param catalogue heater catalogue instead of the one that the job names; null for that one
     * @param by who ticks and answers
     * @param at when, as text
     * @param ticks keys of the steps, in the order in which they were done
     * @param answers answers by key of the observation
     * @return the job as it was saved
     * @throws twinfeed.model.io.InputException if the job cannot be used or written, or a tick or answer is refused
     */
    public OpenedJob recordFaults(
            Path file,
            @Nullable Path catalogue,
            String by,
            String at,
            List<String> ticks,
            java.util.Map<String, String> answers) {
        return twinfeed.model.io.LockedFile.during(file, () -> {
            OpenedJob opened = open(file, catalogue);
            new twinfeed.diagnosis.visit.FaultLog(opened.job().getSurvey(), file.toString(), by, at)
                    .enter(ticks, answers);
            twinfeed.model.io.JobFile.save(opened.job(), file, opened.fingerprint());
            return opened;
        });
    }

    /**
     * Enters the readings taken when the work is finished into a job, then saves it; nothing is saved if one is refused.
     *
     * @param file the job
     * @param catalogue heater catalogue instead of the one that the job names; null for that one
     * @param by who tested
     * @param on the day
     * @param readings texts by name of the field, see {@link twinfeed.diagnosis.completion.CompletionLog}
     * @return the job as it was saved
     * @throws twinfeed.model.io.InputException if the job cannot be used or written, or a reading is refused
     */
    public OpenedJob recordCompletion(
            Path file, @Nullable Path catalogue, String by, LocalDate on, java.util.Map<String, String> readings) {
        return twinfeed.model.io.LockedFile.during(file, () -> {
            OpenedJob opened = open(file, catalogue);
            new twinfeed.diagnosis.completion.CompletionLog(opened.job(), file.toString()).enter(by, on, readings);
            OpenedJob checked = checked(opened, opened.job());
            twinfeed.model.io.JobFile.save(opened.job(), file, opened.fingerprint());
            return checked;
        });
    }

    /**
     * Judges the readings taken when the work is finished, in the house with that work done.
     *
     * @param opened the job
     * @param book price book by which the work was found; null for the fewest works
     * @param locale language of the texts
     * @throws twinfeed.model.io.InputException if no readings were entered
     */
    public twinfeed.diagnosis.completion.CompletionSheet completion(
            OpenedJob opened, @Nullable PriceBook book, Locale locale) {
        return new CompletionService(this, runner, locale).sheet(opened, costs(book, opened));
    }

    /**
     * The house as it should be when the work is finished: for judging readings one after the other while they are typed.
     *
     * @param opened the job; what it says of the finished work may be absent
     * @param book price book by which the work was found; null for the fewest works
     * @param locale language of the texts
     * @throws twinfeed.model.io.InputException if there is no unit in it
     */
    public FinishedHouse finished(OpenedJob opened, @Nullable PriceBook book, Locale locale) {
        return new CompletionService(this, runner, locale).finished(opened, costs(book, opened));
    }

    /** Judges readings in a finished house; neither is changed. */
    public twinfeed.diagnosis.completion.CompletionSheet completion(
            FinishedHouse finished, twinfeed.model.job.Completion completion, Locale locale) {
        return new CompletionService(this, runner, locale).sheet(finished, completion);
    }

    /**
     * Writes the record of finished work and the page for the customer; all of it appears, or nothing.
     *
     * @param day the day on which they are printed
     * @throws twinfeed.model.io.InputException if a file cannot be written
     */
    public void write(
            OpenedJob opened,
            twinfeed.diagnosis.completion.CompletionSheet sheet,
            FirmFile firm,
            LocalDate day,
            Locale locale,
            CompletionPaths out) {
        new CompletionService(this, runner, locale).write(opened, sheet, firm, day, out);
    }

    /**
     * Why the unit is unsafe: where readings after the work were entered, those that fail on safety and the checks of safety that the
     * house as it was finished fails; else the failed checks of safety of the unit that is there. Empty if there is nothing of the kind.
     */
    public List<twinfeed.usecase.completion.UnsafeNoticeWriter.Reason> unsafe(
            OpenedJob opened, @Nullable PriceBook book, Locale locale) {
        return new CompletionService(this, runner, locale).reasons(opened, costs(book, opened));
    }

    /** Why the unit is unsafe, by the readings after the work; empty if nothing says so. */
    public List<twinfeed.usecase.completion.UnsafeNoticeWriter.Reason> unsafe(
            twinfeed.diagnosis.completion.CompletionSheet sheet) {
        return CompletionService.reasons(sheet);
    }

    /**
     * Writes the notice of an unsafe unit.
     *
     * @param reasons why it is unsafe; at least one
     * @throws twinfeed.model.io.InputException if a file cannot be written
     */
    public void writeNotice(
            OpenedJob opened,
            List<twinfeed.usecase.completion.UnsafeNoticeWriter.Reason> reasons,
            FirmFile firm,
            LocalDate day,
            Locale locale,
            OutputPaths out) {
        new CompletionService(this, runner, locale).notice(opened, reasons, firm, day, out);
    }

    /**
     * The parts of the option that the customer accepted, like ones added up.
     *
     * @throws UnusableException if the quote was not accepted
     */
    public List<twinfeed.usecase.completion.PartsListWriter.Part> parts(IssuedQuote issued) {
        return twinfeed.usecase.completion.PartsListWriter.parts(CompletionService.accepted(issued));
    }

    /**
     * Writes the list of those parts.
     *
     * @throws UnusableException if the quote was not accepted
     * @throws twinfeed.model.io.InputException if a file cannot be written
     */
    public void writeParts(IssuedQuote issued, FirmFile firm, LocalDate day, Locale locale, OutputPaths out) {
        new CompletionService(this, runner, locale)
                .parts(issued, new IssuedQuotes().survey(issued.file()), firm, day, out);
    }

    /**
     * Prices what was assessed.
     *
     * @param judged the assessed job
     * @param book the price book
     * @param date day of the quote
     * @param firm who quotes, perhaps with its own wording of the standing texts
     * @param locale language of the texts; that of the assessment
     * @return a draft
     * @throws twinfeed.model.io.InputException if the book lacks something that the work needs
     */
    public Quote quote(AssessedJob judged, PriceBook book, LocalDate date, FirmFile firm, Locale locale) {
        return quote(judged, book, date, firm, locale, List.of());
    }

    /**
     * Prices named heaters of what was assessed, in this order and whatever their verdicts.
     *
     * @param heaters ids out of the assessment, at most four, or {@link twinfeed.pricing.QuoteRequest#PRESENT}; none lets the verdicts decide
     * @throws UnusableException if a heater was not assessed, or the book lacks something that the work needs
     */
    public Quote quote(
            AssessedJob judged, PriceBook book, LocalDate date, FirmFile firm, Locale locale, List<String> heaters) {
        return new QuoteMaking(judged).draft(book, date, firm, locale, heaters);
    }

    /**
     * Writes a quote as a workbook; the file appears whole or not at all.
     *
     * @throws twinfeed.model.io.InputException if the file cannot be written
     */
    public void write(AssessedJob judged, Quote quote, FirmFile firm, Locale locale, Path out) {
        write(judged, quote, firm, locale, OutputPaths.workbook(out));
    }

    /**
     * Writes a quote as a workbook, as a PDF or as both; all of it appears, or nothing.
     *
     * @throws twinfeed.model.io.InputException if a file cannot be written
     */
    public void write(AssessedJob judged, Quote quote, FirmFile firm, Locale locale, OutputPaths out) {
        new QuoteMaking(judged).write(quote, null, firm, locale, out);
    }

    /**
     * Writes the job sheet of a fault-finding as a workbook, as a PDF or as both; all of it appears, or nothing.
     *
     * @param opened the job
     * @param sheet what was found
     * @param firm whose sheet it is
     * @param day day of the visit and of the prices
     * @param locale language of the sheet, that of its texts
     * @throws twinfeed.model.io.InputException if a file cannot be written
     */
    public void write(
            OpenedJob opened,
            twinfeed.diagnosis.visit.FaultSheet sheet,
            FirmFile firm,
            LocalDate day,
            Locale locale,
            OutputPaths out) {
        new FaultFindingService(this, opened, locale).write(sheet, firm, day, out);
    }

    /**
     * Makes ready to write the workbook and PDF of a quote that is issued next: room is taken for them, and what can fail fails here.
     *
     * @throws twinfeed.model.io.InputException or UnusableException if they cannot be made or written
     */
    public IssuedQuoteWriting prepare(AssessedJob judged, Quote draft, FirmFile firm, Locale locale, OutputPaths out) {
        return new IssuedQuoteWriting(judged, draft, firm, locale, out);
    }

    /**
     * Looks whether issued quotes are as they were issued, and in an office's folder whether numbers or revisions are missing.
     *
     * @param place an issued quote, or an office's folder
     * @throws twinfeed.model.io.InputException if the folder cannot be read
     */
    public FolderCheck verify(Path place) {
        return new IssuedQuotes().verify(place);
    }

    /**
     * Issues a draft: takes a number and freezes survey, findings and prices with it in an office's folder.
     *
     * @param office the folder of the office's quotes; created where it is first written to
     * @return the issued quote with its number, file and digest
     * @throws twinfeed.model.io.InputException if the folder cannot be written
     */
    public IssuedQuote issue(AssessedJob judged, Quote draft, PriceBook book, Path office) {
        return new IssuedQuotes().issue(judged, draft, book, office);
    }

    /**
     * Issues a draft as the next revision of a quote, which is superseded by it unless it was declined or has lapsed.
     *
     * @param previous file of the latest revision
     * @throws UnusableException if that one was accepted, is not the latest or was changed since it was issued
     * @throws twinfeed.model.io.InputException if the folder cannot be written
     */
    public IssuedQuote revise(AssessedJob judged, Quote draft, PriceBook book, Path previous) {
        return new IssuedQuotes().revise(judged, draft, book, previous);
    }

    /**
     * Records that the customer accepted one option of an issued quote.
     *
     * @param option name of the option
     * @param on the day, from the date of the quote to the last day on which it holds
     * @throws UnusableException if the quote is not open on that day, was changed or has no such option
     */
    public IssuedQuote accept(Path file, String option, LocalDate on) {
        return new IssuedQuotes().accept(file, option, on);
    }

    /**
     * Takes a decision of the customer back that was recorded by mistake: the quote is open again, as long as it holds. What had been
     * recorded, the day and the reason stay on record.
     *
     * @param file the issued quote
     * @param on the day of the correction
     * @param reason why, not empty
     * @throws UnusableException if it was neither accepted nor declined, was changed since it was issued, or has a later revision
     * @throws twinfeed.model.io.InputException if it cannot be read or written
     */
    public IssuedQuote correct(Path file, LocalDate on, String reason) {
        return new IssuedQuotes().correct(file, on, reason);
    }

    /**
     * The decisions about an issued quote that were taken back, the first one first.
     *
     * @throws UnusableException if what lies beside the quote is no correction
     * @throws twinfeed.model.io.InputException if it cannot be read
     */
    public List<QuoteCorrection> corrections(Path file) {
        return new IssuedQuotes().corrections(file);
    }

    /**
     * Records that the customer accepted an option, and writes the visit that was agreed as an entry of a calendar (RFC 5545).
     *
     * @param firm who quotes
     * @param locale language of the entry
     * @throws UnusableException if the quote is not open on that day, was changed or has no such option; no entry is written then
     * @throws twinfeed.model.io.InputException if the entry cannot be written; where its place is right, the answer is recorded all the same
     */
    public IssuedQuote accept(Path file, String option, LocalDate on, Visit visit, FirmFile firm, Locale locale) {
        return new IssuedQuotes().accept(file, option, on, visit, firm, locale);
    }

    /**
     * Records that the customer declined an issued quote.
     *
     * @throws UnusableException if the quote is not open on that day or was changed
     */
    public IssuedQuote decline(Path file, LocalDate on) {
        return new IssuedQuotes().decline(file, on);
    }

    /**
     * The files of the quotes issued in an office's folder, by number and revision; none where nothing was issued yet.
     *
     * @throws twinfeed.model.io.InputException if the folder cannot be read
     */
    public List<Path> issuedIn(Path office) {
        return new IssuedQuotes().files(office);
    }

    /** Opens an issued quote and says whether it is what was issued. */
    public IssuedQuote issued(Path file) {
        return new IssuedQuotes().open(file);
    }

    /**
     * Writes the workbook and PDF of an issued quote again, from what was frozen with it; all of it appears, or nothing.
     *
     * @param locale the language in which it was issued
     * @throws UnusableException if it is not as it was issued
     * @throws twinfeed.model.io.InputException if it cannot be read, or a file not be written
     */
    public IssuedQuote reprint(Path file, FirmFile firm, Locale locale, OutputPaths out) {
        return new IssuedQuotes().reprint(new CheckTopics(runner.calculators()), file, firm, locale, out);
    }

    /** Two issued quotes line by line. */
    public List<QuoteDifference> compare(Path before, Path after) {
        return new IssuedQuotes().compare(before, after);
    }

    /** Writes an issued quote as a workbook, its digest on it. */
    public void write(AssessedJob judged, IssuedQuote issued, FirmFile firm, Locale locale, Path out) {
        write(judged, issued, firm, locale, OutputPaths.workbook(out));
    }

    /** Writes an issued quote as a workbook with its digest on it, as a PDF or as both; all of it appears, or nothing. */
    public void write(AssessedJob judged, IssuedQuote issued, FirmFile firm, Locale locale, OutputPaths out) {
        new QuoteMaking(judged).write(issued.quote(), issued.digest(), firm, locale, out);
    }

    /**
     * Makes ready for {@link #write} on a spare thread, which takes longer than judging a job on a machine just started. Calling it is never
     * necessary.
     */
    public void prepareWriting() {
        Thread thread = new Thread(QuoteWorkbook::prepare, "workbook preparation");
        thread.setDaemon(true);
        // A run that ends early, for example at unusable input, closes the bundles under it. What was to be got ready
        // is not missed
        // then, and writing says for itself what goes wrong.
        thread.setUncaughtExceptionHandler((ended, nothing) -> {});
        thread.start();
    }
}
