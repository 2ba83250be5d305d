// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Confidence;
import twinfeed.pricing.DemoBook;
import twinfeed.pricing.Samples;
import twinfeed.quotes.QuoteComparison.Kind;

class QuoteComparisonTest {
    private static Quote quote(Assessment assessment, PriceBook book) {
        return Issued.of(Samples.survey(Confidence.SEEN), assessment, book, DemoBook.DAY)
                .draft();
    }

    private static List<String> told(Quote before, Quote after) {
        return QuoteComparison.compare(before, after).differences().stream()
                .map(one -> String.join(
                        " ",
                        one.kind().toString(),
                        one.option(),
                        one.section(),
                        one.code(),
                        one.field(),
                        one.before(),
                        one.after()))
                .map(text -> text.replaceAll(" +", " ").strip())
                .toList();
    }

    @Test
    void findsNothingInEqualQuotes() {
        Quote quote = quote(Samples.assessment(), DemoBook.read());
        assertTrue(QuoteComparison.compare(quote, quote(Samples.assessment(), DemoBook.read()))
                .same());
        Quote issued = QuoteLife.issue(quote, new QuoteNumber(2026, 1));
        assertTrue(QuoteComparison.compare(quote, issued).same(), "number and state are no difference");
    }

    /** The unit goes from 126.00 to 130.00: 4.00 more, 0.80 more tax. */
    @Test
    void tellsAChangedPriceAndWhatFollows() {
        PriceBook dearer = DemoBook.read();
        dearer.getItems().get(0).setPrice(new BigDecimal("130.00"));
        assertEquals(
                List.of(
                        "CHANGED h75 net 286.50 290.50",
                        "CHANGED h75 tax 57.30 58.10",
                        "CHANGED h75 total 343.80 348.60",
                        "CHANGED h75 unit h75 unitPrice 126.00 130.00",
                        "CHANGED h75 unit h75 net 126.00 130.00",
                        "CHANGED h75 unit h75 tax 25.20 26.00"),
                told(quote(Samples.assessment(), DemoBook.read()), quote(Samples.assessment(), dearer)));
    }

    @Test
    void tellsAddedAndRemovedLinesOptionsAndWords() {
        Assessment after = Samples.assessment();
        after.getOptions().get(1).getRemedies().add(Samples.remedy("bond", "Bonding", "bonding-10", "1"));
        after.getOptions().remove(2);
        after.getAssumptions().get(0).setText("Winter intake measured");
        List<String> told = told(quote(Samples.assessment(), DemoBook.read()), quote(after, DemoBook.read()));
        assertTrue(told.contains(
                "ADDED h75 remedial bonding-10 Main bonding conductor 10 mm², with clamp and label: 29.00"));
        assertTrue(told.contains(
                "ADDED h75 labour bonding-10 Main bonding conductor 10 mm², with clamp and label (labour): 81.00"));
        assertTrue(told.contains("REMOVED h95 589.19"), told::toString);
        assertTrue(told.contains("ADDED assumptions Winter intake measured"));
        assertTrue(told.contains("REMOVED assumptions Winter intake taken as 5 °C (common practice)"));
        List<Kind> kinds = QuoteComparison.compare(
                        quote(Samples.assessment(), DemoBook.read()), quote(after, DemoBook.read()))
                .differences()
                .stream()
                .map(QuoteComparison.Difference::kind)
                .distinct()
                .toList();
        assertEquals(3, kinds.size());
    }
}
