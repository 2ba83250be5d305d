// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.office;

import jakarta.inject.Inject;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.Settings;
import twinfeed.desktop.issued.IssuedDetail;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.Jobs;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.Figures;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.office.OfficeFolder;
import twinfeed.usecase.office.OfficeRates;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;

/** The jobs and quotes of an office: where each stands, what it comes to, what is missing and what is to be done next. */
public final class OfficePart {
    private final JobServices services;
    private final Threads threads;
    private final Settings settings;
    private final Words words;
    private final LastAction last;
    private final IEclipseContext context;
    private final OfficeReading reading;
    private final Label folder;
    private final Label rates;
    private final Label trouble;
    private final OfficeTable table;
    private final OfficeActions actions;
    private final IssuedDetail detail;
    private OfficeFolder office = new OfficeFolder(List.of(), List.of(), List.of());

    /** Made by the platform. */
    @Inject
    public OfficePart(
            Composite parent,
            JobServices services,
            Threads threads,
            Settings settings,
            Words words,
            LastAction last,
            IEclipseContext context) {
        this.services = services;
        this.threads = threads;
        this.settings = settings;
        this.words = words;
        this.last = last;
        this.context = context;
        this.reading = new OfficeReading(services, threads);
        parent.setLayout(new FillLayout());
        SashForm halves = new SashForm(parent, SWT.VERTICAL);
        Composite pane = Controls.pane(halves);
        Composite head = Controls.columns(pane, 3);
        head.setLayoutData(Controls.across(pane));
        this.folder = new Label(head, SWT.NONE);
        folder.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Controls.push(head, words.get("issued.folder"), "issued.folder", this::chooseFolder);
        Controls.push(head, words.get("issued.again"), "issued.again", this::read);
        this.rates = Controls.wrapped(pane);
        rates.setForeground(ThemeColours.of(Tone.QUIET, rates));
        rates.setData("twinfeed.field", "office.rates");
        Controls.show(rates, "");
        this.trouble = Controls.wrapped(pane);
        trouble.setForeground(ThemeColours.of(Tone.BAD, trouble));
        trouble.setData("twinfeed.field", "issued.trouble");
        Controls.show(trouble, "");
        this.table = new OfficeTable(pane, words, this::select, this::open);
        this.detail = new IssuedDetail(halves, words);
        this.actions = new OfficeActions(pane, this, words);
        actions.menu(table.control());
        halves.setWeights(55, 45);
        Runnable listening = services.decided().listen(() -> threads.display().execute(this::read));
        parent.addListener(SWT.Dispose, event -> listening.run());
        select();
        read();
    }

    private void chooseFolder() {
        DirectoryDialog dialog = new DirectoryDialog(folder.getShell());
        dialog.setText(words.get("issue.office"));
        settings.office().ifPresent(path -> dialog.setFilterPath(path.toString()));
        String answer = dialog.open();
        if (answer != null) {
            settings.office(Path.of(answer));
            read();
        }
    }

    /** Reads the folder anew, out of the way. */
    public void read() {
        if (folder.isDisposed()) {
            return;
        }
        Optional<Path> where = settings.office();
        folder.setText(where.map(path -> words.format("issued.in", Map.of("folder", path)))
                .orElse(words.get("issue.office.none")));
        where.ifPresent(path -> reading.read(path, settings::recent, this::show, job -> showRows()));
    }

    private void show(OfficeFolder found) {
        if (folder.isDisposed()) {
            return;
        }
        office = found;
        showRows();
        say(String.join("\n", found.troubles()));
        OfficeRates counted = OfficeRates.of(found, services.today());
        String said = counted.answered() == 0
                ? ""
                : words.format(
                        counted.medianDays().isPresent() ? "office.rates" : "office.rates.noDays",
                        Map.of(
                                "accepted",
                                counted.accepted(),
                                "answered",
                                counted.answered(),
                                "percent",
                                Math.round(100.0 * counted.accepted() / counted.answered()),
                                "days",
                                new Figures(words.locale())
                                        .number(counted.medianDays().orElse(0))));
        if (Controls.show(rates, said)) {
            rates.getParent().layout();
        }
    }

    private void showRows() {
        if (folder.isDisposed()) {
            return;
        }
        table.show(Stream.concat(
                        office.quotes().stream().map(each -> OfficeRow.of(each, office, services.today(), words)),
                        office.jobs().stream()
                                .map(each ->
                                        OfficeRow.of(each, office, reading.readings(each), services.today(), words)))
                .toList());
    }

