// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import java.util.List;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.part.NewJobDialog;
import twinfeed.desktop.session.JobTemplate;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.window.JobParts;
import twinfeed.model.survey.Survey;

/** Begins a job: asks with which house, where its file is to be and which heaters are on offer. */
public final class NewJobHandler {
    @Execute
    void begin(@Named(IServiceConstants.ACTIVE_SHELL) Shell shell, JobParts parts, Words words) {
        begin(parts.templates().all(), shell, parts, words);
    }

    /** Begins a job with readings that are known already. */
    public static void begin(Survey survey, Shell shell, JobParts parts, Words words) {
        begin(List.of(new JobTemplate("", "", () -> survey)), shell, parts, words);
    }

    private static void begin(List<JobTemplate> houses, Shell shell, JobParts parts, Words words) {
        NewJobDialog dialog = new NewJobDialog(
                shell, words, houses, parts.proposal(), parts.lastCatalogue().orElse(null));
        if (dialog.open() == Window.OK) {
            parts.create(
                    dialog.entries().file(),
                    dialog.entries().heaters(),
                    dialog.template().survey());
        }
    }
}
