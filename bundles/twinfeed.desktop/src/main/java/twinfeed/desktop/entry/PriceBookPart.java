// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import jakarta.inject.Inject;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.widgets.Composite;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.DemoFolder;
import twinfeed.desktop.Settings;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.FileFingerprint;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.BookReport;

/** The editor of price books. */
public final class PriceBookPart extends EntryPart {
    private final JobServices services;
    private final Threads threads;
    private final Settings settings;
    private final Words words;
    private final LastAction last;

    /** Made by the platform. */
    @Inject
    public PriceBookPart(
            MPart part,
            Composite parent,
            JobServices services,
            Threads threads,
            Settings settings,
            Words words,
            DemoFolder demo,
            LastAction last) {
        super(part, parent, threads, words, last);
        this.services = services;
        this.threads = threads;
        this.settings = settings;
        this.words = words;
        this.last = last;
        key("entry.open", this::choose);
        key("entry.begin", () -> begin(demo.book(), FileQuestion.prices(shell(), words), this::open));
        key("entry.saveAs", this::saveAs);
        key("entry.import", this::chooseImport);
        key("entry.use", this::use);
        settings.prices().ifPresent(this::open);
    }

    private void choose() {
        FileQuestion.prices(shell(), words)
                .open("prices.title", settings.prices().orElse(null))
                .ifPresent(this::open);
    }

    /** Opens a book. */
    public void open(Path file) {
        open(
                () -> {
                    FileFingerprint mark = FileFingerprint.of(file);
                    return new PriceBookEntries(file, mark, services.service().book(file), services, words);
                },
                file);
    }

    private void saveAs() {
        @Nullable EntryList present = list();
        if (present != null) {
            FileQuestion.prices(shell(), words)
                    .save("entry.saveAs.title", present.file())
                    .ifPresent(this::saveTo);
        }
    }

    /** Quotes are priced by this book from now on; without a change of its own it need not be saved first. */
    private void use() {
        @Nullable EntryList present = list();
        if (present != null && (!present.edits().dirty() || save())) {
            settings.prices(present.file());
            reprice(present.file());
        }
    }

    @Override
    void written(Path target) {
        JobServices.@Nullable Prices inForce = services.prices();
        if (inForce != null
                && inForce.file()
                        .toAbsolutePath()
                        .normalize()
                        .equals(target.toAbsolutePath().normalize())) {
            reprice(target);
        }
    }

    private void reprice(Path file) {
        threads.quick().execute(() -> {
            try {
                JobServices.Prices read =
                        new JobServices.Prices(file, services.service().book(file));
                threads.display().execute(() -> {
                    services.usePrices(read);
                    say(words.format("entry.used", Map.of("file", file)));
                    last.say(words.format("entry.used", Map.of("file", file)));
                });
            } catch (RuntimeException refused) {
                threads.display().execute(() -> say(String.valueOf(refused.getMessage())));
            }
        });
    }

    private void chooseImport() {
        if (list() != null && commit()) {
            FileQuestion.priceLists(shell(), words).open("entry.import", null).ifPresent(this::importFrom);
        }
    }

    /** Shows what taking over a price list would do, and takes it over if the person says so. */
    public void importFrom(Path source) {
        @Nullable EntryList present = list();
        if (present == null) {
            return;
        }
        PriceBook copy = (PriceBook) EcoreUtil.copy(present.root());
        threads.quick().execute(() -> {
            try {
                BookReport report = services.service().bookReport(source, copy);
                @Nullable
                PriceBook book =
                        report.text() == null ? null : services.service().book(source);
                threads.display().execute(() -> {
                    if (new ImportDialog(shell(), words, source, report).ask() && book != null) {
                        present.edits().replace(present.root(), book);
                        last.say(words.format("status.done.imported", Map.of("file", source)));
                    } else {
                        last.say(words.get("status.done.cancelled"));
                    }
                });
            } catch (RuntimeException refused) {
                threads.display()
                        .execute(() -> say(words.format(
                                "entry.refused",
                                Map.of("file", source, "reason", String.valueOf(refused.getMessage())))));
            }
        });
    }
}
