// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import java.nio.file.Path;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.part.QuoteExport;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.JobFile;

/** Writes the quote as it stands to a workbook or as a PDF. */
public final class ExportQuoteHandler extends JobHandler {
    @Execute
    void export(
            @Optional @Named(IServiceConstants.ACTIVE_PART) MPart part,
            @Named(IServiceConstants.ACTIVE_SHELL) Shell shell,
            Words words) {
        ActiveJob.of(part).filter(JobPart::readyForQuote).ifPresent(job -> FileQuestion.paper(shell, words)
                .save("export.title", proposal(job.session().file()))
                .ifPresent(out -> new QuoteExport(job, words).write(out, shell)));
    }

    private static Path proposal(Path job) {
        String name = JobFile.name(job);
        return job.resolveSibling(name + "-quote.xlsx");
    }
}
