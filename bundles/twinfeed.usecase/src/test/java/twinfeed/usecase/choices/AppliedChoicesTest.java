// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.choices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.RemedyItem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.pricebook.PricebookFactory;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.pricing.Discount;
import twinfeed.pricing.QuoteRequest;
import twinfeed.pricing.RequiredItem;

/** What an estimator decides is in the request for the quote; what it was made of stays as it is. */
final class AppliedChoicesTest {
    private static final OwnLine TILES =
            new OwnLine("h95", "", new BigDecimal("2.5"), "Tiles", "m\u00b2", new BigDecimal("30.00"), "reduced");
    private static final OwnLine CABLE = OwnLine.ofBook("", "cable-10", new BigDecimal("3"));

    private final Assessment assessment = AssessmentFactory.eINSTANCE.createAssessment();
    private final PriceBook book = PricebookFactory.eINSTANCE.createPriceBook();

    AppliedChoicesTest() {
        book.setCurrency("GBP");
        option("h75", true);
        option("h85", false);
        option("h95", false);
    }

    private void option(String heater, boolean present) {
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        option.setHeaterId(heater);
        option.setPresent(present);
        Remedy remedy = AssessmentFactory.eINSTANCE.createRemedy();
        for (String code : List.of("cable-10", "pipe-15")) {
            RemedyItem item = AssessmentFactory.eINSTANCE.createRemedyItem();
            item.setCode(code);
            item.setQuantity(BigDecimal.ONE);
            remedy.getItems().add(item);
        }
        option.getRemedies().add(remedy);
        assessment.getOptions().add(option);
    }

    private AppliedChoices applied(QuoteChoices choices) {
        return new AppliedChoices(choices, assessment, book);
    }

    private QuoteRequest request(QuoteChoices choices, String... named) {
        AppliedChoices applied = applied(choices);
        return applied.apply(
                QuoteRequest.of(
                        SurveyFactory.eINSTANCE.createSurvey(),
                        applied.assessment(),
                        applied.book(),
                        LocalDate.of(2026, 11, 25)),
                List.of(named));
    }

    @Test
    void withoutChoicesNothingIsCopied() {
        assertSame(book, applied(QuoteChoices.NONE.adding(CABLE)).book());
        assertSame(assessment, applied(QuoteChoices.NONE).assessment());
        assertEquals(Map.of(), request(QuoteChoices.NONE).extras());
        assertEquals(List.of(), request(QuoteChoices.NONE).chosen());
        assertNull(request(QuoteChoices.NONE).discount());
    }

    @Test
    void aLineInOnesOwnWordsHasAnItemInACopyOfTheBook() {
        PriceBook more = applied(QuoteChoices.NONE.adding(CABLE).adding(TILES)).book();
        assertEquals(List.of(), book.getItems());
        assertEquals(1, more.getItems().size());
        PriceItem item = more.getItems().get(0);
        assertEquals("own-2", item.getCode());
        assertEquals("Tiles", item.getDescription());
        assertEquals("m\u00b2", item.getUnit());
        assertEquals(new BigDecimal("30.00"), item.getPrice());
        assertEquals("reduced", item.getTaxClass());
    }

    @Test
    void linesAreAddedToTheOptionsForWhichTheyCount() {
        assertEquals(
                Map.of(
                        QuoteRequest.PRESENT,
                        List.of(new RequiredItem("cable-10", new BigDecimal("3"))),
                        "h85",
                        List.of(new RequiredItem("cable-10", new BigDecimal("3"))),
                        "h95",
                        List.of(
                                new RequiredItem("cable-10", new BigDecimal("3")),
                                new RequiredItem("own-2", new BigDecimal("2.5")))),
                request(QuoteChoices.NONE.adding(CABLE).adding(TILES)).extras());
    }

    @Test
    void quantitiesTakeThePlaceOfThoseWorkedOut() {
        Assessment changed = applied(QuoteChoices.NONE.quantity("cable-10", new BigDecimal("7")))
                .assessment();
        for (OptionAssessment option : changed.getOptions()) {
            assertEquals(
                    List.of(new BigDecimal("7"), BigDecimal.ONE),
                    option.getRemedies().get(0).getItems().stream()
                            .map(RemedyItem::getQuantity)
                            .toList());
        }
        assertEquals(
                BigDecimal.ONE,
                assessment
                        .getOptions()
                        .get(0)
                        .getRemedies()
                        .get(0)
                        .getItems()
                        .get(0)
                        .getQuantity(),
                "the assessment is not changed");
    }

    @Test
    void heatersThatAreNotAssessedAnyMoreAreLeftOut() {
        QuoteChoices choices = QuoteChoices.NONE.offering(List.of("h95", "h999", QuoteRequest.PRESENT, "h85"), "");
        assertEquals(
                List.of("h95", QuoteRequest.PRESENT, "h85"), request(choices).chosen());
        assertEquals(List.of("h85"), request(choices, "h85").chosen(), "asked for by name");
    }

    @Test
    void anOptionIsChosenByItsHeaterAndThePresentUnitByAWord() {
        OptionAssessment option = AssessmentFactory.eINSTANCE.createOptionAssessment();
        assertEquals("", AppliedChoices.name(option));
        option.setHeaterId("h85");
        assertEquals("h85", AppliedChoices.name(option));
        option.setPresent(true);
        assertEquals(QuoteRequest.PRESENT, AppliedChoices.name(option));
    }

    @Test
    void theDiscountIsAShareOrAnAmountInTheCurrencyOfTheBook() {
        assertEquals(
                Discount.ofShare(new BigDecimal("0.05"), "spring"),
                request(QuoteChoices.NONE.discount(new BigDecimal("0.05"), null, "spring"))
                        .discount());
        Discount amount =
                Objects.requireNonNull(request(QuoteChoices.NONE.discount(null, new BigDecimal("20"), "spring"))
                        .discount());
        assertEquals("GBP 20.00", String.valueOf(amount.amount()));
        assertEquals("spring", amount.reason());
    }

    private static Quote quote(int options, @Nullable String summary) {
        Quote quote = QuoteFactory.eINSTANCE.createQuote();
        quote.setSummary(summary);
        for (int i = 0; i < options; i++) {
            quote.getOptions().add(QuoteFactory.eINSTANCE.createQuoteOption());
        }
        return quote;
    }

    private @Nullable String explained(QuoteChoices choices, Quote quote) {
        applied(choices).explain(quote);
        return quote.getSummary();
    }

    @Test
    void theReasonIsGivenWhereThereIsSomethingToChoose() {
        QuoteChoices choices = QuoteChoices.NONE.offering(List.of("h95", "h85"), "It is quieter.");
        assertEquals("Both suit. It is quieter.", explained(choices, quote(2, "Both suit.")));
        assertEquals("It is quieter.", explained(choices, quote(2, null)));
        assertEquals("It suits.", explained(choices, quote(1, "It suits.")));
        assertEquals(
                "Both suit.",
                explained(QuoteChoices.NONE.offering(List.of(), "It is quieter."), quote(2, "Both suit.")));
        assertNull(explained(QuoteChoices.NONE.offering(List.of("h95"), ""), quote(2, null)));
    }
}
