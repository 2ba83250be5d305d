// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import java.nio.file.Path;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.window.JobParts;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** Begins a job: asks where its file is to be and which heaters are on offer. */
public final class NewJobHandler {
    @Execute
    void begin(@Named(IServiceConstants.ACTIVE_SHELL) Shell shell, JobParts parts, Words words) {
        begin(SurveyFactory.eINSTANCE.createSurvey(), shell, parts, words);
    }

    /** Begins a job with readings that are known already. */
    public static void begin(Survey survey, Shell shell, JobParts parts, Words words) {
        Path last = parts.lastCatalogue().orElse(null);
        FileQuestion.job(shell, words).save("new.title", null).ifPresent(job -> FileQuestion.catalogue(shell, words)
                .open("new.catalogue", last)
                .ifPresent(catalogue -> parts.create(job, catalogue, survey)));
    }
}
