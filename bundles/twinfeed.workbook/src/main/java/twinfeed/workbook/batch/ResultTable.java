// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.batch;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.apache.poi.ss.util.CellRangeAddress;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentTexts;
import twinfeed.model.assessment.Verdict;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.OutcomeText;
import twinfeed.workbook.sheet.QuoteSheets;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** One table of results. */
public final class ResultTable {
    private final SheetWriter page;
    private final DocumentTexts words;
    private final OutcomeText answers;
    private final NumberFormats formats;
    private final List<ResultWorkbook.Column> columns;
    private final int headRow;

    /** Begins it: note, head of the table, set-up. */
    public ResultTable(
            SheetWriter page,
            Locale locale,
            String note,
            @Nullable String currency,
            List<ResultWorkbook.Column> columns) {
        this.page = page;
        this.words = QuoteSheets.words(locale);
        this.answers = new OutcomeText(words);
        this.formats = new NumberFormats(words, currency);
        this.columns = List.copyOf(columns);
        page.setup().landscape().footer(note, words.get("foot.page"));
        page.columns(columns.stream().mapToDouble(ResultWorkbook.Column::width).toArray());
        page.row().text(0, columns.size() - 1, note, SheetStyles.MUTED);
        page.row();
        for (int at = 0; at < columns.size(); at++) {
            CellStyle.Alignment side =
                    figure(columns.get(at).kind()) ? CellStyle.Alignment.RIGHT : CellStyle.Alignment.LEFT;
            page.text(at, columns.get(at).title(), SheetStyles.HEAD.align(side));
        }
        headRow = page.rowIndex();
        page.setup().header(headRow, headRow);
    }

    /** Ends it: its columns can be filtered from the head on. */
    public void end() {
        page.sheet().setAutoFilter(new CellRangeAddress(headRow, page.rowIndex(), 0, columns.size() - 1));
    }

    private static boolean figure(ResultWorkbook.Kind kind) {
        return switch (kind) {
            case NUMBER, COUNT, MONEY, SHARE -> true;
            case TEXT, DATE, VERDICT -> false;
        };
    }

    /** Adds a row. */
    public void row(List<? extends @Nullable Object> values) {
        if (values.size() != columns.size()) {
            throw new IllegalArgumentException(values.size() + " values for " + columns.size() + " columns");
        }
        page.row();
        for (int at = 0; at < columns.size(); at++) {
            cell(at, columns.get(at), values.get(at));
        }
    }

    private void cell(int at, ResultWorkbook.Column column, @Nullable Object value) {
        CellStyle look = SheetStyles.LINE;
        if (value == null) {
            page.blank(at, look);
        } else if (value instanceof Verdict verdict
                && (column.kind() == ResultWorkbook.Kind.VERDICT || column.kind() == ResultWorkbook.Kind.TEXT)) {
            page.text(at, answers.verdict(verdict), OutcomeText.look(verdict, look));
        } else if (column.kind() == ResultWorkbook.Kind.TEXT) {
            page.text(at, value.toString(), look);
        } else if (column.kind() == ResultWorkbook.Kind.DATE && value instanceof LocalDate date) {
            page.date(at, date, look.format(formats.date()).align(CellStyle.Alignment.LEFT));
        } else if (figure(column.kind()) && value instanceof Number number) {
            page.number(at, number, look.format(format(column.kind(), number.doubleValue())));
        } else {
            throw new IllegalArgumentException(
                    column.title() + ": " + value.getClass().getSimpleName() + " in a column of " + column.kind());
        }
    }

    private String format(ResultWorkbook.Kind kind, double value) {
        return switch (kind) {
            case COUNT -> "0";
            case MONEY -> formats.money();
            case SHARE -> NumberFormats.WHOLE_PERCENT;
            default -> NumberFormats.of(value);
        };
    }
}
