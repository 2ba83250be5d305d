// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobServices.Prices;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.window.JobParts;

/** Chooses the price book by which all jobs are priced. */
public final class ChoosePricesHandler {
    @Execute
    void choose(@Named(IServiceConstants.ACTIVE_SHELL) Shell shell, JobParts parts, JobServices services, Words words) {
        Prices present = services.prices();
        FileQuestion.prices(shell, words)
                .open("prices.title", present == null ? null : present.file())
                .ifPresent(parts::choosePrices);
    }
}
