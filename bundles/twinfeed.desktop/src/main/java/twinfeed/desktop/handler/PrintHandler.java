// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.part.JobPrint;
import twinfeed.desktop.print.Printers;
import twinfeed.desktop.text.Words;

/** Prints the customer's page, the quote, the job sheet or the drawing. */
public final class PrintHandler extends JobHandler {
    @Execute
    void print(
            @Optional @Named(IServiceConstants.ACTIVE_PART) MPart part,
            @Named(IServiceConstants.ACTIVE_SHELL) Shell shell,
            Words words) {
        ActiveJob.of(part).ifPresent(job -> new JobPrint(job, shell, words, Printers.ofThisSystem()).ask());
    }
}
