// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.util.Locale;
import java.util.Optional;

/** The columns of a price book. A file may have them in any order. */
public enum BookColumn {
    /** Item code, unique without regard to case: letters, digits, points, hyphens and underscores, at most 60. */
    CODE("code", true),
    /** What a customer reads. */
    DESCRIPTION("description", true),
    /** Unit of sale, for example each, m or h; of an item sold by the {@code visit} a job needs one, whoever asks for it. */
    UNIT("unit", true),
    /** Cost to the firm without tax, 0 or more, up to 4 decimals. */
    COST("cost", false),
    /** Selling price without tax, 0 or more, up to 4 decimals. */
    PRICE("price", true),
    /** Markup on cost, 0 to 10: price = cost (1 + markup). */
    MARKUP("markup", false),
    /** Share of the selling price that is not cost, 0 to below 1: price = cost / (1 - margin). */
    MARGIN("margin", false),
    /** One of the tax classes. */
    TAX_CLASS("tax-class", true),
    /** Who supplies it. */
    SUPPLIER("supplier", false),
    /** Date of the price, YYYY-MM-DD; blank means the date of the book. */
    DATE("date", false),
    /** Labour for one unit in minutes, 0 or more, up to 4 decimals. */
    MINUTES("minutes", false),
    /** Length sold at a time, in the unit, more than 0. */
    WHOLE_LENGTH("whole-length", false),
    /** Share added for waste, 0 to 1. */
    WASTE("waste", false),
    /** Whole days until it is there, 0 or more. */
    LEAD_DAYS("lead-days", false),
    /** Last day on which the price holds, YYYY-MM-DD; after it the item is on enquiry. Blank means until further notice. */
    HOLDS_UNTIL("holds-until", false);

    private final String key;
    private final boolean required;

    BookColumn(String key, boolean required) {
        this.key = key;
        this.required = required;
    }

    /** Its name in the header row. */
    public String key() {
        return key;
    }

    /** Whether a file must have this column; its cells may still be blank where the item allows it. */
    public boolean required() {
        return required;
    }

    /** The column of a header cell, without regard to case and with spaces or underscores for hyphens. */
    public static Optional<BookColumn> of(String header) {
        String name = header.strip().toLowerCase(Locale.ROOT).replaceAll("[ _]+", "-");
        for (BookColumn column : values()) {
            if (column.key.equals(name)) {
                return Optional.of(column);
            }
        }
        return Optional.empty();
    }
}
