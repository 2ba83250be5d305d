// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.sheet;

import org.jspecify.annotations.Nullable;
import twinfeed.document.CurrencyFormat;
import twinfeed.document.DocumentTexts;

/** Number formats of a workbook's cells. The spreadsheet program shows separators in its user's own style. */
public final class NumberFormats {
    public static final String PERCENT = "0.##%";
    public static final String QUANTITY = "0.###";
    public static final String WHOLE_PERCENT = "0%";

    private final String money;
    private final String date;
    private final int decimals;

    /**
     * Formats of a language and a currency.
     *
     * @param currency code by ISO 4217; unset means amounts without a sign
     */
    public NumberFormats(DocumentTexts words, @Nullable String currency) {
        CurrencyFormat coin = CurrencyFormat.of(currency, words);
        decimals = coin.decimals();
        String sign = coin.sign();
        String digits = decimals == 0 ? "#,##0" : "#,##0." + "0".repeat(decimals);
        // Quoted, so that no letter of a currency's code is taken for a code of a format.
        money = words.get("money.pattern")
                .replace("{sign}", sign.isEmpty() ? "" : "\"" + sign.replace("\"", "") + "\"")
                .replace("{digits}", digits);
        date = words.get("date.pattern");
    }

    /** Amounts of money. */
    public String money() {
        return money;
    }

    /** Decimals of an amount. */
    public int decimals() {
        return decimals;
    }

    /** Days. */
    public String date() {
        return date;
    }

    /** One format for a column of figures: that of the largest. */
    public static String ofAll(java.util.List<Double> values) {
        return of(values.stream().mapToDouble(Math::abs).max().orElse(0));
    }

    /** As many decimals as the number has, up to nine: for values put in, which are shown as they are. */
    public static String exact(double value) {
        double size = Math.abs(value);
        if (size != 0 && (size < 1e-4 || size >= 1e9)) {
            return "0.########E+00";
        }
        int decimals = Math.max(
                0, java.math.BigDecimal.valueOf(value).stripTrailingZeros().scale());
        return decimals == 0 ? "0" : "0." + "0".repeat(Math.min(9, decimals));
    }

    /** Four significant digits, as far as a fixed number of decimals can give them. */
    public static String of(double value) {
        double size = Math.abs(value);
        if (size == 0 || (size >= 1000 && size < 1e7)) {
            return "0";
        }
        if (size < 1e-4 || size >= 1e7) {
            return "0.000E+00";
        }
        int decimals = 3 - (int) Math.floor(Math.log10(size));
        return "0." + "0".repeat(Math.max(1, Math.min(7, decimals)));
    }
}
