// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.core.runtime.Platform;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.text.Words;

/** Shows the log, in the program that the system has for such files. */
public final class LogHandler {
    @Execute
    void show(@Named(IServiceConstants.ACTIVE_SHELL) Shell shell, Words words) {
        Path log = Platform.getLogFileLocation().toPath();
        if (!Files.exists(log)) {
            Dialogs.say(shell, words, words.get("log.title"), words.format("log.none", Map.of("file", log)));
        } else if (!Program.launch(log.toString())) {
            Dialogs.say(shell, words, words.get("log.title"), words.format("log.where", Map.of("file", log)));
        }
    }
}
