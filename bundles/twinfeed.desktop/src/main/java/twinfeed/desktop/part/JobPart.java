// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.e4.ui.di.Persist;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.ShellListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import twinfeed.desktop.Settings;
import twinfeed.desktop.completion.CompletionPane;
import twinfeed.desktop.fault.FaultsPane;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.SurveyPages;
import twinfeed.desktop.issued.Revisions;
import twinfeed.desktop.page.SurveyPane;
import twinfeed.desktop.picture.PictureSaving;
import twinfeed.desktop.picture.PrintedPicture;
import twinfeed.desktop.session.Editor;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.Jobs;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.session.OpenJob;
import twinfeed.desktop.session.QuoteWork;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.io.InputException;
import twinfeed.model.io.JobFile;
import twinfeed.usecase.quote.IssuedQuote;

/** One job: what was surveyed, what follows from it, what it costs, side by side. */
public final class JobPart implements Editor {
    private static final String LAYOUT = "job.panes";

    private final MPart part;
    private final Jobs jobs;
    private final Words words;
    private final LastAction last;
    private final JobSession session;
    private final JobNotices notices;
    private final SashForm panes;
    private final SurveyPane survey;
    private final FindingsPane findings;
    private final OptionsPane options;
    private final FaultsPane faults;
    private final CompletionPane completion;

    /** Made by the platform; the job itself comes with the part's data. */
    @Inject
    public JobPart(
            Composite parent,
            MPart part,
            Jobs jobs,
            JobServices services,
            Threads threads,
            Settings settings,
            Words words,
            LastAction last) {
        this.part = part;
        this.last = last;
        this.jobs = jobs;
        this.words = words;
        OpenJob open = Objects.requireNonNull(
                (OpenJob) part.getTransientData().get(OpenJob.class.getName()), "a part of a job is made with its job");
        this.session = new JobSession(open, services, threads);
        GridLayout layout = new GridLayout(1, false);
        layout.marginWidth = 0;
        layout.marginHeight = 0;
        layout.verticalSpacing = 0;
        parent.setLayout(layout);
        this.notices = new JobNotices(new NoticeBar(parent), words, jobs, session, last);
        this.panes = new SashForm(parent, SWT.HORIZONTAL);
        GridData room = new GridData(SWT.FILL, SWT.FILL, true, true);
        // They take the room there is; nobody has to measure for a notice what all of them would like to have.
        room.widthHint = 0;
        room.heightHint = 0;
        panes.setLayoutData(room);
        CompletionPrint print = new CompletionPrint(this, parent.getShell(), words);
        this.survey = new SurveyPane(panes, session, words);
        this.findings = new FindingsPane(
                panes,
                session,
                threads,
                words,
                survey::open,
                check -> jobs.explain(check, session),
                print::notice,
                new PictureSaving(
                        parent.getShell(),
                        words,
                        this::printed,
                        reason -> say(Tone.BAD, words.format("completion.refused", Map.of("reason", reason)))));
        this.options = new OptionsPane(panes, session, words);
        this.faults = new FaultsPane(panes, session, words);
        this.completion = new CompletionPane(panes, session, words, print);
        panes.setWeights(settings.layout(LAYOUT, 250, 425, 325, 750, 750));
        survey.turned().listen(this::turn);
        turn();
        panes.addListener(SWT.Dispose, event -> settings.keepLayout(LAYOUT, panes.getWeights()));
        listen(parent);
        showState();
        notices.opened(open.opened(), part.getLabel());
        session.recalculate();
        settings.office().ifPresent(office -> lookForIssued(office, threads));
    }

    /** What was issued for this dwelling before this sitting shows in the tab too. */
    private void lookForIssued(Path office, Threads threads) {
        Revisions revisions = new Revisions(session);
        threads.quick().execute(() -> {
            IssuedQuote latest = revisions.latest(office);
            if (latest != null) {
                threads.display().execute(() -> {
                    if (!panes.isDisposed() && session.issued() == null) {
                        session.issued(latest);
                    }
                });
            }
        });
    }

    /** Fault-finding and what comes after the work take the room of what follows for the heaters on offer. */
    private void turn() {
        boolean finding = survey.shows(SurveyPages.FAULTS);
        boolean finished = survey.shows(SurveyPages.COMPLETION);
        panes.getChildren()[1].setVisible(!finding && !finished);
        panes.getChildren()[2].setVisible(!finding && !finished);
        faults.visible(finding);
        completion.visible(finished);
        panes.layout();
    }

    private void listen(Composite parent) {
        session.edits().changed().listen(this::showState);
        session.edits().changed().listen(notices::passOn);
        session.edits().changed().listen(last::forget);
        session.resulted().listen(this::showState);
        ShellListener activated = ShellListener.shellActivatedAdapter(event -> lookOutside());
        parent.getShell().addShellListener(activated);
        parent.addListener(SWT.Dispose, event -> parent.getShell().removeShellListener(activated));
    }

    private void showState() {
        part.setDirty(session.edits().dirty());
        part.setLabel(label(JobFile.name(session.file())));
        part.setTooltip(session.file().toString());
    }

    /** Name of the job, with the quote that was issued of it and where that stands. */
    private String label(String name) {
        IssuedQuote issued = session.issued();
        if (issued == null) {
            return name;
        }
        String state = issued.stateOn(session.services().today()).getLiteral();
        return words.format(
                "job.tab", Map.of("job", name, "quote", issued.name(), "state", words.get("issued.state." + state)));
    }