    /** Says what went wrong; an empty text takes that back. */
    void say(String text) {
        if (!trouble.isDisposed() && Controls.show(trouble, text)) {
            trouble.getParent().layout();
        }
    }

    /** Says how an action went, in the line at the foot of the window; what went wrong before is over then. */
    void acted(String key, Map<String, Object> arguments) {
        say("");
        last.say(words.format(key, arguments));
    }

    /** Says that an action could not be done, here and in the line at the foot of the window. */
    private void failed(String reason) {
        say(reason);
        last.say(reason);
    }

    /** What all parts share. */
    JobServices services() {
        return services;
    }

    /** The lines that are chosen. */
    List<OfficeRow> chosen() {
        return table.chosen();
    }

    /** The detail below the list. */
    IssuedDetail detail() {
        return detail;
    }

    /** The quote that a chosen quote superseded, if it is in the folder. */
    Optional<IssuedQuote> before(IssuedQuote quote) {
        String superseded = quote.quote().getSupersedes();
        return office.quotes().stream()
                .filter(each -> each.name().equals(superseded))
                .findFirst();
    }

    /** Opens the chosen job; of a quote, the survey that was frozen with it. */
    void open() {
        List<OfficeRow> chosen = chosen();
        if (chosen.size() != 1) {
            return;
        }
        if (chosen.get(0).job()) {
            @Nullable Jobs jobs = context.get(Jobs.class);
            if (jobs != null) {
                jobs.open(chosen.get(0).file());
            }
        } else {
            actions.survey();
        }
    }

    private void select() {
        // While the part is being made, not all of it is there.
        if (actions == null) {
            return;
        }
        actions.enable();
        List<OfficeRow> chosen = chosen();
        if (chosen.size() == 1 && chosen.get(0).issued() != null) {
            IssuedQuote issued = chosen.get(0).issued().issued();
            detail.show(issued, List.of());
            background(() -> IssuedQuotes.corrections(issued.file()), found -> {
                if (!found.isEmpty() && still(issued)) {
                    detail.show(issued, found);
                }
            });
        } else if (chosen.size() == 1) {
            OfficeRow job = chosen.get(0);
            detail.say(
                    words.format("office.job", Map.of("name", job.name())),
                    words.format("office.job.file", Map.of("file", job.file())) + "\n"
                            + job.cells().get(OfficeRow.NEXT));
        } else {
            detail.show(null, List.of());
        }
    }

    private boolean still(IssuedQuote issued) {
        List<OfficeRow> chosen = chosen();
        return chosen.size() == 1 && chosen.get(0).file().equals(issued.file());
    }

    /**
     * Does something with files out of the way, and goes on in the thread of the display; what goes wrong is said.
     *
     * @param work what is done
     * @param then what follows, with what the work has given
     */
    <T> void background(Supplier<T> work, Consumer<T> then) {
        threads.quick().execute(() -> {
            try {
                T done = work.get();
                threads.display().execute(() -> {
                    if (!folder.isDisposed()) {
                        then.accept(done);
                    }
                });
            } catch (RuntimeException | LinkageError refused) {
                threads.display().execute(() -> failed(String.valueOf(refused.getMessage())));
            }
        });
    }

    /** Records that the customer accepted an option; a correction takes it back. */
    public void accept(IssuedQuote quote, String option) {
        actions.accept(quote, option);
    }

    /** Records that the customer declined; a correction takes it back. */
    public void decline(IssuedQuote quote) {
        actions.decline(quote);
    }

    /** Takes a decision back that was recorded by mistake; what was recorded and the reason stay on record. */
    public void correct(IssuedQuote quote, String reason) {
        actions.correct(quote, reason);
    }

    /** Writes the parts to pack for an accepted quote. */
    public void writeParts(IssuedQuote quote, Path out) {
        actions.writeParts(quote, out);
    }

    /** Chooses the line of a file, if it is shown. */
    public void choose(Path file) {
        table.choose(file);
    }

    /** Sorts by a column, or by the same one again the other way round. */
    public void sort(int column) {
        table.sort(column);
    }

    @Focus
    void focus() {
        table.control().setFocus();
        read();
    }
}
