// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.quote.CustomerPage;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;

/**
 * One open job: its survey, the edits of it, and what follows. Belongs to the user interface's thread; results are computed on
 * copies elsewhere.
 */
public final class JobSession {
    private final Job job;
    private final Catalogue catalogue;
    private final JobServices services;
    private final SurveyEdits edits;
    private final Threads threads;
    private final Recalculation<JobResult> recalculation;
    private final AnswerCache cache = new AnswerCache();
    private final ChangeNotifier computing = new ChangeNotifier();
    private final ChangeNotifier resulted = new ChangeNotifier();
    private final ChangeNotifier chose = new ChangeNotifier();
    private final FaultSearch faults;
    private final CompletionWork completion;
    private final QuoteEdits quoteEdits;
    private final PhotoWork photos;
    private final Runnable otherPrices;
    private final Runnable decisions;
    private final UnsavedChanges unsaved;
    private Path file;
    private FileFingerprint mark;
    private @Nullable JobResult result;
    private @Nullable JobResult whole;
    private @Nullable String chosen;
    private @Nullable IssuedQuote issued;

    /**
     * A job that was just opened.
     *
     * @param open the job
     * @param services what turns surveys into results
     * @param threads where to compute, and where to show
     */
    public JobSession(OpenJob open, JobServices services, Threads threads) {
        this.job = open.opened().job();
        this.catalogue = open.opened().catalogue();
        this.file = open.opened().file();
        this.mark = open.mark();
        this.edits = new SurveyEdits(open.rescued());
        this.unsaved = new UnsavedChanges(threads, !open.rescued() && new BackupCopy(file).there());
        this.services = services;
        this.threads = threads;
        this.recalculation = new Recalculation<>(threads.display());
        if (job.getSurvey() == null) {
            job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        }
        edits.changed().listen(this::recalculate);
        edits.changed().listen(() -> unsaved.keep(backup(), EcoreUtil.copy(job), edits.dirty()));
        this.faults = new FaultSearch(this, threads);
        this.completion = new CompletionWork(this, threads);
        this.quoteEdits = new QuoteEdits(job, edits);
        this.photos = new PhotoWork(this, threads);
        this.otherPrices = services.changed().listen(this::recalculate);
        this.decisions = services.decided().listen(this::lookAtIssued);
    }

    /** Computes anew, for instance with another price book: first what is quickly there, then all of it. */
    public void recalculate() {
        long asked = recalculation.next();
        OpenedJob copy = copy();
        // One after the other: the search for works would take processors from the answer that is to be on the screen
        // first.
        recalculation.ask(asked, () -> services.quickAssess(asked, copy), threads.quick(), answer -> {
            deliver(answer);
            search(asked, copy);
        });
        computing.fire();
    }

    private void search(long asked, OpenedJob copy) {
        recalculation.ask(
                asked,
                () -> services.result(asked, copy, () -> asked == recalculation.revision(), cache),
                threads.thorough(),
                this::deliver);
    }

    private void deliver(JobResult answer) {
        result = answer;
        if (answer.complete()) {
            whole = answer;
        }
        resulted.fire();
    }

    /** The job as it is now, for work on another thread. */
    OpenedJob copy() {
        return new OpenedJob(file, EcoreUtil.copy(job), catalogue, java.util.List.of());
    }

    /** The copy of changes that were not saved. */
    public BackupCopy backup() {
        return new BackupCopy(file);
    }

    /** Whether changes of an earlier sitting wait for somebody to say what is to become of them. */
    public boolean oldChanges() {
        return unsaved.old();
    }

    /** Nobody wants the changes of an earlier sitting. */
    public void dropOldChanges() {
        unsaved.forgetOld();
        backup().drop();
    }

    /** The whole job; change it by {@link #edits()} only. */
    public Job job() {
        return job;
    }

    /** The survey itself; change it by {@link #edits()} only. */
    public Survey survey() {
        return job.getSurvey();
    }

    /** The heaters on offer. */
    public Catalogue catalogue() {
        return catalogue;
    }

    /** Where the job is kept. */
    public Path file() {
        return file;
    }

    /** Its edits. */
    public SurveyEdits edits() {
        return edits;
    }

    /** What is changed of its quote by hand. */
    public QuoteEdits quoteEdits() {
        return quoteEdits;
    }

    /** The search for the fault of the unit that is there. */
    public FaultSearch faults() {
        return faults;
    }

    /** Its photographs. */
    public PhotoWork photos() {
        return photos;
    }

    /** The readings after the work. */
    public CompletionWork completion() {
        return completion;
    }

    /** Language and way of writing numbers. */
    public Locale locale() {
        return services.locale();
    }

