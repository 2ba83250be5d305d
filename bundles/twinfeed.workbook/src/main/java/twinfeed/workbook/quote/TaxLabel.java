// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.util.Map;
import twinfeed.document.DocumentTexts;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.TaxSum;

/** What a customer reads beside the tax of one class and rate. */
final class TaxLabel {
    private TaxLabel() {}

    /** The quote's own label, otherwise the class in words. */
    static String of(QuoteOption option, LineTotals.Group group, DocumentTexts words) {
        for (TaxSum sum : option.getTaxes()) {
            if (group.taxClass().equals(sum.getTaxClass())
                    && sum.getLabel() != null
                    && (sum.getRate() == null || sum.getRate().compareTo(group.rate()) == 0)) {
                return words.get("items.tax", "label", sum.getLabel());
            }
        }
        String word = words.find("tax." + group.taxClass());
        return words.get("items.tax", Map.of("label", word == null ? group.taxClass() : word));
    }
}
