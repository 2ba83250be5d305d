// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.math.BigDecimal;
import java.util.List;
import java.util.function.Function;
import java.util.function.IntConsumer;
import twinfeed.document.QuoteLetter;
import twinfeed.document.QuoteLetter.Kind;
import twinfeed.document.QuoteLetter.Row;
import twinfeed.document.QuoteLetter.Value;
import twinfeed.workbook.book.Look;
import twinfeed.workbook.book.Page;
import twinfeed.workbook.book.TextWidth;

/** The options side by side. */
final class OptionsTable {
    private static final int LABEL = 4;

    /** A text over more lines than these is written small: otherwise the whole page would be printed smaller for its sake. */
    private static final int MOST_LINES = 5;

    private final Page page;
    private final QuoteLetter letter;
    private final Formats formats;
    private final List<ItemsPage.Totals> totals;
    private final int span;

    OptionsTable(Page page, QuoteLetter letter, Formats formats, List<ItemsPage.Totals> totals) {
        this.page = page;
        this.letter = letter;
        this.formats = formats;
        this.totals = totals;
        this.span = (QuotePage.COLUMNS - LABEL) / Math.max(1, letter.options().size());
    }

    void write() {
        if (letter.options().isEmpty()) {
            page.row().text(0, QuotePage.LAST, letter.none(), Looking.BOLD);
            return;
        }
        Look head = Looking.HEAD.side(Look.Side.CENTRE);
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
            case GIVES -> texts(row, isLong(row) ? Looking.LINE.ink(Look.Ink.SMALL) : Looking.LINE);
            case INCLUDED, ENQUIRIES -> texts(row, Looking.LINE.ink(Look.Ink.SMALL));
            case VERDICT -> verdicts(row);
            case FLOW -> figures(row, "0.0");
            case SHOWER -> figures(row, formats.money());
            case WAITING -> figures(row, "0");
            case NET -> amounts(row, ItemsPage.Totals::net, Looking.LINE);
            case TAX -> amounts(row, ItemsPage.Totals::tax, Looking.LINE);
            case TOTAL ->
                amounts(
                        row,
                        ItemsPage.Totals::total,
                        Looking.SUM.ink(Look.Ink.FIGURE).paper(Look.Paper.SOFT));
            case PAYMENT -> amounts(row, totals -> totals.payments().get(row.stage()), Looking.LINE);
        }
    }

    private boolean isLong(Row row) {
        double width = page.width(first(0), last(0));
        return row.values().stream()
                .anyMatch(value -> TextWidth.lines(value.text(), width, Look.Ink.BODY) > MOST_LINES);
    }

    private void texts(Row row, Look look) {
        label(row);
        each(at -> page.text(first(at), last(at), row.values().get(at).text(), look));
    }

    private void verdicts(Row row) {
        label(row);
        each(at -> {
            Value value = row.values().get(at);
            Look look = Answers.look(value.verdict(), Looking.LINE.side(Look.Side.CENTRE));
            page.text(first(at), last(at), value.text(), look);
        });
    }

    private void figures(Row row, String format) {
        label(row);
        Look look = Looking.LINE.format(format).side(Look.Side.CENTRE);
        each(at -> page.span(first(at), last(at), look)
                .number(first(at), row.values().get(at).number(), look));
    }

    private void amounts(Row row, Function<ItemsPage.Totals, String> cell, Look base) {
        boolean sum = row.kind() != Kind.PAYMENT;
        page.row().text(0, LABEL - 1, row.label(), sum ? base : base.ink(Look.Ink.MUTED));
        Look look = base.format(formats.money()).side(Look.Side.CENTRE);
        each(at -> {
            page.span(first(at), last(at), look);
            if (row.values().get(at).number() instanceof BigDecimal amount) {
                page.formula(first(at), cell.apply(totals.get(at)), amount, look);
            }
        });
    }

    private void label(Row row) {
        page.row().text(0, LABEL - 1, row.label(), Looking.LINE.ink(Look.Ink.MUTED));
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
