// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;

/** Puts the cursor into the next of the three panes. */
public final class NextPaneHandler extends JobHandler {
    @Execute
    void go(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part) {
        ActiveJob.of(part).ifPresent(job -> job.nextPane());
    }
}
