// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import twinfeed.document.Firm;
import twinfeed.document.Palette;
import twinfeed.document.QuoteDocument;
import twinfeed.model.assessment.Finding;
import twinfeed.workbook.book.Book;
import twinfeed.workbook.book.CurveChart;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;
import twinfeed.workbook.pages.ChecksPage;
import twinfeed.workbook.pages.CompletionPage;
import twinfeed.workbook.pages.ItemsPage;
import twinfeed.workbook.pages.QuotePage;
import twinfeed.workbook.pages.ResultCells;
import twinfeed.workbook.pages.SeasonPage;
import twinfeed.workbook.pages.Sheets;
import twinfeed.workbook.pages.SourcesPage;
import twinfeed.workbook.pages.SurveyPage;
import twinfeed.workbook.pages.WorkingsPage;

/** Writes the workbook of a quote. */
public final class QuoteWorkbook {
    private QuoteWorkbook() {}

    /**
     * Writes a quote's workbook. The same document gives the same bytes.
     *
     * @param document what to write
     * @param out where to; it is flushed and left open, and nothing is written to it before the book is complete
     * @throws WorkbookException if the document contradicts itself, for example a total that is not the sum of its lines
     * @throws IOException if the stream cannot be written
     */
    public static void write(QuoteDocument document, OutputStream out) throws IOException {
        try (Book book = new Book(new Palette(document.firm().accent()), document.locale(), true)) {
            Sheets sheets = Sheets.of(document, book);
            Page quote = sheets.sheet("quote");
            Page items = sheets.sheet("items");
            Page checks = sheets.sheet("checks");
            Page workings = sheets.sheet("workings");
            List<ItemsPage.Totals> totals = new ItemsPage(sheets, items).write();
            Map<Finding, ResultCells> results = new WorkingsPage(sheets, workings).write();
            new ChecksPage(sheets, checks, results).write();
            new QuotePage(sheets, quote, totals).write();
            new SeasonPage(sheets, sheets.sheet("season")).write();
            new SurveyPage(sheets, sheets.sheet("survey")).write();
            new CompletionPage(sheets, sheets.sheet("completion")).write();
            new SourcesPage(sheets, sheets.sheet("sources")).write();
            describe(document, sheets);
            book.write(out);
        }
    }

    /**
     * Does once what the first workbook of a process has to do in any case, which takes longer than a workbook itself: call it on a
     * thread of its own while the job is still being judged. Calling it again or not at all does no harm.
     */
    public static void prepare() {
        try (Book book = new Book(new Palette(Firm.DEFAULT_ACCENT), Locale.ROOT, true)) {
            Page page = book.page("A");
            page.columns(10, 10).setup().landscape().header(0, 0).footer("", "");
            page.row().text(0, 1, "a", Look.BODY);
            page.row().number(0, 1, Look.BODY.format("0.0")).formula(1, "1+1", 2, Look.BODY.edge(Look.Edge.BOX));
            book.name("v_a", page.fullAddress(0));
            CurveChart.Curve curve = new CurveChart.Curve(
                    "a",
                    page.fullAddress(0),
                    null,
                    List.of(1.0),
                    List.of(1.0),
                    page.fullAddress(0),
                    page.fullAddress(1));
            new CurveChart(page, "", "").draw(List.of(curve), 1, 2, 2);
            book.describe("", "", "", "", Instant.EPOCH);
            book.write(OutputStream.nullOutputStream());
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static void describe(QuoteDocument document, Sheets sheets) {
        String site = document.survey().getSite() == null
                        || document.survey().getSite().getName() == null
                ? ""
                : document.survey().getSite().getName();
        sheets.book()
                .describe(
                        sheets.reference(),
                        site,
                        document.firm().name(),
                        "Twinfeed " + document.programVersion(),
                        document.time());
    }
}
