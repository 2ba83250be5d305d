// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.jface.dialogs.ProgressMonitorDialog;
import org.eclipse.swt.widgets.Shell;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Tone;
import twinfeed.desktop.session.QuoteWork;
import twinfeed.desktop.text.Words;
import twinfeed.usecase.quote.IssuedQuote;

/** Issues a quote while a progress is shown. It cannot be undone, so whoever calls has asked before. */
public final class QuoteIssue {
    private final JobPart job;
    private final Words words;

    /** For one job. */
    public QuoteIssue(JobPart job, Words words) {
        this.job = job;
        this.words = words;
    }

    /**
     * Issues the quote as it stands and says so, or says why it could not be issued.
     *
     * @param office folder of the office's quotes
     * @param previous file of the quote to be revised; null takes a new number
     * @param reason why it is issued although an option is not known to suit; empty where all are
     */
    public void issue(Path office, @Nullable Path previous, String reason, Shell shell) {
        QuoteWork work = job.session().quoteWork();
        AtomicReference<@Nullable IssuedQuote> issued = new AtomicReference<>();
        try {
            new ProgressMonitorDialog(shell).run(true, false, monitor -> {
                SubMonitor progress = SubMonitor.convert(monitor, words.get("issue.running"), 2);
                try {
                    work.compute();
                    progress.worked(1);
                    issued.set(work.issue(office, previous, reason));
                } catch (RuntimeException refused) {
                    throw new InvocationTargetException(refused);
                }
            });
        } catch (InvocationTargetException refused) {
            Throwable cause = refused.getCause() == null ? refused : refused.getCause();
            job.say(
                    Tone.BAD,
                    words.format("issue.refused", java.util.Map.of("reason", String.valueOf(cause.getMessage()))));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        IssuedQuote quote = issued.get();
        if (quote != null) {
            job.session().issued(quote);
            job.issued(quote, work);
        }
    }
}
