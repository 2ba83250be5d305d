// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.jspecify.annotations.Nullable;
import twinfeed.model.pricebook.LocalText;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.rows.CsvCell;

/** Writes a price book as the CSV text that {@link PriceBookCsv} reads, for example one that came from a workbook. */
public final class PriceBookText {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setRecordSeparator("\n").build();

    private final StringBuilder text = new StringBuilder();
    private final CSVPrinter printer;

    private PriceBookText() throws IOException {
        printer = new CSVPrinter(text, FORMAT);
    }

    /** The text of a book; reading it gives an equal one. */
    public static String of(PriceBook book) {
        try {
            PriceBookText text = new PriceBookText();
            text.head(book);
            // A column that few books need stands only where one of the items has it.
            boolean ending = book.getItems().stream().anyMatch(item -> item.getHoldsUntil() != null);
            text.printer.printRecord(Arrays.stream(BookColumn.values())
                    .filter(column -> ending || column != BookColumn.HOLDS_UNTIL)
                    .map(BookColumn::key));
            for (PriceItem item : book.getItems()) {
                List<Object> cells = cells(item);
                text.printer.printRecord(ending ? cells : cells.subList(0, cells.size() - 1));
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
            Stream<Object> rest = Arrays.stream(more).map(value -> value == null ? "" : CsvCell.safe(value.toString()));
            printer.printRecord(Stream.concat(Stream.of("# " + key + ": " + first), rest));
        }
    }

    private static List<Object> cells(PriceItem item) {
        return Stream.of(
                        item.getCode(),
                        item.getDescription(),
                        item.getUnit(),
                        plain(item.getCost()),
                        plain(item.getPrice()),
                        item.getMarkup(),
                        item.getMargin(),
                        item.getTaxClass(),
                        item.getSupplier(),
                        item.getDate(),
                        plain(item.getMinutes()),
                        plain(item.getWholeLength()),
                        item.getWaste(),
                        item.getLeadDays(),
                        item.getHoldsUntil())
                .map(value -> (Object) (value == null ? "" : CsvCell.safe(value.toString())))
                .toList();
    }

    private static @Nullable String plain(@Nullable BigDecimal number) {
        return number == null ? null : number.toPlainString();
    }
}
