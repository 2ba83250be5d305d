// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import java.util.Map;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.text.Words;
import twinfeed.usecase.TwinfeedService;

/** Says what this program is and which version of it runs. */
public final class AboutHandler {
    @Execute
    void show(@Named(IServiceConstants.ACTIVE_SHELL) Shell shell, Words words) {
        Dialogs.say(
                shell,
                words,
                words.get("about.title"),
                words.format("about.text", Map.of("version", TwinfeedService.VERSION)));
    }
}
