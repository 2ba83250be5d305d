// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import twinfeed.model.quote.Quote;
import twinfeed.model.survey.Confidence;

class QuoteBuilderTest {
    @Test
    void smoke() {
        QuoteRequest request = QuoteRequest.of(
                Samples.survey(Confidence.CONCEALED), Samples.assessment(), DemoBook.read(), DemoBook.DAY);
        Quote quote = QuoteBuilder.draft(request);
        quote.getOptions().forEach(o -> {
            System.out.println(o.getTitle() + " | " + o.getText());
            o.getSections().forEach(s -> s.getLines()
                    .forEach(l -> System.out.println("  " + s.getTitle() + " | " + l.getCode() + " | "
                            + l.getDescription() + " | " + l.getQuantity() + " " + l.getUnit() + " x "
                            + l.getUnitPrice() + " = " + l.getNet() + " tax " + l.getTax() + " cost " + l.getCost()
                            + " | " + l.getSource() + " | " + l.getReason() + " | " + l.getNote())));
            System.out.println("  " + o.getNet() + " " + o.getTax() + " " + o.getTotal() + " "
                    + o.getPayments().stream()
                            .map(p -> p.getTitle() + p.getAmount())
                            .toList() + o.getEnquiries());
        });
        System.out.println(quote.getSummary() + "\n" + quote.getAssumptions() + "\n" + quote.getExclusions() + "\n"
                + quote.getTerms() + "\n" + quote.getCautions());
        assertEquals(2, quote.getOptions().size());
        RemedyPrices prices = RemedyPrices.withReplacement(DemoBook.read(), DemoBook.DAY);
        System.out.println(prices.price(Need.of(Samples.newCable())));
        assertEquals(List.of("nope"), prices.price(List.of(Need.of("nope", 1))).missing());
    }
}
