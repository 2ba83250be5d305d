// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.texts;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.joda.money.BigMoney;
import twinfeed.units.text.NumberText;
import twinfeed.units.text.Texts;

/** Numbers, amounts and days as a reader of the language writes them, without grouping: a group mark is a decimal mark elsewhere. */
public final class FigureText {
    private static final Texts MESSAGES = new Texts(FigureText.class, "messages");

    private final NumberText numbers;
    private final DateTimeFormatter day;
    private final String percent;

    /** Figures of a language. Of no language the English ones. */
    public FigureText(Locale locale) {
        Locale reader = locale.getLanguage().isEmpty() ? Locale.ENGLISH : locale;
        numbers = new NumberText(reader);
        percent = MESSAGES.inOrder(reader, "percent.sign");
        day = DateTimeFormatter.ofPattern(MESSAGES.inOrder(reader, "day.pattern"), reader);
    }

    /** A number without trailing zeros. */
    public String number(BigDecimal value) {
        return numbers.pointed(value.stripTrailingZeros());
    }

    /** A share of one as a percentage. */
    public String percent(BigDecimal share) {
        return number(share.movePointRight(2)) + percent;
    }

    /** An amount with the code of its currency; its zeros stay. */
    public String amount(BigMoney money) {
        return numbers.pointed(money.getAmount()) + " "
                + money.getCurrencyUnit().getCode();
    }

    /** A day in words. */
    public String day(LocalDate date) {
        return day.format(date);
    }
}
