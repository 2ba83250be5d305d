// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.util.Currency;
import org.jspecify.annotations.Nullable;

/**
 * How amounts of a currency are written.
 *
 * @param sign its sign; its code and a space where the language has no sign for it; empty without a currency
 * @param decimals decimals of an amount
 */
public record CurrencyFormat(String sign, int decimals) {
    private static final int USUAL_DECIMALS = 2;

    /**
     * Of a currency.
     *
     * @param code code by ISO 4217; absent means amounts without a sign
     * @param words texts of the language
     */
    public static CurrencyFormat of(@Nullable String code, DocumentTexts words) {
        if (code == null) {
            return new CurrencyFormat("", USUAL_DECIMALS);
        }
        String symbol = words.find("currency." + code);
        return new CurrencyFormat(symbol == null ? code + " " : symbol, decimals(code));
    }

    private static int decimals(String code) {
        try {
            return Math.max(0, Currency.getInstance(code).getDefaultFractionDigits());
        } catch (IllegalArgumentException unknown) {
            return USUAL_DECIMALS;
        }
    }
}
