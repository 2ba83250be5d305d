// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.completion.CompletionPane;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.look.SlowWork;
import twinfeed.desktop.session.CompletionPages;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.model.io.JobFile;

/** Prints what belongs to the finished work, and the notice of an unsafe unit: asks where to, shows a progress, says what came of it. */
public final class CompletionPrint implements CompletionPane.Printing {
    private final JobPart job;
    private final Shell shell;
    private final Words words;

    /** For one job. */
    public CompletionPrint(JobPart job, Shell shell, Words words) {
        this.job = job;
        this.shell = shell;
        this.words = words;
    }

    @Override
    public void record() {
        ask("record", CompletionPages::record);
    }

    @Override
    public void customer() {
        ask("customer", CompletionPages::customer);
    }

    @Override
    public void notice() {
        notice(List.of());
    }

    /** The notice for some findings; empty takes all that make the unit unsafe. */
    public void notice(List<String> findings) {
        ask("notice", (pages, out) -> pages.notice(findings, out));
    }

    private void ask(String key, BiConsumer<CompletionPages, Path> page) {
        if (job.readyForQuote()) {
            String name = JobFile.name(job.session().file());
            FileQuestion.print(shell, words)
                    .save(
                            "completion." + key + ".title",
                            job.session().file().resolveSibling(name + "-" + key + ".pdf"))
                    .ifPresent(out -> write(out, page));
        }
    }

    /** Writes a page and says so, or says why it could not be written. */
    public void write(Path out, BiConsumer<CompletionPages, Path> page) {
        CompletionPages pages = job.session().completionPages();
        boolean written = SlowWork.done(
                shell,
                words,
                monitor -> {
                    monitor.beginTask(words.format("completion.writing", Map.of("file", out)), 1);
                    page.accept(pages, out);
                },
                reason -> job.say(Tone.BAD, words.format("completion.refused", Map.of("reason", reason))));
        if (written) {
            job.printed(out);
        }
    }
}
