// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import twinfeed.desktop.window.JobParts;

/** Explains the check that is looked at, or lists all checks. */
public final class HelpHandler {
    @Execute
    void explain(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part, JobParts parts) {
        ActiveJob.of(part).ifPresentOrElse(job -> job.explain(), () -> parts.explain(null, null));
    }
}
