// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.settings;

import jakarta.inject.Inject;
import java.util.Map;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Composite;
import twinfeed.desktop.Settings;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Scroll;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.firm.FirmFolder;

/** The page of settings. Each entry is kept when it is made; one that cannot be used says so below it and is not kept. */
public final class SettingsPart {
    private final Scroll scroll;

    /** Made by the platform. */
    @Inject
    public SettingsPart(
            Composite parent, JobServices services, Threads threads, Settings settings, FirmFolder firm, Words words) {
        parent.setLayout(new GridLayout(1, false));
        this.scroll = new Scroll(parent);
        Composite content = scroll.content();
        Controls.text(content, words.get("settings.lead"), Tone.QUIET);
        new FirmSection(content, services, threads, words, firm, scroll::fit);
        new LanguageSection(content, services, settings, words, scroll::fit);
        new ListsSection(content, services, threads, settings, words, scroll::fit);
        new WordingSection(content, services, threads, words, firm, scroll::fit);
        Controls.text(
                content,
                words.format("settings.where", Map.of("file", settings.file(), "folder", firm.folder())),
                Tone.QUIET);
        scroll.fit();
    }

    @Focus
    void focus() {
        scroll.content().setFocus();
    }
}
