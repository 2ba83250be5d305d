// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Words;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.model.job.Completion;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.completion.CompletionPaths;
import twinfeed.usecase.completion.CompletionService;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;
import twinfeed.usecase.completion.UnsafeNotices;

/**
 * The pages that are printed of finished work, and the notice of an unsafe unit. It has a copy of its own, so that what is printed is what
 * stood on the screen. What cannot be printed is refused by an exception whose message says why; nothing is written then.
 */
public final class CompletionPages {
    private static final OutputPaths NONE = new OutputPaths(null, null);

    private final JobServices services;
    private final Words words;
    private final OpenedJob opened;

    CompletionPages(JobServices services, OpenedJob opened) {
        this.services = services;
        this.words = new Words(services.locale());
        this.opened = opened;
    }

    /**
     * Writes the record of the finished work.
     *
     * @param out a PDF if its name ends with .pdf, otherwise a workbook
     * @throws RuntimeException if nobody is named who tested, or it cannot be written
     */
    public void record(Path out) {
        write(new CompletionPaths(paths(out), NONE));
    }

    /** Writes the page for the customer; likewise. */
    public void customer(Path out) {
        write(new CompletionPaths(NONE, paths(out)));
    }

    private void write(CompletionPaths paths) {
        @Nullable Completion done = opened.job().getCompletion();
        if (done == null || done.getBy() == null || done.getBy().isBlank() || done.getDoneOn() == null) {
            throw new IllegalStateException(words.get("completion.nobody"));
        }
        paths.check();
        CompletionSheet sheet = new CompletionService(services.service()).sheet(opened, book(), services.papers());
        CompletionService.write(opened, sheet, firm(), services.today(), services.papers(), paths);
    }

    /**
     * Writes the notice of an unsafe unit.
     *
     * @param keys keys of the findings and readings that it names; empty takes all
     * @param out a PDF if its name ends with .pdf, otherwise a workbook
     * @throws RuntimeException if there is nothing to warn of, or it cannot be written
     */
    public void notice(List<String> keys, Path out) {
        OutputPaths paths = paths(out);
        paths.check();
        List<Reason> all = new UnsafeNotices(services.service()).reasons(opened, book(), services.papers());
        List<Reason> chosen = all.stream()
                .filter(each -> keys.isEmpty() || keys.contains(each.key()))
                .toList();
        if (chosen.isEmpty()) {
            throw new IllegalStateException(
                    all.isEmpty()
                            ? words.get("notice.nothing")
                            : words.format(
                                    "notice.others",
                                    Map.of(
                                            "findings",
                                            all.stream().map(Reason::title).collect(Collectors.joining(", ")))));
        }
        UnsafeNotices.write(opened, chosen, book(), firm(), services.today(), services.papers(), paths);
    }

    private OutputPaths paths(Path out) {
        OutputPaths paths = out.toString().endsWith(".pdf") ? OutputPaths.pdf(out) : OutputPaths.workbook(out);
        return paths.sparing(List.of(opened.file())).sparing(opened.companions());
    }

    private @Nullable PriceBook book() {
        JobServices.@Nullable Prices prices = services.prices(opened.job().getSurvey());
        return prices == null ? null : prices.book();
    }

    private FirmFile firm() {
        return services.firm(services.prices(opened.job().getSurvey()));
    }
}
