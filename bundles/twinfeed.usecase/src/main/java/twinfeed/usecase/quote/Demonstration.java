// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.survey.Survey;

/**
 * What is only for trying the program out. A price book is if its title says "(invented)", a survey if the name of its customer does: so
 * both say it wherever they are printed, and a copy that somebody fills with a house of their own stops being one as soon as the
 * customer is entered.
 */
public final class Demonstration {
    /** What the title of the book, or the name of the customer, says. */
    public static final String SIGN = "(invented)";

    private Demonstration() {}

    /** Whether the prices of a book are invented. */
    public static boolean prices(PriceBook book) {
        return invented(book.getTitle());
    }

    /** Whether a survey is of an invented customer's house. */
    public static boolean survey(@Nullable Survey survey) {
        return survey != null
                && survey.getCustomer() != null
                && invented(survey.getCustomer().getName());
    }

    private static boolean invented(@Nullable String text) {
        return text != null && text.toLowerCase(Locale.ROOT).contains(SIGN);
    }
}
