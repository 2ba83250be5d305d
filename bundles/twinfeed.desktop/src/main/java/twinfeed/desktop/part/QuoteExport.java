// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.jface.dialogs.ProgressMonitorDialog;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.Tone;
import twinfeed.desktop.session.QuoteWork;
import twinfeed.desktop.text.Words;

/** Writes a quote while a progress is shown. */
public final class QuoteExport {
    private final JobPart job;
    private final Words words;

    /** For one job. */
    public QuoteExport(JobPart job, Words words) {
        this.job = job;
        this.words = words;
    }

    /** Writes the workbook or the PDF and says so, or says why it could not be written. */
    public void write(Path out, Shell shell) {
        QuoteWork work = job.session().quoteWork();
        try {
            new ProgressMonitorDialog(shell).run(true, false, monitor -> write(work, out, monitor));
            job.written(out);
        } catch (InvocationTargetException refused) {
            Throwable cause = refused.getCause() == null ? refused : refused.getCause();
            job.say(Tone.BAD, words.format("export.refused", Map.of("reason", String.valueOf(cause.getMessage()))));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
    }

    private void write(QuoteWork work, Path out, IProgressMonitor monitor) throws InvocationTargetException {
        SubMonitor progress = SubMonitor.convert(monitor, words.format("export.running", Map.of("file", out)), 2);
        try {
            work.compute();
            progress.worked(1);
            work.write(out);
            progress.worked(1);
        } catch (RuntimeException refused) {
            throw new InvocationTargetException(refused);
        }
    }
}
