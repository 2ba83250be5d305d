// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuotePackage;

/** A quote as JSON for other programs: what the customer may see, that is without costs. */
public final class QuoteJson {
    /** Version of the form, the value of its key {@code form}. */
    public static final String FORM = "twinfeed-customer-quote-1";

    private QuoteJson() {}

    /**
     * The text, in canonical form: keys are those of the model's quote package, amounts and quantities are decimal text, dates
     * YYYY-MM-DD.
     */
    public static String forCustomer(Quote quote) {
        Map<String, @Nullable Object> tree = new LinkedHashMap<>();
        tree.put("form", FORM);
        tree.put("quote", ModelTree.of(quote, List.of(QuotePackage.Literals.QUOTE_LINE__COST)));
        return CanonicalJson.write(tree);
    }
}
