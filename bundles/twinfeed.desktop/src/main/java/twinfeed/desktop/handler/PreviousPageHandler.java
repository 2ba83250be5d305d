// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;

/** Shows the previous page of the survey. */
public final class PreviousPageHandler extends JobHandler {
    @Execute
    void turn(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part) {
        ActiveJob.of(part).ifPresent(job -> job.survey().turn(-1));
    }
}
