// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;
import org.eclipse.core.runtime.SubMonitor;
import org.eclipse.swt.widgets.Shell;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.SlowWork;
import twinfeed.desktop.session.QuoteWork;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
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
        SlowWork.done(
                shell,
                words,
                monitor -> {
                    SubMonitor progress = SubMonitor.convert(monitor, words.get("issue.running"), 2);
                    work.compute();
                    progress.worked(1);
                    issued.set(work.issue(office, previous, reason));
                },
                refused -> job.say(Tone.BAD, words.format("issue.refused", Map.of("reason", refused))));
        IssuedQuote quote = issued.get();
        if (quote != null) {
            job.session().issued(quote);
            job.issued(quote, work);
        }
    }
}
