// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.quote.Payment;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.TaxSum;
import twinfeed.model.survey.Confidence;

/** Laws of every quote, checked with decimals worked out apart from the program's own money. */
class QuoteProperties {
    private static final String SEED = "20261125";
    private static final BigDecimal ZERO = new BigDecimal("0.00");

    /** A book with other prices and classes, and an assessment with some remedies. */
    record Work(PriceBook book, List<RequiredItem> needs, Rounding rounding, BigDecimal discount) {}

    @Provide
    Arbitrary<Work> works() {
        Arbitrary<BigDecimal> prices = Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, new BigDecimal("999.9999"))
                .ofScale(4);
        Arbitrary<List<BigDecimal>> priceLists = prices.list().ofSize(60);
        Arbitrary<List<TaxClass>> classes =
                Arbitraries.of(TaxClass.values()).list().ofSize(60);
        Arbitrary<List<RequiredItem>> needs = needs();
        Arbitrary<BigDecimal> discounts = Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, BigDecimal.ONE)
                .ofScale(3);
        return Combinators.combine(priceLists, classes, needs, Arbitraries.of(Rounding.values()), discounts)
                .as((price, taxClass, need, rounding, discount) ->
                        new Work(book(price, taxClass, rounding), need, rounding, discount));
    }

    private static Arbitrary<List<RequiredItem>> needs() {
        List<String> codes =
                DemoBook.read().getItems().stream().map(PriceItem::getCode).toList();
        Arbitrary<BigDecimal> quantities = Arbitraries.bigDecimals()
                .between(BigDecimal.ZERO, new BigDecimal("40"))
                .ofScale(2);
        return Combinators.combine(Arbitraries.of(codes), quantities)
                .as(RequiredItem::new)
                .list()
                .ofMaxSize(8);
    }

    @Provide
    Arbitrary<List<List<RequiredItem>>> remedies() {
        return needs().list().ofMaxSize(5);
    }

    private static PriceBook book(List<BigDecimal> prices, List<TaxClass> classes, Rounding rounding) {
        PriceBook book = DemoBook.read();
        book.setRounding(rounding.key());
        for (int i = 0; i < Math.min(60, book.getItems().size()); i++) {
            PriceItem item = book.getItems().get(i);
            item.setTaxClass(classes.get(i).key());
            if (item.getPrice() != null) {
                item.setPrice(prices.get(i));
            }
        }
        return book;
    }

    private static Quote quote(Work work) {
        Assessment assessment = Samples.assessment();
        OptionAssessment option = assessment.getOptions().get(2);
        String[] needs = work.needs.stream()
                .flatMap(need ->
                        java.util.stream.Stream.of(need.code(), need.quantity().toPlainString()))
                .toArray(String[]::new);
        option.getRemedies().add(Samples.remedy("all", "All", needs));
        return QuoteBuilder.draft(
                QuoteRequest.of(Samples.survey(Confidence.CONCEALED), assessment, work.book, DemoBook.DAY)
                        .discounted(Discount.ofShare(work.discount, "")));
    }

    private static List<QuoteLine> lines(QuoteOption option) {
        List<QuoteLine> lines = new ArrayList<>();
        option.getSections().forEach(section -> lines.addAll(section.getLines()));
        return lines;
    }

    private static BigDecimal sum(List<BigDecimal> amounts) {
        return amounts.stream().reduce(ZERO, BigDecimal::add);
    }

    private static BigDecimal penny(BigDecimal exact) {
        return exact.setScale(2, RoundingMode.HALF_UP);
    }

    @Property(tries = 150, seed = SEED)
    void everyLineIsQuantityTimesPrice(@ForAll("works") Work work) {
        for (QuoteOption option : quote(work).getOptions()) {
            for (QuoteLine line : lines(option)) {
                assertEquals(penny(line.getQuantity().multiply(line.getUnitPrice())), line.getNet(), line.getCode());
                assertTrue(line.getUnitPrice().scale() <= 4, "printed unit price");
            }
        }
    }

    @Property(tries = 150, seed = SEED)
    void totalsAreSumsOfPrintedLines(@ForAll("works") Work work) {
        for (QuoteOption option : quote(work).getOptions()) {
            List<QuoteLine> lines = lines(option);
            assertEquals(sum(lines.stream().map(QuoteLine::getNet).toList()), option.getNet());
            assertEquals(sum(option.getTaxes().stream().map(TaxSum::getNet).toList()), option.getNet());
            assertEquals(sum(option.getTaxes().stream().map(TaxSum::getTax).toList()), option.getTax());
            assertEquals(option.getNet().add(option.getTax()), option.getTotal());
            assertEquals(
                    sum(option.getPayments().stream().map(Payment::getAmount).toList()), option.getTotal());
            assertEquals(taxByHand(lines, work.rounding), option.getTax());
        }
    }

    private static BigDecimal taxByHand(List<QuoteLine> lines, Rounding rounding) {
        if (rounding == Rounding.LINE) {
            BigDecimal tax = ZERO;
            for (QuoteLine line : lines) {
                BigDecimal own = penny(line.getNet().multiply(line.getTaxRate()));
                assertEquals(own, line.getTax());
                tax = tax.add(own);
            }
            return tax;
        }
        TreeMap<String, BigDecimal> exact = new TreeMap<>();
        for (QuoteLine line : lines) {
            assertNull(line.getTax());
            exact.merge(line.getTaxClass(), line.getNet().multiply(line.getTaxRate()), BigDecimal::add);
        }
        return sum(exact.values().stream().map(QuoteProperties::penny).toList());
    }

    /** The discount is the share of the sum before it, to the penny, however it is divided. */
    @Property(tries = 100, seed = SEED)
    void aDiscountLosesNoPenny(@ForAll("works") Work work) {
        for (QuoteOption option : quote(work).getOptions()) {
            BigDecimal before = ZERO;
            BigDecimal discount = ZERO;
            for (QuoteLine line : lines(option)) {
                if (line.getCode().equals("discount")) {
                    discount = discount.add(line.getNet());
                } else {
                    before = before.add(line.getNet());
                }
            }
            assertEquals(penny(before.multiply(work.discount)).negate(), discount);
        }
    }

    @Property(tries = 100, seed = SEED)
    void addingARemedyNeverLowersThePrice(
            @ForAll("remedies") List<List<RequiredItem>> remedies,
            @ForAll("works") Work work,
            @ForAll @IntRange(min = 0, max = 2000) int minimumMinutes) {
        work.book.setMinimumMinutes(minimumMinutes);
        RemedyPrices prices = minimumMinutes % 2 == 0
                ? RemedyPrices.withReplacement(work.book, DemoBook.DAY)
                : RemedyPrices.withoutReplacement(work.book, DemoBook.DAY);
        RemedyPrice last = prices.priceAll(List.of());
        assertTrue(last.net().isZero());
        for (int i = 1; i <= remedies.size(); i++) {
            RemedyPrice more = prices.priceAll(remedies.subList(0, i));
            assertTrue(!more.net().isLessThan(last.net()), remedies.toString());
            assertTrue(more.leadDays() >= last.leadDays());
            assertTrue(more.enquiry() || !last.enquiry());
            last = more;
        }
    }

    /** The option that needs a new cable, wherever it stands. */
    private static QuoteOption named(Quote quote) {
        return quote.getOptions().stream()
                .filter(option -> option.getName().equals("h95"))
                .findFirst()
                .orElseThrow();
    }

    /** What the search is told is what the quote charges: no contingency, no discount, the same job with and without. */
    @Property(tries = 60, seed = SEED)
    void pricesOfRemediesAreThoseOfTheQuote(@ForAll("works") Work work) {
        work.book.setContingency(null);
        Work plain = new Work(work.book, work.needs, work.rounding, BigDecimal.ZERO);
        QuoteOption with = named(quote(plain));
        Assessment assessment = Samples.assessment();
        assessment.getOptions().get(2).getRemedies().clear();
        QuoteOption without = named(QuoteBuilder.draft(
                QuoteRequest.of(Samples.survey(Confidence.SEEN), assessment, work.book, DemoBook.DAY)));
        RemedyPrice price = RemedyPrices.withReplacement(work.book, DemoBook.DAY)
                .priceAll(List.of(RequiredItem.of(Samples.newCable()), work.needs));
        boolean heaterAmongNeeds =
                work.needs.stream().anyMatch(need -> need.code().equals("h95"));
        boolean needless = work.needs.stream().anyMatch(need -> WorkRules.needless(need.code(), List.of("cable-10")))
                || work.needs.stream().anyMatch(need -> need.code().equals("extra-way"))
                || work.needs.stream().anyMatch(need -> WorkRules.needless("travel", List.of(need.code())));
        if (needless) {
            // The search counts it, so that more work never costs less; the quote does not charge it.
            BigDecimal charged = with.getNet().subtract(without.getNet());
            assertTrue(price.net().getAmount().compareTo(charged) >= 0, price.net() + " for " + charged);
        } else if (!heaterAmongNeeds) {
            assertEquals(with.getNet().subtract(without.getNet()), price.net().getAmount());
        }
    }
}
