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
import twinfeed.workbook.checks.ChecksSheet;
import twinfeed.workbook.completion.CompletionSheet;
import twinfeed.workbook.curves.SeasonSheet;
import twinfeed.workbook.drawing.HouseSheet;
import twinfeed.workbook.inputs.Inputs;
import twinfeed.workbook.quote.ItemsSheet;
import twinfeed.workbook.quote.QuoteSheet;
import twinfeed.workbook.sheet.CellNames;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.survey.SourcesSheet;
import twinfeed.workbook.survey.SurveySheet;
import twinfeed.workbook.text.WorkbookException;
import twinfeed.workbook.workings.IndexSheet;
import twinfeed.workbook.workings.ResultCells;
import twinfeed.workbook.workings.WorkingsSheet;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.CurveChart;
import twinfeed.workbook.writer.SheetWriter;
import twinfeed.workbook.writer.WorkbookWriter;

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
        try (WorkbookWriter book =
                new WorkbookWriter(new Palette(document.firm().accent()), document.locale(), true)) {
            QuoteSheets sheets = QuoteSheets.of(document, book);
            SheetWriter quote = sheets.sheet("quote");
            SheetWriter items = sheets.sheet("items");
            SheetWriter checks = sheets.sheet("checks");
            SheetWriter index = sheets.sheet("index");
            SheetWriter workings = sheets.sheet("workings");
            List<ItemsSheet.Totals> totals = new ItemsSheet(sheets, items).write();
            SheetWriter season = sheets.sheet("season");
            SheetWriter drawing = sheets.sheet("drawing");
            CellNames names = new CellNames(book);
            Inputs inputs = new Inputs(sheets, names);
            new SurveySheet(sheets, sheets.sheet("survey"), inputs).write();
            WorkingsSheet worked = new WorkingsSheet(sheets, workings, inputs, names);
            Map<Finding, ResultCells> results = worked.write();
            new IndexSheet(sheets, index, workings, worked.rows()).write();
            List<String> changes = new ChecksSheet(sheets, checks, results).write();
            new QuoteSheet(sheets, quote, totals, changes).write();
            new SeasonSheet(sheets, season).write();
            new HouseSheet(sheets, drawing).write();
            new CompletionSheet(sheets, sheets.sheet("completion")).write();
            new SourcesSheet(sheets, sheets.sheet("sources")).write();
            describe(document, sheets);
            book.write(out);
        }
    }

    /**
     * Does once what the first workbook of a process has to do in any case, which takes longer than a workbook itself: call it on a
     * thread of its own while the job is still being judged. Calling it again or not at all does no harm.
     */
    public static void prepare() {
        try (WorkbookWriter book = new WorkbookWriter(new Palette(Firm.DEFAULT_ACCENT), Locale.ROOT, true)) {
            SheetWriter page = book.page("A");
            page.columns(10, 10).setup().landscape().header(0, 0).footer("", "");
            page.row().text(0, 1, "a", CellStyle.BODY);
            page.row()
                    .number(0, 1, CellStyle.BODY.format("0.0"))
                    .formula(1, "1+1", 2, CellStyle.BODY.border(CellStyle.Border.BOX));
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

    private static void describe(QuoteDocument document, QuoteSheets sheets) {
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
