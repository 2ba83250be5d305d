// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.swt.program.Program;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.Jobs;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.session.QuoteWork;
import twinfeed.desktop.text.ProblemText;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.quote.IssuedQuote;

/** What the bar above a job says, and what can be done about it there. */
final class JobNotices {
    private final NoticeBar bar;
    private final Words words;
    private final Jobs jobs;
    private final JobSession session;
    private final LastAction last;

    JobNotices(NoticeBar bar, Words words, Jobs jobs, JobSession session, LastAction last) {
        this.bar = bar;
        this.words = words;
        this.jobs = jobs;
        this.session = session;
        this.last = last;
    }

    /** Whether something is said. */
    boolean shown() {
        return bar.shown();
    }

    /** Nothing is said any more. */
    void hide() {
        bar.hide();
    }

    /** What is said has been seen; see {@link NoticeBar#passOn}. */
    void passOn() {
        bar.passOn();
    }

    /** Says something with nothing to be done about it. */
    void say(Tone tone, String text) {
        bar.say(tone, text, words.get("notice.close"));
        last.say(text);
    }

    /**
     * Says what is odd about a job that was just opened.
     *
     * @param name what the job is called
     */
    void opened(OpenedJob opened, String name) {
        if (session.oldChanges()) {
            Map<String, Runnable> answers = new LinkedHashMap<>();
            answers.put(words.get("backup.take"), () -> jobs.takeOldChanges(session));
            answers.put(words.get("backup.drop"), session::dropOldChanges);
            show(Tone.DOUBT, words.format("backup.there", Map.of("job", name)), answers);
        } else if (!opened.warnings().isEmpty()) {
            String lines = opened.warnings().stream()
                    .map(problem -> ProblemText.line(problem, words))
                    .collect(Collectors.joining("\n"));
            say(Tone.DOUBT, words.get("open.warnings") + "\n" + lines);
        }
    }

    /** Says that the file was changed by another program. */
    void changedOutside() {
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put(words.get("outside.read"), () -> jobs.readAgain(session));
        answers.put(words.get("outside.keep"), session::acceptOutside);
        show(Tone.DOUBT, words.format("outside.changed", Map.of("file", session.file())), answers);
    }

    /**
     * Says that something was written to a file, and offers to look at it.
     *
     * @param key key of the sentence
     */
    void written(String key, Path file) {
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put(words.get("export.look"), () -> Program.launch(file.toString()));
        answers.put(words.get("notice.close"), () -> {});
        show(Tone.GOOD, words.format(key, Map.of("file", file)), answers);
    }

    /** Says that a quote was issued, and offers its workbook and the list of issued quotes. */
    void issued(IssuedQuote issued, QuoteWork work) {
        Map<String, Runnable> answers = new LinkedHashMap<>();
        answers.put(words.get("issue.workbook"), () -> writeIssued(issued, work));
        answers.put(words.get("issue.show"), jobs::showIssued);
        answers.put(words.get("notice.close"), () -> {});
        show(Tone.GOOD, words.format("issue.done", Map.of("name", issued.name(), "file", issued.file())), answers);
    }

    private void writeIssued(IssuedQuote issued, QuoteWork work) {
        Path out = issued.file().resolveSibling(issued.name() + ".xlsx");
        try {
            work.write(issued, out);
            written("export.done", out);
        } catch (RuntimeException refused) {
            say(Tone.BAD, words.format("export.refused", Map.of("reason", String.valueOf(refused.getMessage()))));
        }
    }

    /** The bar is no part of the way of the Tab key: what it says is read out by the status line too. */
    private void show(Tone tone, String text, Map<String, Runnable> answers) {
        bar.show(tone, text, answers);
        last.say(text);
    }
}