    /** Prices and dates in force. */
    public JobServices services() {
        return services;
    }

    /** The newest result; null before the first. It may be of an older state: see {@link #current()}. */
    public @Nullable JobResult result() {
        return result;
    }

    /**
     * The newest result with works and prices; null before the first. While it is worked out anew, that of the survey before the change: it
     * stays on the screen, in the colour of what is quiet, until the next is there.
     */
    public @Nullable JobResult whole() {
        return whole;
    }

    /** Whether the works and prices on the screen belong to the same state of the survey as the findings; not while they are looked for. */
    public boolean planned() {
        JobResult known = result;
        return known == null || known.complete();
    }

    /** Whether the result is that of the survey as it is now, and all of it. */
    public boolean current() {
        JobResult known = result;
        return known != null && known.complete() && known.revision() == recalculation.revision();
    }

    /** Whether the result is at least the quick one for the survey as it is now. */
    public boolean glanced() {
        JobResult known = result;
        return known != null && known.revision() == recalculation.revision();
    }

    /** Fires when a result has become old. */
    public ChangeNotifier computing() {
        return computing;
    }

    /** Fires when there is a new result. */
    public ChangeNotifier resulted() {
        return resulted;
    }

    /** Fires when another option was chosen. */
    public ChangeNotifier chose() {
        return chose;
    }

    /** Key of the option whose findings are shown; null for the first. */
    public @Nullable String chosen() {
        return chosen;
    }

    /** Shows another option's findings. */
    public void choose(String key) {
        if (!key.equals(chosen)) {
            chosen = key;
            chose.fire();
        }
    }

    /** Whether another program has changed the file, or taken it away, since it was read or saved here. */
    public boolean changedOutside() {
        return !FileFingerprint.of(file).equals(mark);
    }

    /** From now on what the file holds counts as known: a later save replaces it. */
    public void acceptOutside() {
        mark = FileFingerprint.of(file);
    }

    /**
     * Writes the job to its file.
     *
     * @throws twinfeed.model.io.InputException if it cannot be written, or another program has written there since it was read, saved
     *     or {@linkplain #acceptOutside accepted}; the file is as it was then
     */
    public void save() {
        mark = JobFile.save(job, file, mark);
        edits.saved();
        unsaved.drop(backup());
    }

    /**
     * Writes the job to another file, which is its file from now on. Names of files beside the job (catalogue, photos) are
     * changed so that they still lead to the same files.
     *
     * @throws twinfeed.model.io.InputException if it cannot be written; nothing has changed then
     * @throws IllegalArgumentException if no relative path leads to those files, as between two drives; likewise
     */
    public void saveAs(Path target) {
        Job moved = EcoreUtil.copy(job);
        new RelatedFiles(file, target).move(moved);
        JobFile.save(moved, target);
        unsaved.drop(backup());
        new RelatedFiles(file, target).move(job);
        file = target;
        unsaved.forgetOld();
        acceptOutside();
        edits.saved();
    }

    /** What the customer would read of a result, in the language of the papers; empty where there is no quote. */
    public Optional<CustomerPage> page(JobResult shown) {
        return services.page(shown, cache);
    }

    /** What has to be done to write the quote of the survey as it is now. */
    public QuoteWork quoteWork() {
        return new QuoteWork(services, copy(), cache);
    }

    /** The papers that are printed straight away, as the job is now. */
    public PrintedPages printedPages() {
        return new PrintedPages(services, copy(), cache);
    }

    /** What has to be done to print what belongs to the finished work, as the job is now. */
    public CompletionPages completionPages() {
        return new CompletionPages(services, copy());
    }

    /** The quote that was issued last for this job's dwelling, as far as it is known; null if none was. */
    public @Nullable IssuedQuote issued() {
        return issued;
    }

    /** A quote of this job was issued. */
    public void issued(IssuedQuote quote) {
        issued = quote;
        resulted.fire();
    }

    /** Reads the quote that was issued last again, out of the way: the customer may have decided meanwhile. */
    public void lookAtIssued() {
        IssuedQuote known = issued;
        if (known == null) {
            return;
        }
        threads.quick().execute(() -> {
            IssuedQuote now;
            try {
                now = IssuedQuotes.open(known.file());
            } catch (RuntimeException unreadable) {
                // The list of issued quotes says what is wrong with the file; here the last known state stays.
                return;
            }
            threads.display().execute(() -> {
                if (issued == known && now.quote().getState() != known.quote().getState()) {
                    issued(now);
                }
            });
        });
    }

    /** The job is not shown any more. */
    public void close() {
        otherPrices.run();
        decisions.run();
        unsaved.drop(backup());
    }
}
