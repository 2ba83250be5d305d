// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.quick.QuickPart;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.window.JobParts;

/** Makes a job with the readings of the quick question in it. */
public final class QuickJobHandler {
    @CanExecute
    boolean possible(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part) {
        return part != null && part.getObject() instanceof QuickPart;
    }

    @Execute
    void make(
            @Named(IServiceConstants.ACTIVE_PART) MPart part,
            @Named(IServiceConstants.ACTIVE_SHELL) Shell shell,
            JobParts parts,
            Words words) {
        if (part.getObject() instanceof QuickPart quick) {
            quick.survey().ifPresent(survey -> NewJobHandler.begin(survey, shell, parts, words));
        }
    }
}
