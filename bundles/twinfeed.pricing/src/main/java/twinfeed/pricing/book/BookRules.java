// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.pricing.TaxClass;

/** What holds between an item and the book as a whole. */
final class BookRules {
    private final String file;
    private final PriceBook book;
    private final List<Integer> rows;
    private final Set<Integer> faulty;

    /**
     * Rules of a book.
     *
     * @param rows the row of each item
     * @param faulty rows that are refused already: what follows from their faults is not told as well
     */
    BookRules(String file, PriceBook book, List<Integer> rows, Set<Integer> faulty) {
        this.file = file;
        this.book = book;
        this.rows = rows;
        this.faulty = faulty;
    }

    List<RowRemark> refusals() {
        List<RowRemark> refused = new ArrayList<>();
        Set<String> rated =
                book.getTaxRates().stream().map(rate -> rate.getTaxClass()).collect(Collectors.toSet());
        if (book.getItems().isEmpty()) {
            refused.add(new RowRemark(file, 0, "", "noItems", List.of()));
        }
        String labour = Objects.requireNonNullElse(book.getLabourTaxClass(), TaxClass.STANDARD.key());
        unrated(labour, 0, "labour-tax-class", rated, refused);
        for (int i = 0; i < rows.size(); i++) {
            PriceItem item = book.getItems().get(i);
            if (faulty.contains(rows.get(i))) {
                continue;
            }
            unrated(item.getTaxClass(), rows.get(i), BookColumn.TAX_CLASS.key(), rated, refused);
            if (costWithoutRule(item) && book.getMarkup() == null) {
                refused.add(new RowRemark(file, rows.get(i), BookColumn.PRICE.key(), "noRule", List.of()));
            }
        }
        return refused;
    }

    private void unrated(String taxClass, int row, String column, Set<String> rated, List<RowRemark> refused) {
        if (TaxClass.of(taxClass).map(TaxClass::rated).orElse(false) && !rated.contains(taxClass)) {
            refused.add(new RowRemark(file, row, column, "noRate", List.of(taxClass)));
        }
    }

    private static boolean costWithoutRule(PriceItem item) {
        return item.getCost() != null
                && item.getPrice() == null
                && item.getMarkup() == null
                && item.getMargin() == null;
    }

    List<RowRemark> notices() {
        List<RowRemark> notices = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            PriceItem item = book.getItems().get(i);
            BigDecimal cost = item.getCost();
            BigDecimal price = item.getPrice();
            if (price != null && cost != null && price.compareTo(cost) < 0) {
                notices.add(notice(rows.get(i), "belowCost", item));
            } else if (price == null && cost == null) {
                notices.add(notice(rows.get(i), item.getMinutes() == null ? "onEnquiry" : "labourOnly", item));
            }
        }
        return notices;
    }

    private RowRemark notice(int row, String key, PriceItem item) {
        return new RowRemark(file, row, BookColumn.PRICE.key(), key, List.of(item.getCode()));
    }
}
