// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.faults.FaultFindingService;

/** The papers that are printed straight away, as PDF. It has a copy of the job, so that what is printed is what stood on the screen. */
public final class PrintedPages {
    private final JobServices services;
    private final OpenedJob opened;
    private final AnswerCache cache;

    PrintedPages(JobServices services, OpenedJob opened, AnswerCache cache) {
        this.services = services;
        this.opened = opened;
        this.cache = cache;
    }

    /**
     * Writes the quote; its first page is the customer's.
     *
     * @throws RuntimeException if there is nothing to be quoted, or it cannot be written; its message says why
     */
    public void quote(Path pdf) {
        QuoteWork work = new QuoteWork(services, opened, cache);
        work.compute();
        work.write(pdf);
    }

    /**
     * Writes the job sheet of the fault-finding.
     *
     * @throws RuntimeException if the survey has no unit, or it cannot be written; its message says why
     */
    public void jobSheet(Path pdf) {
        JobServices.@Nullable Prices prices = services.prices(opened.job().getSurvey());
        @Nullable PriceBook book = prices == null ? null : prices.book();
        FaultSheet sheet =
                new FaultFindingService(services.service()).sheet(opened, book, services.today(), services.papers());
        FaultFindingService.write(
                opened, sheet, services.firm(prices), services.today(), services.papers(), OutputPaths.pdf(pdf));
    }
}
