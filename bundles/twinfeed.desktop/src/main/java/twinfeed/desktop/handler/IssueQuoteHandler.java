// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import java.nio.file.Path;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.Settings;
import twinfeed.desktop.issued.IssueDialog;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.part.QuoteIssue;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.text.Words;

/** Issues the quote as it stands, after saying what is frozen by that. */
public final class IssueQuoteHandler extends JobHandler {
    @Execute
    void issue(
            @Optional @Named(IServiceConstants.ACTIVE_PART) MPart part,
            @Named(IServiceConstants.ACTIVE_SHELL) Shell shell,
            Settings settings,
            LastAction last,
            Words words) {
        ActiveJob.of(part).filter(JobPart::readyForQuote).ifPresent(job -> ask(job, shell, settings, last, words));
    }

    private static void ask(JobPart job, Shell shell, Settings settings, LastAction last, Words words) {
        IssueDialog dialog = new IssueDialog(shell, words, settings.office().orElse(null), job.session());
        Path office = dialog.open() == Window.OK ? dialog.office() : null;
        if (office != null) {
            settings.office(office);
            new QuoteIssue(job, words).issue(office, dialog.previous(), dialog.reason(), shell);
        } else {
            last.say(words.get("status.done.cancelled"));
        }
    }
}
