// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.issued.ChoiceDialog;
import twinfeed.desktop.look.SlowWork;
import twinfeed.desktop.print.Printers;
import twinfeed.desktop.session.PrintedPages;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/** Prints what a job has to show: asks which paper and on which printer, shows a progress, says what came of it. */
public final class JobPrint {
    /** What can be printed. */
    public enum Paper {
        /** The first page of the quote. */
        CUSTOMER,
        /** The whole quote. */
        QUOTE,
        /** What was found out about a fault, and what to do. */
        JOB_SHEET,
        /** The drawing of both feeds. */
        DRAWING;

        private String key() {
            return "print." + name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private final JobPart job;
    private final Shell shell;
    private final Words words;
    private final Printers printers;

    /**
     * For one job.
     *
     * @param printers where it can be printed
     */
    public JobPrint(JobPart job, Shell shell, Words words, Printers printers) {
        this.job = job;
        this.shell = shell;
        this.words = words;
        this.printers = printers;
    }

    /** Asks which paper, and prints it; says at once where there is no printer. */
    public void ask() {
        List<String> names = names();
        if (names.isEmpty()) {
            job.say(Tone.DOUBT, words.get("print.noPrinter"));
            return;
        }
        List<Paper> papers = Stream.of(Paper.values())
                .filter(each -> each != Paper.CUSTOMER || printers.firstPageAlone())
                .toList();
        int paper = new ChoiceDialog(
                        shell,
                        words,
                        words.get("print.do"),
                        words.get("print.which"),
                        papers.stream().map(each -> words.get(each.key())).toList())
                .ask();
        int printer = paper < 0 || names.size() == 1
                ? 0
                : new ChoiceDialog(shell, words, words.get("print.do"), words.get("print.where"), names).ask();
        if (paper >= 0 && printer >= 0) {
            print(papers.get(paper), names.get(printer));
        }
    }

    /** The system may take its time, which the window does not spend waiting. */
    private List<String> names() {
        List<String> names = new ArrayList<>();
        SlowWork.done(
                shell,
                words,
                monitor -> {
                    monitor.beginTask(words.get("print.looking"), 1);
                    names.addAll(printers.names());
                },
                this::refused);
        return names;
    }

    /** Prints a paper, and says on which printer, or why it was not printed. */
    public void print(Paper paper, String printer) {
        if (paper != Paper.DRAWING && !job.readyForQuote()) {
            return;
        }
        PrintedPages pages = job.session().printedPages();
        Path drawing = paper == Paper.DRAWING ? drawing() : null;
        boolean printed = SlowWork.done(
                shell,
                words,
                monitor -> {
                    monitor.beginTask(words.get(paper.key()), 1);
                    Path file = drawing == null ? Files.createTempFile("twinfeed-", ".pdf") : drawing;
                    file.toFile().deleteOnExit();
                    switch (paper) {
                        case CUSTOMER, QUOTE -> pages.quote(file);
                        case JOB_SHEET -> pages.jobSheet(file);
                        default -> {}
                    }
                    printers.print(file, printer, paper == Paper.CUSTOMER);
                },
                this::refused);
        if (printed) {
            job.say(Tone.GOOD, words.format("print.done", Map.of("paper", words.get(paper.key()), "printer", printer)));
        }
    }

    private void refused(String reason) {
        job.say(Tone.BAD, words.format("print.refused", Map.of("reason", reason)));
    }

    private Path drawing() {
        try {
            Path file = Files.createTempFile("twinfeed-", ".png");
            Files.write(file, job.drawingForPrint());
            return file;
        } catch (IOException full) {
            throw new java.io.UncheckedIOException(full);
        }
    }
}
