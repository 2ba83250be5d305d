// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.math.BigDecimal;
import java.util.List;
import org.joda.money.Money;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Confidence;

/** Tax to the penny, in both policies. */
class TaxRoundingTest {
    /**
     * The United Kingdom's VAT guide (Notice 700, 17.5.1, from memory): worked out line by line, tax may be rounded to the nearest
     * penny; 86.76p becomes 87p. 433.80 pence at 20 % are 86.76.
     */
    @Test
    void roundsTheTaxAuthoritysExample() {
        assertEquals(Money.parse("GBP 0.87"), Rounding.share(Money.parse("GBP 4.34"), new BigDecimal("0.20")));
        QuoteLine line = onlyLine("4.338", "1", "line");
        // The net is printed first, 4.34; its tax is 0.868.
        assertEquals(new BigDecimal("4.34"), line.getNet());
        assertEquals(new BigDecimal("0.87"), line.getTax());
    }

    /** Handworked: half pennies go up, away from zero, as ROUND of a spreadsheet does. */
    @ParameterizedTest
    @CsvSource({
        "0.12,0.20,0.02",
        "0.13,0.20,0.03",
        "0.125,0.20,0.03",
        "2.50,0.05,0.13",
        "2.49,0.05,0.12",
        "-2.50,0.05,-0.13",
        "0.02,0.20,0.00",
        "0.03,0.20,0.01",
        "99.99,0.20,20.00",
        "1.10,0.05,0.06"
    })
    void roundsHalvesUp(String net, String rate, String tax) {
        Money amount = Money.of(org.joda.money.CurrencyUnit.GBP, new BigDecimal(net), java.math.RoundingMode.HALF_UP);
        assertEquals(
                new BigDecimal(tax),
                Rounding.share(amount, new BigDecimal(rate)).getAmount());
    }

    /**
     * Three lines of 0.12: by line 0.024 each, rounded 0.02, together 0.06; on the sum 0.36 the tax is 0.072, rounded 0.07. The
     * two policies differ, and each total is the sum of what its quote prints.
     */
    @Test
    void tellsTheTwoPoliciesApart() {
        QuoteOption byLine = option("0.12", "1", "line", 3);
        assertEquals(new BigDecimal("0.06"), byLine.getTax());
        assertEquals(new BigDecimal("0.42"), byLine.getTotal());
        QuoteOption bySum = option("0.12", "1", "total-by-rate", 3);
        assertEquals(new BigDecimal("0.07"), bySum.getTax());
        assertEquals(new BigDecimal("0.43"), bySum.getTotal());
        assertNull(bySum.getSections().get(0).getLines().get(0).getTax());
    }

    private static QuoteLine onlyLine(String price, String quantity, String rounding) {
        return option(price, quantity, rounding, 1)
                .getSections()
                .get(0)
                .getLines()
                .get(0);
    }

    /** An option whose only priced lines are some items of this price. */
    static QuoteOption option(String price, String quantity, String rounding, int lines) {
        PriceBook book = DemoBook.read();
        book.setRounding(rounding);
        book.setLabourRate(BigDecimal.ZERO);
        List<String> standard = List.of("certificate", "travel");
        book.getItems().stream()
                .filter(item -> standard.contains(item.getCode()))
                .forEach(item -> item.setPrice(BigDecimal.ZERO));
        List<String> codes = List.of("breaker-32", "breaker-40", "breaker-45").subList(0, lines);
        book.getItems().stream()
                .filter(item -> codes.contains(item.getCode()))
                .forEach(item -> item.setPrice(new BigDecimal(price)));
        Assessment assessment = AssessmentFactory.eINSTANCE.createAssessment();
        var present = Samples.option("h85", "Present", 8.5, Verdict.SUITS_WITH_WORK);
        present.setPresent(true);
        assessment.getOptions().add(present);
        codes.forEach(code -> present.getRemedies().add(Samples.remedy(code, code, code, quantity)));
        QuoteRequest request = QuoteRequest.of(Samples.survey(Confidence.SEEN), assessment, book, DemoBook.DAY)
                .choosing(List.of(QuoteRequest.PRESENT));
        return QuoteBuilder.draft(request).getOptions().get(0);
    }
}
