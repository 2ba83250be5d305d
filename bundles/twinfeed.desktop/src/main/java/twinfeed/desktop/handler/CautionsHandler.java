// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.text.Cautions;
import twinfeed.desktop.text.Words;

/** Shows the cautions in full. */
public final class CautionsHandler {
    @Execute
    void show(@Named(IServiceConstants.ACTIVE_SHELL) Shell shell, Words words) {
        Dialogs.warn(shell, words, words.get("cautions.title"), Cautions.full(words));
    }
}
