// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Amounts and days as paper shows them. A spreadsheet keeps them as numbers and shows them in its user's own style. */
public final class PrintFormat {
    private static final int GROUP = 3;

    private final DocumentTexts words;
    private final CurrencyFormat coin;

    /**
     * In a language and a currency.
     *
     * @param currency code by ISO 4217; absent means amounts without a sign
     */
    public PrintFormat(DocumentTexts words, @Nullable String currency) {
        this.words = words;
        this.coin = CurrencyFormat.of(currency, words);
    }

    /** An amount with its sign; absent is empty. */
    public String amount(@Nullable BigDecimal amount) {
        if (amount == null) {
            return "";
        }
        BigDecimal rounded = amount.setScale(coin.decimals(), RoundingMode.HALF_UP);
        String text = words.get(
                "money.pattern",
                Map.of("sign", coin.sign(), "digits", grouped(rounded.abs().toPlainString())));
        return rounded.signum() < 0 ? "−" + text : text;
    }

    private String grouped(String plain) {
        int point = plain.indexOf('.');
        StringBuilder whole = new StringBuilder(point < 0 ? plain : plain.substring(0, point));
        for (int at = whole.length() - GROUP; at > 0; at -= GROUP) {
            whole.insert(at, words.get("number.group"));
        }
        return point < 0 ? whole.toString() : whole + words.get("number.point") + plain.substring(point + 1);
    }

    /** A day; absent is empty. */
    public String day(@Nullable LocalDate day) {
        if (day == null) {
            return "";
        }
        Locale language = words.locale().getLanguage().isEmpty() ? Locale.ENGLISH : words.locale();
        return DateTimeFormatter.ofPattern(words.get("day.pattern"), language).format(day);
    }
}
