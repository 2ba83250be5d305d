// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.settings;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import twinfeed.desktop.Settings;
import twinfeed.desktop.WindowLanguage;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/** Languages of the window, from the next start on, and of the papers, from now on. */
final class LanguageSection {
    LanguageSection(Composite parent, JobServices services, Settings settings, Words words, Runnable fit) {
        SettingForm form = new SettingForm(parent, words, "settings.language", fit);
        List<String> names = new ArrayList<>();
        for (String code : WindowLanguage.CODES) {
            names.add(new Words(Locale.forLanguageTag(code)).get("language.own"));
        }
        List<String> window = new ArrayList<>(names);
        window.add(0, words.get("settings.language.system"));
        Label[] next = new Label[1];
        int spoken = WindowLanguage.CODES.indexOf(settings.language()) + 1;
        form.choice("settings.language.window", window, spoken, at -> {
            settings.language(at == 0 ? WindowLanguage.SYSTEM : WindowLanguage.CODES.get(at - 1));
            form.say(next[0], words.format("language.next", Map.of("language", window.get(at))), Tone.DOUBT);
        });
        next[0] = form.message("settings.language.window");
        List<String> papers = new ArrayList<>(names);
        papers.add(0, words.get("settings.language.asWindow"));
        int written = WindowLanguage.CODES.indexOf(settings.papers()) + 1;
        form.choice("settings.language.papers", papers, written, at -> {
            settings.papers(at == 0 ? "" : WindowLanguage.CODES.get(at - 1));
            services.papers(WindowLanguage.ofPapers(settings.papers(), services.locale()));
        });
    }
}
