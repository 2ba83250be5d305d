// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.List;
import org.joda.money.Money;

/**
 * What a set of remedies adds to a quote.
 *
 * @param net material and labour without tax, contingency and discount; what is on enquiry counts as nothing in it
 * @param enquiry whether something in it can only be had on enquiry: then {@code net} is a lower bound
 * @param leadDays days until everything is there; 0 or more
 * @param missing codes that the price book lacks, in order: then {@code net} is a lower bound, and a quote would be refused
 */
public record RemedyPrice(Money net, boolean enquiry, int leadDays, List<String> missing) {
    public RemedyPrice {
        missing = List.copyOf(missing);
    }
}
