// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.nio.file.Path;
import java.util.Map;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.SlowWork;
import twinfeed.desktop.session.QuoteWork;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

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
        boolean written = SlowWork.done(
                shell,
                words,
                monitor -> write(work, out, monitor),
                reason -> job.say(Tone.BAD, words.format("export.refused", Map.of("reason", reason))));
        if (written) {
            job.written(out);
        }
    }

    private void write(QuoteWork work, Path out, IProgressMonitor monitor) {
        SubMonitor progress = SubMonitor.convert(monitor, words.format("export.running", Map.of("file", out)), 2);
        work.compute();
        progress.worked(1);
        work.write(out);
        progress.worked(1);
    }
}
