// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import java.util.Map;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.Settings;
import twinfeed.desktop.WindowLanguage;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.text.Words;

/** Chooses the language of the window; it is spoken from the next start on. */
public final class LanguageHandler {
    @Execute
    void choose(
            @Named("twinfeed.desktop.language") String code,
            @Named(IServiceConstants.ACTIVE_SHELL) Shell shell,
            Settings settings,
            Words words) {
        settings.language(code);
        Words next = new Words(WindowLanguage.of(code, java.util.Locale.getDefault()));
        Dialogs.say(
                shell,
                words,
                words.get("application"),
                words.format("language.next", Map.of("language", next.get("language.own"))));
    }
}
