// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.text.Words;

/** Saves the job under another name. */
public final class SaveAsHandler extends JobHandler {
    @Execute
    void save(
            @Optional @Named(IServiceConstants.ACTIVE_PART) MPart part,
            @Named(IServiceConstants.ACTIVE_SHELL) Shell shell,
            Words words) {
        ActiveJob.of(part).ifPresent(job -> ask(job, FileQuestion.job(shell, words)));
    }

    private static void ask(JobPart job, FileQuestion question) {
        question.save("saveAs.title", job.session().file()).ifPresent(job::saveAs);
    }
}
