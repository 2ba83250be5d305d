// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;
import twinfeed.pricing.DemoBook;

class QuoteLifeTest {
    private static final QuoteNumber NUMBER = new QuoteNumber(2026, 42);
    private static final LocalDate DAY = DemoBook.DAY;
    private static final LocalDate LAST = LocalDate.of(2026, 12, 25);

    private final Quote draft = Issued.today().draft();
    private final Quote issued = QuoteLife.issue(draft, NUMBER);

    private static String refused(UnaryOperator<Quote> step, Quote quote) {
        return assertThrows(LifeException.class, () -> System.out.println(step.apply(quote)))
                .key();
    }

    @Test
    void issuesACopy() {
        assertEquals("2026-0042", issued.getNumber());
        assertEquals(QuoteState.ISSUED, issued.getState());
        assertNull(draft.getNumber());
        assertEquals(QuoteState.DRAFT, draft.getState());
        assertEquals("2026-0042-r1", QuoteLife.name(issued));
    }

    @Test
    void refusesToIssueTwiceOrNothing() {
        assertEquals("notADraft", refused(quote -> QuoteLife.issue(quote, NUMBER), issued));
        draft.getOptions().clear();
        assertEquals("nothingOffered", refused(quote -> QuoteLife.issue(quote, NUMBER), draft));
    }

    /** An estimate goes out only for a reason that somebody typed, and the frozen quote keeps it. */
    @Test
    void anEstimateIsIssuedForAReasonOnly() {
        draft.getOptions().forEach(option -> option.setVerdict(Verdict.CANNOT_TELL));
        assertEquals("estimateWithoutReason", refused(quote -> QuoteLife.issue(quote, NUMBER), draft));
        draft.setEstimateReason("  ");
        assertEquals("estimateWithoutReason", refused(quote -> QuoteLife.issue(quote, NUMBER), draft));
        draft.setEstimateReason("The landlord wants a figure before the loft is opened.");
        Quote estimate = QuoteLife.issue(draft, NUMBER);
        assertEquals("The landlord wants a figure before the loft is opened.", estimate.getEstimateReason());
        assertEquals("optionIsEstimate", refused(quote -> QuoteLife.accept(quote, "h95", DAY), estimate));
        draft.setEstimateReason(null);
        draft.getOptions().forEach(option -> option.setVerdict(Verdict.SUITS_WITH_WORK));
        assertNull(QuoteLife.issue(draft, NUMBER).getEstimateReason());
    }

    /** One option of several is enough: somebody answers for offering it. */
    @Test
    void anOptionThatIsNotKnownToSuitIsIssuedForAReasonOnly() {
        draft.getOptions().forEach(option -> option.setVerdict(Verdict.SUITS));
        for (Verdict open :
                List.of(Verdict.DOES_NOT_SUIT, Verdict.CANNOT_TELL, Verdict.NOT_AS_IT_IS, Verdict.NOT_CHECKED)) {
            draft.setEstimateReason(null);
            draft.getOptions().get(1).setVerdict(open);
            assertEquals(
                    "optionWithoutReason", refused(quote -> QuoteLife.issue(quote, NUMBER), draft), open.toString());
            draft.setEstimateReason("The customer insists on this heater.");
            assertEquals(
                    "The customer insists on this heater.",
                    QuoteLife.issue(draft, NUMBER).getEstimateReason());
        }
    }

    @Test
    void acceptsOneOptionUpToTheLastDay() {
        Quote accepted = QuoteLife.accept(issued, "h95", LAST);
        assertEquals(QuoteState.ACCEPTED, accepted.getState());
        assertEquals("h95", accepted.getChosen());
        assertEquals(LAST, accepted.getDecidedOn());
        assertEquals("tooLate", refused(quote -> QuoteLife.accept(quote, "h95", LAST.plusDays(1)), issued));
        assertEquals("noSuchOption", refused(quote -> QuoteLife.accept(quote, "h108", DAY), issued));
        assertEquals("beforeIssue", refused(quote -> QuoteLife.accept(quote, "h95", DAY.minusDays(1)), issued));
    }

    @Test
    void declinesLapsesAndIsSuperseded() {
        assertEquals(QuoteState.DECLINED, QuoteLife.decline(issued, DAY).getState());
        assertEquals(QuoteState.SUPERSEDED, QuoteLife.supersede(issued, DAY).getState());
        Quote lapsed = QuoteLife.lapse(issued, LAST.plusDays(40));
        assertEquals(QuoteState.LAPSED, lapsed.getState());
        assertEquals(LAST.plusDays(1), lapsed.getDecidedOn());
        assertEquals("stillHolds", refused(quote -> QuoteLife.lapse(quote, LAST), issued));
    }

    @Test
    void isIssuedUntilTheLastDayIsOver() {
        assertEquals(QuoteState.ISSUED, QuoteLife.stateOn(issued, LAST));
        assertEquals(QuoteState.LAPSED, QuoteLife.stateOn(issued, LAST.plusDays(1)));
        Quote accepted = QuoteLife.accept(issued, "h95", LAST);
        assertEquals(QuoteState.ACCEPTED, QuoteLife.stateOn(accepted, LAST.plusDays(1)));
    }

    /** Every step from every state but the one it starts from is refused. */
    @Test
    void refusesEveryOtherStep() {
        List<UnaryOperator<Quote>> steps = List.of(
                quote -> QuoteLife.accept(quote, "h95", DAY),
                quote -> QuoteLife.decline(quote, DAY),
                quote -> QuoteLife.lapse(quote, LAST.plusDays(1)),
                quote -> QuoteLife.supersede(quote, DAY));
        for (UnaryOperator<Quote> first : steps) {
            Quote decided = first.apply(issued);
            for (UnaryOperator<Quote> second : steps) {
                assertEquals("notOpen", refused(second, decided));
            }
            assertEquals("notADraft", refused(quote -> QuoteLife.issue(quote, NUMBER), decided));
        }
        for (UnaryOperator<Quote> step : steps) {
            assertEquals("notOpen", refused(step, draft));
        }
    }

    @Test
    void countsRevisions() {
        Quote second = QuoteLife.nextRevision(draft, issued);
        assertEquals(2, second.getRevision());
        assertEquals("2026-0042-r1", second.getSupersedes());
        assertEquals(QuoteState.DRAFT, second.getState());
        Quote accepted = QuoteLife.accept(issued, "h95", DAY);
        assertEquals("accepted", refused(quote -> QuoteLife.nextRevision(quote, accepted), draft));
        assertEquals("notIssued", refused(quote -> QuoteLife.nextRevision(quote, draft), draft));
        Quote earlier = Issued.on(DAY.minusDays(1)).draft();
        assertEquals("beforeIssue", refused(quote -> QuoteLife.nextRevision(quote, issued), earlier));
    }

    @Test
    void saysWhatIsWrongAndWhatWouldBeRight() {
        LifeException late = assertThrows(
                LifeException.class, () -> System.out.println(QuoteLife.accept(issued, "h95", LAST.plusDays(1))));
        assertEquals(
                "2026-0042-r1 held until 2026-12-25 and cannot be accepted on 2026-12-26; issue a new revision with"
                        + " today’s prices",
                late.getMessage());
    }
}
