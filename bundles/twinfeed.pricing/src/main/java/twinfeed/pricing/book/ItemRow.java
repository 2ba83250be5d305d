// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.math.BigDecimal;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.pricebook.PricebookFactory;
import twinfeed.pricing.TaxClass;

/** One row of items. */
final class ItemRow {
    private final CellReader cells;
    private final int row;
    private final Map<BookColumn, String> texts;

    ItemRow(CellReader cells, int row, Map<BookColumn, String> texts) {
        this.cells = cells;
        this.row = row;
        this.texts = texts;
    }

    /** The item; what is wrong with it is among the refusals. */
    PriceItem read() {
        PriceItem item = PricebookFactory.eINSTANCE.createPriceItem();
        item.setCode(code());
        item.setDescription(required(BookColumn.DESCRIPTION));
        item.setUnit(required(BookColumn.UNIT));
        item.setTaxClass(taxClass());
        item.setCost(number(BookColumn.COST));
        item.setPrice(number(BookColumn.PRICE));
        item.setMarkup(cells.ratio(row, BookColumn.MARKUP.key(), text(BookColumn.MARKUP), "10"));
        item.setMargin(cells.ratio(row, BookColumn.MARGIN.key(), text(BookColumn.MARGIN), "0.99"));
        item.setSupplier(blankIsNone(text(BookColumn.SUPPLIER)));
        item.setDate(cells.date(row, BookColumn.DATE.key(), text(BookColumn.DATE)));
        item.setMinutes(number(BookColumn.MINUTES));
        item.setWholeLength(
                cells.positive(row, BookColumn.WHOLE_LENGTH.key(), text(BookColumn.WHOLE_LENGTH), "notPositive"));
        item.setWaste(cells.ratio(row, BookColumn.WASTE.key(), text(BookColumn.WASTE), "1"));
        item.setLeadDays(cells.whole(row, BookColumn.LEAD_DAYS.key(), text(BookColumn.LEAD_DAYS)));
        item.setHoldsUntil(cells.date(row, BookColumn.HOLDS_UNTIL.key(), text(BookColumn.HOLDS_UNTIL)));
        rules();
        return item;
    }

    private String text(BookColumn column) {
        return texts.getOrDefault(column, "");
    }

    private @Nullable BigDecimal number(BookColumn column) {
        return cells.number(row, column.key(), text(column));
    }

    private static @Nullable String blankIsNone(String text) {
        return text.isEmpty() ? null : text;
    }

    private String required(BookColumn column) {
        String text = text(column);
        if (text.isEmpty()) {
            cells.refuse(row, column.key(), "blank", column.key());
        }
        return text;
    }

    private String code() {
        String code = required(BookColumn.CODE);
        if (!code.isEmpty() && !code.matches("[\\p{L}\\d._-]{1,60}")) {
            cells.refuse(row, BookColumn.CODE.key(), "codeForm", code);
        }
        return code;
    }

    private String taxClass() {
        String key = required(BookColumn.TAX_CLASS);
        if (!key.isEmpty() && TaxClass.of(key).isEmpty()) {
            cells.refuse(row, BookColumn.TAX_CLASS.key(), "notOneOf", key, String.join(", ", TaxClass.keys()));
        }
        return key;
    }

    /** Not more than one of price, markup and margin; a rule needs a cost. */
    private void rules() {
        boolean markup = !text(BookColumn.MARKUP).isEmpty();
        boolean margin = !text(BookColumn.MARGIN).isEmpty();
        boolean price = !text(BookColumn.PRICE).isEmpty();
        if ((markup && margin) || (price && (markup || margin))) {
            cells.refuse(row, BookColumn.PRICE.key(), "twoRules");
        } else if ((markup || margin) && text(BookColumn.COST).isEmpty()) {
            cells.refuse(row, BookColumn.COST.key(), "ruleWithoutCost");
        }
    }
}
