// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import jakarta.inject.Inject;
import java.nio.file.Path;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.widgets.Composite;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.DemoFolder;
import twinfeed.desktop.Settings;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.FileFingerprint;

/** The editor of heater catalogues. */
public final class CataloguePart extends EntryPart {
    private final JobServices services;
    private final Settings settings;
    private final Words words;

    /** Made by the platform. */
    @Inject
    public CataloguePart(
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
        this.settings = settings;
        this.words = words;
        key("entry.open", this::choose);
        key("entry.begin", () -> begin(demo.catalogue(), FileQuestion.catalogue(shell(), words), this::open));
        key("entry.saveAs", this::saveAs);
        settings.catalogue().ifPresent(this::open);
    }

    private void choose() {
        FileQuestion.catalogue(shell(), words)
                .open("entry.catalogue.title", settings.catalogue().orElse(null))
                .ifPresent(this::open);
    }

    /** Opens a catalogue. */
    public void open(Path file) {
        open(
                () -> {
                    FileFingerprint mark = FileFingerprint.of(file);
                    return new CatalogueEntries(file, mark, CatalogueFile.load(file), services, words);
                },
                file);
    }

    private void saveAs() {
        @Nullable EntryList present = list();
        if (present != null) {
            FileQuestion.catalogue(shell(), words)
                    .save("entry.saveAs.title", present.file())
                    .ifPresent(this::saveTo);
        }
    }

    /** A job reads its catalogue when it is opened: what is open keeps the heaters that it was opened with. */
    @Override
    void written(Path target) {
        settings.catalogue(target);
        say(words.get("entry.catalogue.written"));
    }
}
