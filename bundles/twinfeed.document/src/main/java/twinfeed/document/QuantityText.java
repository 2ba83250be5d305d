// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.QuoteLine;

/** How much of a line, as a tradesperson writes it: "8.5 m", "50 min", "5 %", "2". */
public final class QuantityText {
    private static final String CONTINGENCY = "contingency";
    private static final BigDecimal MINUTES = BigDecimal.valueOf(60);

    private static final List<DocumentTexts> LANGUAGES =
            List.of(new DocumentTexts(Locale.ENGLISH), new DocumentTexts(Locale.GERMAN));

    private final DocumentTexts words;

    /** Texts in the language of the quote. */
    public QuantityText(DocumentTexts words) {
        this.words = words;
    }

    /** The quantity with its unit; empty where the line has none. */
    public String of(QuoteLine line) {
        BigDecimal quantity = line.getQuantity();
        if (quantity == null) {
            return "";
        }
        String special = special(line, quantity);
        if (special != null) {
            return special;
        }
        String unit = line.getUnit() == null ? "" : line.getUnit();
        return is("unit.each", line) ? words.exact(quantity) : (words.exact(quantity) + " " + unit).strip();
    }

    /** The same behind a description: nothing for one of a kind, "2 ×" for several. */
    String behind(QuoteLine line) {
        BigDecimal quantity = line.getQuantity();
        if (quantity == null) {
            return "";
        }
        String special = special(line, quantity);
        if (special != null) {
            return special;
        }
        if ("m".equals(line.getUnit())) {
            return words.exact(quantity) + " m";
        }
        return quantity.compareTo(BigDecimal.ONE) == 0 ? "" : words.exact(quantity) + " ×";
    }

    private @Nullable String special(QuoteLine line, BigDecimal quantity) {
        if (CONTINGENCY.equals(line.getCode())) {
            return words.percent(quantity);
        }
        return is("unit.h", line)
                ? minutes(quantity.multiply(MINUTES)
                        .setScale(0, RoundingMode.HALF_UP)
                        .intValue())
                : null;
    }

    /** Whether a line is labour, counted in hours. */
    boolean labour(QuoteLine line) {
        return is("unit.h", line);
    }

    /** Whether a line has this unit; the quote may be in another language than its reader's. */
    private boolean is(String unit, QuoteLine line) {
        return words.get(unit).equals(line.getUnit())
                || LANGUAGES.stream().anyMatch(language -> language.get(unit).equals(line.getUnit()));
    }

    private String minutes(int minutes) {
        if (minutes < 60) {
            return minutes + " min";
        }
        String hours = minutes / 60 + " " + words.get("unit.h");
        return minutes % 60 == 0 ? hours : hours + " " + minutes % 60 + " min";
    }
}
