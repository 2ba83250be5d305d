// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.settings;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.engine.SourceText;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.desktop.Settings;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.model.io.CatalogueFile;

/** Folders for jobs and quotes, price book, catalogue and wiring rules. */
final class ListsSection {
    private final JobServices services;
    private final Threads threads;
    private final Settings settings;
    private final Words words;
    private final Composite parent;
    private final SettingForm form;

    ListsSection(
            Composite parent, JobServices services, Threads threads, Settings settings, Words words, Runnable fit) {
        this.services = services;
        this.threads = threads;
        this.settings = settings;
        this.words = words;
        this.parent = parent;
        SettingChecks checks = new SettingChecks(words);
        this.form = new SettingForm(parent, words, "settings.lists", fit);
        folder("settings.lists.jobs", settings.jobs(), checks::folder, text -> settings.jobs(path(text)));
        folder("settings.lists.office", settings.office(), checks::folder, text -> path(text)
                .ifPresentOrElse(settings::office, settings::noOffice));
        file(
                "settings.lists.prices",
                settings.prices(),
                checks::prices,
                FileQuestion.priceLists(parent.getShell(), words),
                this::prices);
        file(
                "settings.lists.catalogue",
                settings.catalogue(),
                checks::catalogue,
                FileQuestion.catalogue(parent.getShell(), words),
                this::catalogue);
        rules();
    }

    private static Optional<Path> path(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(Path.of(text));
    }

    private void folder(String key, Optional<Path> present, UnaryOperator<String> problem, Consumer<String> keep) {
        SettingForm.Entry entry = form.line(key, present.map(Path::toString).orElse(""), problem, keep);
        entry.key("new.choose", () -> {
            DirectoryDialog dialog = new DirectoryDialog(parent.getShell());
            dialog.setText(words.get(key));
            dialog.setFilterPath(entry.value());
            @Nullable String answer = dialog.open();
            if (answer != null) {
                entry.enter(answer);
            }
        });
    }

    /** Takes a text that names a file, or says at its entry why it cannot be taken. */
    private interface Taking {
        void take(SettingForm.Entry entry, String text);
    }

    private void file(
            String key, Optional<Path> present, UnaryOperator<String> problem, FileQuestion question, Taking taking) {
        SettingForm.Entry[] entry = new SettingForm.Entry[1];
        entry[0] = form.line(key, present.map(Path::toString).orElse(""), problem, text -> taking.take(entry[0], text));
        entry[0].key("new.choose", () -> question.open(key, present.orElse(null))
                .ifPresent(file -> entry[0].enter(file.toString())));
    }

    private void prices(SettingForm.Entry entry, String text) {
        if (text.isEmpty()) {
            settings.noPrices();
            services.noPrices();
            return;
        }
        Path file = Path.of(text);
        tried(entry, () -> {
            JobServices.Prices read =
                    new JobServices.Prices(file, services.service().book(file));
            return () -> {
                settings.prices(file);
                services.usePrices(read);
            };
        });
    }

    private void catalogue(SettingForm.Entry entry, String text) {
        if (text.isEmpty()) {
            settings.noCatalogue();
            return;
        }
        tried(entry, () -> {
            CatalogueFile.load(Path.of(text));
            return () -> settings.catalogue(Path.of(text));
        });
    }

    /** Reads out of the way; what cannot be read is not kept. */
    private void tried(SettingForm.Entry entry, java.util.function.Supplier<Runnable> reading) {
        threads.quick().execute(() -> {
            try {
                Runnable keep = reading.get();
                threads.display().execute(keep);
            } catch (RuntimeException refused) {
                threads.display().execute(() -> entry.say(String.valueOf(refused.getMessage())));
            }
        });
    }

    private void rules() {
        List<String> ids = new ArrayList<>();
        ids.add("");
        List<String> titles = new ArrayList<>();
        SourceText names = SourceText.in(words.locale());
        titles.add(words.format(
                "settings.lists.rules.standard",
                Map.of("rules", names.of(RuleSets.standard().title()))));
        for (String id : RuleSets.ids()) {
            ids.add(id);
            titles.add(RuleSets.find(id).map(rules -> names.of(rules.title())).orElse(id));
        }
        int chosen = Math.max(0, ids.indexOf(settings.rules()));
        Label[] note = new Label[1];
        form.choice("settings.lists.rules", titles, chosen, at -> {
            settings.rules(ids.get(at));
            form.say(note[0], words.get("settings.lists.rules.note"), Tone.QUIET);
        });
        note[0] = form.message("settings.lists.rules");
    }
}
