// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.choices;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.job.Job;
import twinfeed.model.job.JobFactory;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;

/** What is decided by hand is one value, and stands in a job as it was decided. */
final class ChoicesTest {
    private static final OwnLine TILES =
            new OwnLine("h95", "", new BigDecimal("2.5"), "Tiles", "m\u00b2", new BigDecimal("30.00"), "reduced");
    private static final OwnLine CABLE = OwnLine.ofBook("", "cable-10", new BigDecimal("3"));

    private static BigDecimal share(String share) {
        return new BigDecimal(share);
    }

    /** As a file would hold it: the job says nothing but its draft. */
    private static QuoteChoices again(QuoteChoices choices) {
        Job job = JobFactory.eINSTANCE.createJob();
        job.setQuote(ChoicesInJob.draft(choices));
        return ChoicesInJob.of(job);
    }

    @Test
    void nothingDecidedLeavesNothingInAJob() {
        assertNull(ChoicesInJob.draft(QuoteChoices.NONE));
        assertEquals(QuoteChoices.NONE, again(QuoteChoices.NONE));
        assertFalse(QuoteChoices.NONE.any());
    }

    @Test
    void everyChoiceIsReadBackAsItWasWritten() {
        for (QuoteChoices choices : List.of(
                QuoteChoices.NONE.offering(List.of("h95", "h85"), " It is stronger. "),
                QuoteChoices.NONE.adding(TILES).adding(CABLE),
                QuoteChoices.NONE.quantity("cable-10", share("4.5")).quantity("pipe-15", share("2")),
                QuoteChoices.NONE.without("pump").without("main"),
                QuoteChoices.NONE.discount(share("0.05"), null, " spring "),
                QuoteChoices.NONE.discount(null, share("20.00"), "spring"),
                QuoteChoices.NONE.offering(List.of("h95"), "").adding(TILES).discount(share("0"), null, ""))) {
            assertTrue(choices.any());
            assertEquals(choices, again(choices));
        }
    }

    @Test
    void aJobHoldsNoMoreThanWasDecided() {
        Quote draft = Objects.requireNonNull(ChoicesInJob.draft(QuoteChoices.NONE.without("pump")));
        assertEquals(List.of(), draft.getOptions());
        assertNull(draft.getSummary());
        QuoteLine line = Objects.requireNonNull(ChoicesInJob.draft(QuoteChoices.NONE.adding(CABLE)))
                .getOptions()
                .get(0)
                .getSections()
                .get(0)
                .getLines()
                .get(0);
        assertNull(line.getNote());
        assertNull(line.getDescription());
        assertNull(line.getUnit());
        assertNull(line.getTaxClass());
        assertNull(Objects.requireNonNull(ChoicesInJob.draft(QuoteChoices.NONE.adding(TILES)))
                .getOptions()
                .get(0)
                .getSections()
                .get(0)
                .getLines()
                .get(0)
                .getCode());
    }

    @Test
    void aLineUnderAHeaterOfTheFileIsForThatHeater() {
        Job job = JobFactory.eINSTANCE.createJob();
        Quote draft = QuoteFactory.eINSTANCE.createQuote();
        QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
        option.setName("h85");
        for (String key : List.of("lines", "of-a-later-version")) {
            QuoteSection section = QuoteFactory.eINSTANCE.createQuoteSection();
            section.setKey(key);
            QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
            line.setCode("cable-10");
            section.getLines().add(line);
            option.getSections().add(section);
        }
        draft.getOptions().add(option);
        job.setQuote(draft);
        QuoteChoices read = ChoicesInJob.of(job);
        assertEquals(List.of(OwnLine.ofBook("h85", "cable-10", BigDecimal.ONE)), read.lines());
        assertEquals(List.of("h85"), read.heaters());
    }

    @Test
    void aQuantityCanBeTakenBack() {
        QuoteChoices changed = QuoteChoices.NONE.quantity("cable-10", share("4.5"));
        assertEquals(Map.of("cable-10", share("4.5")), changed.quantities());
        assertEquals(QuoteChoices.NONE, changed.quantity("cable-10", null));
    }

    @Test
    void aWorkIsLeftOutOnce() {
        assertEquals(
                List.of("pump"),
                QuoteChoices.NONE.without("pump").without("pump").without());
    }

    @Test
    void aDiscountIsAShareOrAnAmount() {
        assertFalse(QuoteChoices.NONE.discounted());
        assertTrue(QuoteChoices.NONE.discount(share("1"), null, "").discounted());
        assertTrue(QuoteChoices.NONE.discount(null, share("0"), "").discounted());
        assertFalse(QuoteChoices.NONE.discount(null, null, "").discounted());
        for (@Nullable
        BigDecimal[] wrong : new @Nullable BigDecimal[][] {
            {share("0.1"), share("10")}, {share("-0.01"), null}, {share("1.01"), null}, {null, share("-0.01")}
        }) {
            assertThrows(
                    IllegalArgumentException.class, () -> QuoteChoices.NONE.discount(wrong[0], wrong[1], "spring"));
        }
    }

    @Test
    void aLineIsAnItemOfTheBookOrWordsWithAPrice() {
        assertThrows(IllegalArgumentException.class, () -> OwnLine.ofBook("", "cable-10", BigDecimal.ZERO));
        assertThrows(
                IllegalArgumentException.class, () -> new OwnLine("", "", BigDecimal.ONE, " ", "", BigDecimal.ONE, ""));
        assertThrows(IllegalArgumentException.class, () -> new OwnLine("", "", BigDecimal.ONE, "Tiles", "", null, ""));
        assertThrows(
                IllegalArgumentException.class,
                () -> new OwnLine("", "", BigDecimal.ONE, "Tiles", "", share("-0.01"), ""));
        assertNotNull(new OwnLine("", "", BigDecimal.ONE, "Made good", "", BigDecimal.ZERO, ""));
    }

    @Test
    void aLineCountsForItsHeaterOrForAll() {
        assertTrue(TILES.counts("h95"));
        assertFalse(TILES.counts("h85"));
        assertTrue(CABLE.counts("h85"));
    }

    @Test
    void withoutWorksLeftOutCostsAreAsTheyAre() {
        twinfeed.calculator.search.WorkCost.Source costs =
                works -> twinfeed.calculator.search.WorkCost.BY_COUNT.of(works);
        assertSame(costs, WorksLeftOut.of(costs, QuoteChoices.NONE));
        assertEquals(
                new WorksLeftOut(costs, List.of("pump")), WorksLeftOut.of(costs, QuoteChoices.NONE.without("pump")));
    }
}
