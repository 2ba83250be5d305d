// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.workbook.batch.ResultWorkbook;
import twinfeed.workbook.batch.ResultWorkbook.Column;
import twinfeed.workbook.batch.ResultWorkbook.Kind;

/** The sheets of a batch's workbook. */
final class BatchTable {
    /** Rows that a sheet of every spreadsheet program has, without note, blank row and head. */
    static final int MOST_ROWS = (1 << 20) - 3;

    private final ResultWorkbook book;
    private final Locale locale;
    private final @Nullable String currency;
    private final int mostRows;

    /**
     * With the book to write.
     *
     * @param currency currency of the prices by ISO 4217
     * @param mostRows rows after which a further sheet is begun; {@link #MOST_ROWS} but in tests
     */
    BatchTable(ResultWorkbook book, @Nullable String currency, Locale locale, int mostRows) {
        this.book = book;
        this.currency = currency;
        this.locale = locale;
        this.mostRows = mostRows;
    }

    private Column column(String key, Kind kind, double width) {
        return new Column(text("column." + key), kind, width);
    }

    private String text(String key) {
        return DwellingSheets.TEXTS.get(locale, key);
    }

    /** A source of rows. */
    private interface Rows {
        /** Hands on all rows. */
        void each(RowTaker taker) throws IOException;
    }

    /** What takes rows. */
    private interface RowTaker {
        /** Takes one. */
        void take(List<? extends @Nullable Object> row) throws IOException;
    }

    /** Writes all sheets. */
    void write(
            String template, BatchTotals totals, DwellingOrder order, List<List<String>> shared, RejectedRows refused)
            throws IOException {
        sheet("totals", note("totals", template), totalColumns(), taker -> {
            for (List<@Nullable Object> row : totals.rows()) {
                taker.take(row);
            }
        });
        sheet("dwellings", text("dwellings.note"), dwellingColumns(), order(order, DwellingSheets.Sheet.DWELLINGS));
        sheet(
                "visits",
                text("visits.note"),
                visitColumns(),
                taker -> order.visits((visit, rows) -> {
                    for (List<@Nullable Object> row : rows.get(DwellingSheets.Sheet.VISITS.ordinal())) {
                        List<@Nullable Object> numbered = new ArrayList<>(row);
                        numbered.add(0, visit);
                        taker.take(numbered);
                    }
                }));
        sheet(
                "repairs",
                text(totals.repairs() == 0 ? "repairs.none" : "repairs.note"),
                repairColumns(),
                order(order, DwellingSheets.Sheet.REPAIRS));
        sheet("offers", text("offers.note"), offerColumns(), order(order, DwellingSheets.Sheet.OFFERS));
        sheet("heaters", text("heaters.note"), heaterColumns(), order(order, DwellingSheets.Sheet.HEATERS));
        sheet("readings", note("readings", template), readingColumns(), order(order, DwellingSheets.Sheet.READINGS));
        sheet("template", note("template", template), templateColumns(), taker -> {
            for (List<String> row : shared) {
                taker.take(row);
            }
        });
        sheet(
                "refused",
                text(refused.count() == 0 ? "refused.none" : "refused.note"),
                refusedColumns(),
                taker -> refused.each(one -> taker.take(List.of(one.row(), one.dwelling(), one.reason()))));
    }

    private String note(String sheet, String template) {
        return DwellingSheets.TEXTS.format(locale, sheet + ".note", Map.of("template", template));
    }

    private static Rows order(DwellingOrder order, DwellingSheets.Sheet sheet) {
        return taker -> order.mostUrgentFirst(rows -> {
            for (List<@Nullable Object> row : rows.get(sheet.ordinal())) {
                taker.take(row);
            }
        });
    }

    private void sheet(String key, String note, List<Column> columns, Rows rows) throws IOException {
        String name = text(key);
        book.table(name, note, currency, columns);
        int[] counts = {0, 1};
        rows.each(row -> {
            if (counts[0] == mostRows) {
                counts[0] = 0;
                book.table(name + " " + ++counts[1], note, currency, columns);
            }
            counts[0]++;
            book.row(row);
        });
    }

    private List<Column> totalColumns() {
        return List.of(
                column("group", Kind.TEXT, 26),
                column("what", Kind.TEXT, 60),
                column("dwellings", Kind.COUNT, 12),
                column("net", Kind.MONEY, 14),
                column("tax", Kind.MONEY, 14),
                column("total", Kind.MONEY, 14));
    }

    private List<Column> dwellingColumns() {
        return List.of(
                column("row", Kind.COUNT, 6),
                column("dwelling", Kind.TEXT, 20),
                column("urgency", Kind.TEXT, 20),
                column("dangers", Kind.TEXT, 24),
                column("age", Kind.COUNT, 5),
                column("inspection", Kind.DATE, 12),
                column("repair", Kind.TEXT, 20),
                column("present", Kind.VERDICT, 14),
                column("offered", Kind.VERDICT, 14),
                column("total", Kind.MONEY, 11),
                column("own", Kind.COUNT, 8),
                column("template", Kind.COUNT, 10),
                column("missing", Kind.COUNT, 8));
    }

    private List<Column> visitColumns() {
        return List.of(
                column("visit", Kind.COUNT, 6),
                column("street", Kind.TEXT, 24),
                column("dwelling", Kind.TEXT, 20),
                column("urgency", Kind.TEXT, 22),
                column("todo", Kind.TEXT, 42),
                column("take", Kind.TEXT, 50));
    }

    private List<Column> repairColumns() {
        return List.of(
                column("row", Kind.COUNT, 6),
                column("dwelling", Kind.TEXT, 20),
                column("complaint", Kind.TEXT, 28),
                column("cause", Kind.TEXT, 36),
                column("advice", Kind.TEXT, 22),
                column("repairNet", Kind.MONEY, 11),
                column("newNet", Kind.MONEY, 11),
                column("reason", Kind.TEXT, 40));
    }

    private List<Column> offerColumns() {
        return List.of(
                column("row", Kind.COUNT, 6),
                column("dwelling", Kind.TEXT, 20),
                column("offered", Kind.TEXT, 22),
                column("verdict", Kind.VERDICT, 15),
                column("work", Kind.TEXT, 34),
                column("net", Kind.MONEY, 11),
                column("tax", Kind.MONEY, 10),
                column("total", Kind.MONEY, 11),
                column("enquiries", Kind.TEXT, 18),
                column("reason", Kind.TEXT, 36));
    }

    private List<Column> heaterColumns() {
        return List.of(
                column("row", Kind.COUNT, 6),
                column("dwelling", Kind.TEXT, 20),
                column("heater", Kind.TEXT, 26),
                column("verdict", Kind.VERDICT, 16),
                column("decides", Kind.TEXT, 48),
                column("needed", Kind.TEXT, 42));
    }

    private List<Column> readingColumns() {
        return List.of(
                column("row", Kind.COUNT, 6),
                column("dwelling", Kind.TEXT, 24),
                column("reading", Kind.TEXT, 50),
                column("value", Kind.TEXT, 40),
                column("origin", Kind.TEXT, 24));
    }

    private List<Column> templateColumns() {
        return List.of(column("reading", Kind.TEXT, 70), column("value", Kind.TEXT, 60));
    }

    private List<Column> refusedColumns() {
        return List.of(column("row", Kind.COUNT, 6), column("dwelling", Kind.TEXT, 26), column("why", Kind.TEXT, 110));
    }
}
