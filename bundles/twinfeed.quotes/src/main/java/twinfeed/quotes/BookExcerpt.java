// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.util.HashSet;
import java.util.Set;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.RemedyItem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;

/** The part of a price book that a quote rests on. */
final class BookExcerpt {
    private BookExcerpt() {}

    /** The head, the items whose codes stand in lines or remedies, and the rates of the tax classes that were used. */
    static PriceBook of(PriceBook book, Quote quote, Assessment assessment) {
        Set<String> codes = new HashSet<>();
        Set<String> classes = new HashSet<>();
        quote.eAllContents().forEachRemaining(object -> {
            if (object instanceof QuoteLine line) {
                codes.add(line.getCode());
                classes.add(line.getTaxClass());
            }
        });
        assessment.eAllContents().forEachRemaining(object -> {
            if (object instanceof RemedyItem item) {
                codes.add(item.getCode());
            }
        });
        PriceBook excerpt = EcoreUtil.copy(book);
        excerpt.getItems().removeIf(item -> !codes.contains(item.getCode()));
        excerpt.getTaxRates().removeIf(rate -> !classes.contains(rate.getTaxClass()));
        return excerpt;
    }
}
