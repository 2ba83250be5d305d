// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.batch;

import jakarta.inject.Inject;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ProgressBar;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.Settings;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.Jobs;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.Figures;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.batch.BatchReport;
import twinfeed.usecase.batch.JudgedDwelling;

/** The page for a list of dwellings: which files, how far it is, and what came of it, most urgent first. */
public final class BatchPart {
    private final JobServices services;
    private final Threads threads;
    private final Words words;
    private final LastAction last;
    private final IEclipseContext context;
    private final Composite pane;
    private final Map<String, Text> paths = new LinkedHashMap<>();
    private final Button judge;
    private final Button stop;
    private final Button open;
    private final Button look;
    private final ProgressBar bar;
    private final Label state;
    private final Label full;
    private final BatchTable table;
    private @Nullable BatchRun run;
    private boolean running;

    /** Made by the platform. */
    @Inject
    public BatchPart(
            Composite parent,
            JobServices services,
            Threads threads,
            Settings settings,
            Words words,
            LastAction last,
            IEclipseContext context) {
        this.services = services;
        this.threads = threads;
        this.words = words;
        this.last = last;
        this.context = context;
        parent.setLayout(new FillLayout());
        this.pane = Controls.pane(parent);
        Controls.text(pane, words.get("batch.lead"), Tone.QUIET);
        Composite form = Controls.columns(pane, 3);
        form.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        path(form, "batch.list", FileQuestion.dwellings(parent.getShell(), words), false);
        path(form, "batch.like", FileQuestion.job(parent.getShell(), words), false);
        path(form, "batch.book", FileQuestion.priceLists(parent.getShell(), words), false);
        path(form, "batch.out", FileQuestion.workbook(parent.getShell(), words), true);
        settings.prices().ifPresent(book -> set("batch.book", book.toString()));
        Composite keys = Controls.columns(pane, 5);
        keys.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        this.judge = Controls.push(keys, words.get("batch.judge"), "batch.judge", this::start);
        this.stop = Controls.push(keys, words.get("batch.stop"), "batch.stop", this::stop);
        this.open = Controls.push(keys, words.get("batch.open"), "batch.open", this::openAsJob);
        this.look = Controls.push(keys, words.get("batch.look"), "batch.look", this::lookAtWorkbook);
        this.bar = new ProgressBar(keys, SWT.HORIZONTAL | SWT.INDETERMINATE);
        bar.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        bar.setVisible(false);
        Controls.name(bar, words.get("batch.progress"));
        this.state = Controls.wrapped(pane);
        state.setData("twinfeed.field", "batch.state");
        this.table = new BatchTable(pane, words, this::select, this::openAsJob);
        RowMenu.over(table.control()).button(open).button(look).copy(words);
        this.full = Controls.wrapped(pane);
        full.setForeground(ThemeColours.of(Tone.QUIET, full));
        ((GridData) full.getLayoutData()).heightHint = 3 * Controls.lineHeight(full);
        look.setEnabled(false);
        typed();
        select();
    }

    private void path(Composite form, String key, FileQuestion question, boolean save) {
        Label label = new Label(form, SWT.NONE);
        label.setText(words.get(key));
        Text text = new Text(form, SWT.BORDER);
        text.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        text.setData("twinfeed.field", key);
        Controls.name(text, words.get(key));
        text.addModifyListener(event -> typed());
        paths.put(key, text);
        Button choose = Controls.push(form, words.get("new.choose"), key + ".choose", () -> {
            @Nullable Path present = text.getText().isBlank() ? null : Path.of(text.getText());
            (save ? question.save(key, present) : question.open(key, present))
                    .ifPresent(path -> set(key, path.toString()));
        });
        Controls.name(choose, words.get("new.choose") + " " + words.get(key));
    }

    /** Enters a path, as if it was chosen. */
    public void set(String key, String path) {
        Text text = paths.get(key);
        if (text != null) {
            text.setText(path);
        }
        if (key.equals("batch.list") && files().out().isBlank()) {
            set("batch.out", path.replaceFirst("\\.(csv|xlsx)$", "") + "-judged.xlsx");
        }
    }

    private String typed(String key) {
        Text text = paths.get(key);
        return text == null ? "" : text.getText();
    }

    private BatchFiles files() {
        return new BatchFiles(typed("batch.list"), typed("batch.like"), typed("batch.book"), typed("batch.out"));
    }

    private void typed() {
        // While the page is being made, not all of it is there.
        if (state != null && !running) {
            String problem = files().problem(words);
            judge.setEnabled(problem.isEmpty());
            say(problem, Tone.DOUBT);
        }
    }