    /** The job. */
    public JobSession session() {
        return session;
    }

    /** The survey's pages. */
    public SurveyPane survey() {
        return survey;
    }

    /** Adds pictures to the job's photographs and shows them. */
    public void takePhotos(List<Path> pictures) {
        survey.open(new FieldLocation(session.survey(), "photos"));
        session.photos()
                .take(pictures, reason -> say(Tone.BAD, words.format("photo.refused", Map.of("reason", reason))));
    }

    /** Says that the file was changed by another program, if it was. */
    private void lookOutside() {
        if (!panes.isDisposed() && !notices.shown() && session.changedOutside()) {
            notices.changedOutside();
        }
    }

    @Override
    public boolean commit() {
        return survey.commit();
    }

    /** Saves; the answer is whether that was done. A file that another program has changed meanwhile is left alone. */
    @Persist
    @Override
    public boolean save() {
        boolean read = survey.commit();
        if (session.changedOutside()) {
            notices.changedOutside();
            return false;
        }
        boolean saved = attempt(target -> session.save(), session.file());
        if (saved && !read) {
            unread("save.unread");
        }
        return saved;
    }

    /** Saves under another name; the answer is whether that was done. */
    public boolean saveAs(Path target) {
        survey.commit();
        return attempt(session::saveAs, target);
    }

    private boolean attempt(Consumer<Path> action, Path target) {
        try {
            action.accept(target);
            notices.hide();
            jobs.remember(target);
            showState();
            last.say(words.format("status.done.saved", Map.of("file", target)));
            return true;
        } catch (IllegalArgumentException otherDrive) {
            say(Tone.BAD, words.get("save.otherDrive"));
            return false;
        } catch (InputException refused) {
            say(Tone.BAD, words.format("save.refused", Map.of("reason", String.valueOf(refused.getMessage()))));
            return false;
        }
    }

    /** Takes back what was typed last, or else the last edit. */
    @Override
    public void undo() {
        if (survey.revert()) {
            notices.passOn();
            last.say(words.get("status.done.undone"));
        } else if (session.edits().canUndo()) {
            session.edits().undo().ifPresent(survey::reveal);
            last.say(words.get("status.done.undone"));
        }
    }

    @Override
    public boolean canRedo() {
        return session.edits().canRedo();
    }

    /** Makes the edit that was taken back again. */
    @Override
    public void redo() {
        survey.commit();
        if (session.edits().canRedo()) {
            session.edits().redo().ifPresent(survey::reveal);
            last.say(words.get("status.done.redone"));
        }
    }

    /** Takes what was typed; where that cannot be done, says so, for a quote must not lack what is on the screen. */
    public boolean readyForQuote() {
        boolean read = survey.commit();
        if (!read) {
            unread("export.unread");
        }
        return read;
    }

    private void unread(String key) {
        say(Tone.BAD, words.format(key, Map.of("typed", String.join("; ", survey.unread()))));
    }

    /** Says something with nothing to be done about it. */
    public void say(Tone tone, String text) {
        notices.say(tone, text);
    }

    /** Says that the quote was written to a file, and offers to look at it. */
    public void written(Path file) {
        notices.written("export.done", file);
    }

    /** Says that a page was written to a file, and offers to look at it. */
    public void printed(Path file) {
        notices.written("completion.done", file);
    }

    /** Saves the drawing of the feeds, as PNG or as SVG by the ending. */
    public void saveDrawing(Path file) {
        new PictureSaving(panes.getShell(), words, this::printed, reason -> say(Tone.BAD, reason))
                .save(findings.drawn(), findings.drawing(), file);
    }

    /** The drawing of the feeds as a PNG that is fine enough for paper. */
    byte[] drawingForPrint() {
        return PrintedPicture.png(panes.getDisplay(), findings.drawing());
    }

    /** Explains the check that is looked at. */
    public void explain() {
        String fault =
                session.services().service().check(CheckTopic.LIKELY_FAULT).orElse(null);
        jobs.explain(survey.shows(SurveyPages.FAULTS) ? fault : findings.chosen(), session);
    }

    /** Says that a quote was issued, and offers its workbook and the list of issued quotes. */
    void issued(IssuedQuote issued, QuoteWork work) {
        notices.issued(issued, work);
    }

    /** Goes on to the next of the three panes. */
    public void nextPane() {
        if (survey.shows(SurveyPages.FAULTS)) {
            if (!inside(faults.control())) {
                faults.setFocus();
            } else if (!faults.setFocusOnSheet()) {
                survey.setFocus();
            }
        } else if (survey.shows(SurveyPages.COMPLETION)) {
            if (inside(completion.control()) || !completion.setFocus()) {
                survey.setFocus();
            }
        } else if (inside(panes.getChildren()[0])) {
            findings.setFocus();
        } else if (inside(panes.getChildren()[1])) {
            options.setFocus();
        } else {
            survey.setFocus();
        }
    }

    private boolean inside(org.eclipse.swt.widgets.Control pane) {
        org.eclipse.swt.widgets.Control control = panes.getDisplay().getFocusControl();
        while (control != null && control != pane) {
            control = control.getParent();
        }
        return control != null;
    }

    @Focus
    void focus() {
        survey.setFocus();
        lookOutside();
        session.lookAtIssued();
    }

    @PreDestroy
    void end() {
        session.close();
    }
}
