// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.Map;
import twinfeed.desktop.text.Words;
import twinfeed.document.Figures;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;

/** What an option of a quote costs with tax, in words. */
public final class OptionPrice {
    private OptionPrice() {}

    /** The total; "from" it if something is priced on enquiry; empty without a total. */
    public static String of(QuoteOption option, Quote quote, Words words) {
        String total = new Figures(words.locale()).money(option.getTotal(), quote.getCurrency());
        return option.getEnquiries().isEmpty() || total.isEmpty()
                ? total
                : words.format("option.plusEnquiry", Map.of("total", total));
    }
}
