// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntConsumer;
import twinfeed.document.QuoteLetter;
import twinfeed.document.QuoteLetter.Kind;
import twinfeed.document.QuoteLetter.Row;
import twinfeed.document.QuoteLetter.Value;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.OutcomeText;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;
import twinfeed.workbook.writer.TextWidth;

/** The options side by side. */
final class OptionsTable {
    private static final int LABEL = 4;

    /** A text over more lines than these is written small: otherwise the whole page would be printed smaller for its sake. */
    private static final int MOST_LINES = 5;

    private final SheetWriter page;
    private final QuoteLetter letter;
    private final NumberFormats formats;
    private final List<ItemsSheet.Totals> totals;
    private final int span;

    OptionsTable(SheetWriter page, QuoteLetter letter, NumberFormats formats, List<ItemsSheet.Totals> totals) {
        this.page = page;
        this.letter = letter;
        this.formats = formats;
        this.totals = totals;
        this.span = (QuoteSheet.COLUMNS - LABEL) / Math.max(1, letter.options().size());
    }

    void write() {
        if (letter.options().isEmpty()) {
            page.row().text(0, QuoteSheet.LAST, letter.none(), SheetStyles.BOLD);
            return;
        }
        CellStyle head = SheetStyles.HEAD.align(CellStyle.Alignment.CENTRE);
        page.row().text(0, LABEL - 1, "", head);
        each(at -> page.text(first(at), last(at), title(letter.options().get(at)), head));
        letter.rows().forEach(this::row);
        page.gap(6);
    }

    private static String title(QuoteLetter.Option option) {
        return option.number() + "\n" + option.title();
    }

    private void row(Row row) {
        switch (row.kind()) {
            case WORK ->
                texts(row, isLong(row) ? SheetStyles.LINE.lettering(CellStyle.Lettering.SMALL) : SheetStyles.LINE);
            case ENQUIRIES -> texts(row, SheetStyles.LINE.lettering(CellStyle.Lettering.SMALL));
            case VERDICT -> verdicts(row);
            case FLOW -> texts(row, SheetStyles.LINE.align(CellStyle.Alignment.CENTRE));
            case SHOWER -> figures(row, formats.money());
            case WAITING -> figures(row, "0");
            case NET -> amounts(row, ItemsSheet.Totals::net, SheetStyles.LINE);
            case TAX -> amounts(row, ItemsSheet.Totals::tax, SheetStyles.LINE);
            case TOTAL ->
                amounts(
                        row,
                        ItemsSheet.Totals::total,
                        SheetStyles.SUM.lettering(CellStyle.Lettering.FIGURE).fill(CellStyle.Fill.SOFT));
            case PAYMENT -> amounts(row, totals -> totals.payments().get(row.stage()), SheetStyles.LINE);
        }
    }

    private boolean isLong(Row row) {
        double width = page.width(first(0), last(0));
        return row.values().stream()
                .anyMatch(value -> TextWidth.lines(value.text(), width, CellStyle.Lettering.BODY) > MOST_LINES);
    }

    private void texts(Row row, CellStyle look) {
        label(row);
        each(at -> page.text(first(at), last(at), row.values().get(at).text(), look));
    }

    private void verdicts(Row row) {
        label(row);
        each(at -> {
            Value value = row.values().get(at);
            CellStyle line = SheetStyles.LINE.align(CellStyle.Alignment.CENTRE);
            CellStyle look = value.verdict() == null ? line : OutcomeText.look(value.verdict(), line);
            page.text(first(at), last(at), value.text(), look);
        });
    }

    private void figures(Row row, String format) {
        label(row);
        CellStyle look = SheetStyles.LINE.format(format).align(CellStyle.Alignment.CENTRE);
        each(at -> page.span(first(at), last(at), look)
                .number(first(at), row.values().get(at).number(), look));
    }

    private void amounts(Row row, Function<ItemsSheet.Totals, String> cell, CellStyle base) {
        boolean sum = row.kind() != Kind.PAYMENT;
        page.row().text(0, LABEL - 1, row.label(), sum ? base : base.lettering(CellStyle.Lettering.MUTED));
        CellStyle look = base.format(formats.money()).align(CellStyle.Alignment.CENTRE);
        each(at -> {
            page.span(first(at), last(at), look);
            if (row.values().get(at).number() instanceof BigDecimal amount) {
                page.formula(first(at), cell.apply(totals.get(at)), amount, look);
            }
        });
    }

    private void label(Row row) {
        page.row().text(0, LABEL - 1, row.label(), SheetStyles.LINE.lettering(CellStyle.Lettering.MUTED));
    }

    private void each(IntConsumer action) {
        for (int at = 0; at < letter.options().size(); at++) {
            action.accept(at);
        }
    }

    private int first(int at) {
        return LABEL + at * span;
    }

    private int last(int at) {
        return first(at) + span - 1;
    }
}