    private void say(String text, Tone tone) {
        state.setForeground(ThemeColours.of(tone, state));
        state.setText(text.replace("&", "&&"));
        pane.layout();
    }

    /** The same, and in the line at the foot of the window, which is read out. */
    private void acted(String text, Tone tone) {
        say(text, tone);
        last.say(text);
    }

    /** Judges the list. */
    public void start() {
        if (running || !files().problem(words).isEmpty()) {
            return;
        }
        table.clear();
        BatchRun begun = new BatchRun(services, files(), threads.display(), new Shown());
        run = begun;
        running(true);
        say(words.get("batch.begun"), Tone.QUIET);
        begun.start();
    }

    /** Stops after the row that is being taken. */
    public void stop() {
        if (run != null) {
            run.stop();
        }
    }

    private void running(boolean now) {
        running = now;
        judge.setEnabled(!now);
        stop.setEnabled(now);
        bar.setVisible(now);
        paths.values().forEach(text -> text.setEnabled(!now));
        select();
    }

    private void select() {
        if (full != null) {
            open.setEnabled(!running && table.chosen().isPresent());
            stop.setEnabled(running);
            full.setText(table.text().replace("&", "&&"));
        }
    }

    private void openAsJob() {
        BatchRun judged = run;
        table.chosen().filter(any -> judged != null && !running).ifPresent(dwelling -> FileQuestion.job(
                        pane.getShell(), words)
                .save("batch.open", BatchTable.proposal(BatchFiles.file(files().list()), dwelling.name()))
                .ifPresent(file -> openAsJob(dwelling.row(), file)));
    }

    /** Makes a job of one row, and opens it. */
    public void openAsJob(int row, Path file) {
        BatchRun judged = run;
        @Nullable Jobs jobs = context.get(Jobs.class);
        if (judged == null || jobs == null) {
            return;
        }
        threads.quick().execute(() -> {
            try {
                var survey = judged.survey(row);
                Path catalogue = judged.catalogue();
                threads.display().execute(() -> jobs.create(file, catalogue, () -> survey));
            } catch (RuntimeException refused) {
                threads.display().execute(() -> acted(String.valueOf(refused.getMessage()), Tone.BAD));
            }
        });
    }

    private void lookAtWorkbook() {
        Program.launch(BatchFiles.file(files().out()).toString());
    }

    /** The row of the dwelling that is chosen; 0 if none is. */
    public int chosen() {
        return table.chosen().map(JudgedDwelling::row).orElse(0);
    }

    /** What is shown while and after a list is judged. */
    private final class Shown implements BatchRun.Listener {
        private final Figures figures = new Figures(words.locale());

        @Override
        public void progress(int rows, List<JudgedDwelling> judged, double seconds) {
            if (!pane.isDisposed()) {
                table.add(judged);
                say(
                        words.format(
                                "batch.state",
                                Map.of(
                                        "rows",
                                        rows,
                                        "seconds",
                                        Math.round(seconds),
                                        "rate",
                                        figures.number(rows / Math.max(seconds, 1e-3)))),
                        Tone.QUIET);
            }
        }

        @Override
        public void done(BatchReport report, double seconds) {
            if (!pane.isDisposed()) {
                table.refuse(report.refused());
                running(false);
                look.setEnabled(true);
                int rows = report.judged() + report.rejected();
                say(
                        words.format(
                                "batch.done",
                                Map.of(
                                        "judged",
                                        report.judged(),
                                        "offered",
                                        report.offered(),
                                        "estimates",
                                        report.estimates(),
                                        "unsafe",
                                        report.unsafe(),
                                        "rejected",
                                        report.rejected(),
                                        "seconds",
                                        Math.round(seconds),
                                        "rate",
                                        figures.number(rows / Math.max(seconds, 1e-3)),
                                        "file",
                                        files().out())),
                        report.unsafe() > 0 ? Tone.BAD : Tone.GOOD);
                last.say(words.format(
                        "status.done.judged",
                        Map.of("judged", report.judged(), "rejected", report.rejected(), "file", files().out())));
            }
        }

        @Override
        public void stopped() {
            if (!pane.isDisposed()) {
                running(false);
                acted(words.get("batch.stopped"), Tone.DOUBT);
            }
        }

        @Override
        public void failed(String reason) {
            if (!pane.isDisposed()) {
                running(false);
                acted(words.format("batch.failed", Map.of("reason", reason)), Tone.BAD);
            }
        }
    }

    @Focus
    void focus() {
        paths.values().stream().findFirst().ifPresent(Text::setFocus);
    }
}
