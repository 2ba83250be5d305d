// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.check.Offers;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteState;

/**
 * The steps in the life of a quote: a draft is issued; an issued one is accepted, declined, lapses or is superseded by its next
 * revision; nothing else. Each step gives a copy and leaves the quote as it is.
 */
public final class QuoteLife {
    private QuoteLife() {}

    /**
     * Issues a draft as of its own date.
     *
     * @throws LifeException if it is no draft, has no option, or an option that is not known to suit and for which no reason is given
     */
    public static Quote issue(Quote draft, QuoteNumber number) {
        require(draft, QuoteState.DRAFT, "notADraft");
        if (draft.getOptions().isEmpty()) {
            throw new LifeException("nothingOffered");
        }
        String reason = draft.getEstimateReason();
        if (reason == null || reason.isBlank()) {
            requireProven(draft);
        }
        Quote issued = EcoreUtil.copy(draft);
        issued.setNumber(number.toString());
        issued.setState(QuoteState.ISSUED);
        return issued;
    }

    /** What is not known to suit goes out only for a reason that somebody typed. */
    private static void requireProven(Quote draft) {
        if (Offers.estimate(draft)) {
            throw new LifeException("estimateWithoutReason");
        }
        List<QuoteOption> unproven = Offers.unproven(draft);
        if (!unproven.isEmpty()) {
            throw new LifeException(
                    "optionWithoutReason",
                    unproven.stream().map(QuoteOption::getTitle).collect(Collectors.joining(", ")));
        }
    }

    /**
     * Accepts one option.
     *
     * @param option its name
     * @param on the day, from the date of the quote to the last day on which it holds
     * @throws LifeException if the quote is not open on that day, has no such option, or the option is only an estimate
     */
    public static Quote accept(Quote issued, String option, LocalDate on) {
        open(issued, on);
        if (on.isAfter(issued.getValidUntil())) {
            throw new LifeException("tooLate", name(issued), issued.getValidUntil(), on);
        }
        if (issued.getOptions().stream().noneMatch(one -> option.equals(one.getName()))) {
            String names =
                    issued.getOptions().stream().map(QuoteOption::getName).collect(Collectors.joining(", "));
            throw new LifeException("noSuchOption", option, names);
        }
        if (issued.getOptions().stream()
                .filter(one -> option.equals(one.getName()))
                .anyMatch(Offers::estimate)) {
            throw new LifeException("optionIsEstimate", option);
        }
        Quote accepted = decided(issued, QuoteState.ACCEPTED, on);
        accepted.setChosen(option);
        return accepted;
    }

    /**
     * Declines all options.
     *
     * @throws LifeException if the quote is not open, or the day is before its date
     */
    public static Quote decline(Quote issued, LocalDate on) {
        open(issued, on);
        return decided(issued, QuoteState.DECLINED, on);
    }

    /**
     * Takes a decision back that was recorded by mistake.
     *
     * @param on a day on or after that of the decision
     * @param reason why, not empty
     * @throws LifeException if the quote was neither accepted nor declined, the day is before that, or there is no reason
     */
    public static Quote reopen(Quote decided, LocalDate on, String reason) {
        if (decided.getState() != QuoteState.ACCEPTED && decided.getState() != QuoteState.DECLINED) {
            throw new LifeException("notDecided", state(decided));
        }
        if (on.isBefore(decided.getDecidedOn())) {
            throw new LifeException("beforeDecision", name(decided), decided.getDecidedOn(), on);
        }
        if (reason.isBlank()) {
            throw new LifeException("correctionWithoutReason");
        }
        Quote reopened = EcoreUtil.copy(decided);
        reopened.setState(QuoteState.ISSUED);
        reopened.setDecidedOn(null);
        reopened.setChosen(null);
        return reopened;
    }

    /**
     * Lets a quote lapse.
     *
     * @param on a day after the last one on which it holds
     * @throws LifeException if the quote is not open, or still holds on that day
     */
    public static Quote lapse(Quote issued, LocalDate on) {
        open(issued, on);
        if (!on.isAfter(issued.getValidUntil())) {
            throw new LifeException("stillHolds", name(issued), issued.getValidUntil(), on);
        }
        return decided(issued, QuoteState.LAPSED, issued.getValidUntil().plusDays(1));
    }

    /**
     * Marks a quote as replaced by its next revision.
     *
     * @throws LifeException if the quote is not open, or the day is before its date
     */
    public static Quote supersede(Quote issued, LocalDate on) {
        open(issued, on);
        return decided(issued, QuoteState.SUPERSEDED, on);
    }

    /**
     * Makes a draft the next revision of a quote.
     *
     * @param draft the new draft
     * @param previous the latest revision: issued, declined, lapsed or superseded
     * @throws LifeException if the previous one is a draft or accepted: what was accepted is changed by a quote of its own
     */
    public static Quote nextRevision(Quote draft, Quote previous) {
        require(draft, QuoteState.DRAFT, "notADraft");
        if (previous.getState() == QuoteState.DRAFT) {
            throw new LifeException("notIssued", state(previous));
        }
        if (previous.getState() == QuoteState.ACCEPTED) {
            throw new LifeException("accepted", name(previous));
        }
        if (draft.getDate().isBefore(previous.getDate())) {
            throw new LifeException("beforeIssue", name(previous), previous.getDate(), draft.getDate());
        }
        Quote revision = EcoreUtil.copy(draft);
        revision.setRevision(previous.getRevision() + 1);
        revision.setSupersedes(name(previous));
        return revision;
    }

    /** The state on a day: an issued quote lapses by itself when its last day is over. */
    public static QuoteState stateOn(Quote quote, LocalDate day) {
        boolean over = quote.getState() == QuoteState.ISSUED && day.isAfter(quote.getValidUntil());
        return over ? QuoteState.LAPSED : quote.getState();
    }

    /** Number and revision as they are printed: {@code 2026-0042-r1}. */
    public static String name(Quote quote) {
        return name(quote, quote.getRevision());
    }

    /** The same of a revision that the quote has or had. */
    static String name(Quote quote, int revision) {
        return quote.getNumber() + "-r" + revision;
    }

    private static Quote decided(Quote issued, QuoteState state, LocalDate on) {
        Quote decided = EcoreUtil.copy(issued);
        decided.setState(state);
        decided.setDecidedOn(on);
        return decided;
    }

    private static void open(Quote quote, LocalDate on) {
        require(quote, QuoteState.ISSUED, "notOpen");
        if (on.isBefore(quote.getDate())) {
            throw new LifeException("beforeIssue", name(quote), quote.getDate(), on);
        }
    }

    /** What is not accepted has no visit. */
    static void requireAccepted(Quote quote) {
        require(quote, QuoteState.ACCEPTED, "notAccepted");
    }

    private static void require(Quote quote, QuoteState state, String key) {
        if (quote.getState() != state) {
            throw new LifeException(key, state(quote));
        }
    }

    static String state(Quote quote) {
        return LifeException.MESSAGES.inOrder(
                java.util.Locale.getDefault(java.util.Locale.Category.DISPLAY),
                "state." + quote.getState().getLiteral());
    }
}
