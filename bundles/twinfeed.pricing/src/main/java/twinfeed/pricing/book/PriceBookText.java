// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.pricebook.LocalText;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.rows.CsvLines;

/** Writes a price book as the CSV text that {@link PriceBookCsv} reads, for example one that came from a workbook. */
public final class PriceBookText {
    private final StringBuilder text = new StringBuilder();
    private final CsvLines lines;

    private PriceBookText() throws IOException {
        lines = new CsvLines(text);
    }

    /** The text of a book; reading it gives an equal one. */
    public static String of(PriceBook book) {
        try {
            PriceBookText text = new PriceBookText();
            text.head(book);
            // A column that few books need stands only where one of the items has it.
            boolean ending = book.getItems().stream().anyMatch(item -> item.getHoldsUntil() != null);
            text.lines.write(Arrays.stream(BookColumn.values())
                    .filter(column -> ending || column != BookColumn.HOLDS_UNTIL)
                    .map(BookColumn::key)
                    .toList());
            for (PriceItem item : book.getItems()) {
                List<@Nullable Object> cells = cells(item);
                text.lines.write(cells.subList(0, ending ? cells.size() : cells.size() - 1));
            }
            return text.text.toString();
        } catch (IOException impossible) {
            throw new UncheckedIOException("a text does not fail", impossible);
        }
    }

    private void head(PriceBook book) throws IOException {
        line("title", book.getTitle());
        line("currency", book.getCurrency());
        line("date", book.getDate());
        line("note", book.getNote());
        line("labour-rate", plain(book.getLabourRate()));
        line("labour-cost", plain(book.getLabourCost()));
        line("labour-tax-class", book.getLabourTaxClass());
        line("minimum-minutes", book.getMinimumMinutes());
        line("valid-days", book.getValidDays());
        line("energy-price", plain(book.getEnergyPrice()));
        line("contingency", book.getContingency());
        line("rounding", book.getRounding());
        line("markup", book.getMarkup());
        for (var rate : book.getTaxRates()) {
            line("tax-rate", rate.getTaxClass(), rate.getRate(), rate.getFrom(), rate.getUntil(), rate.getLabel());
        }
        for (var payment : book.getPayments()) {
            line("payment", payment.getTitle(), payment.getShare());
        }
        for (String term : book.getTerms()) {
            line("term", term);
        }
        for (String exclusion : book.getExclusions()) {
            line("exclusion", exclusion);
        }
        for (LocalText text : book.getTranslations()) {
            line("translation", text.getLanguage(), text.getOriginal(), text.getText());
        }
    }

    private void line(String key, @Nullable Object first, @Nullable Object... more) throws IOException {
        if (first != null) {
            List<@Nullable Object> cells = new ArrayList<>(Arrays.asList(more));
            cells.add(0, "# " + key + ": " + first);
            lines.write(cells);
        }
    }

    private static List<@Nullable Object> cells(PriceItem item) {
        return Arrays.asList(
                item.getCode(),
                item.getDescription(),
                item.getUnit(),
                item.getCost(),
                item.getPrice(),
                item.getMarkup(),
                item.getMargin(),
                item.getTaxClass(),
                item.getSupplier(),
                item.getDate(),
                item.getMinutes(),
                item.getWholeLength(),
                item.getWaste(),
                item.getLeadDays(),
                item.getHoldsUntil());
    }

    private static @Nullable String plain(@Nullable BigDecimal number) {
        return number == null ? null : number.toPlainString();
    }
}
