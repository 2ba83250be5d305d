// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.office;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.OptionalInt;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.QuoteState;
import twinfeed.usecase.quote.IssuedQuote;

/**
 * What an office does next about a job or a quote.
 *
 * @param kind what it is
 * @param on the day that it is about: the last one on which a quote holds, or the one on which it was issued or decided; null for none
 * @param count how many readings are still needed; 0 where that is not what is missing
 */
public record NextStep(Kind kind, @Nullable LocalDate on, int count) {
    /** A quote that nobody has answered for so many days is asked about; common practice. */
    public static final int FOLLOW_UP_DAYS = 7;

    /** A quote that holds for no more than so many days lapses this week. */
    public static final int LAPSES_DAYS = 7;

    /** What is to be done, the most urgent first. */
    public enum Kind {
        /** The quote's file is not as it was issued. */
        CHECK_FILE("checkFile", true),
        /** The quote lapses this week and the customer has not answered. */
        LAPSES("lapses", true),
        /** The customer has not answered for a week. */
        FOLLOW_UP("followUp", true),
        /** The customer has accepted: pack the parts, agree the visit, do the work and enter the readings. */
        DO_WORK("doWork", true),
        /** Nothing is missing: the quote can be issued. */
        ISSUE("issue", true),
        /** Something in the job cannot be so, and nothing is worked out until it is put right. */
        CORRECT("correct", false),
        /** The job names no customer. */
        CUSTOMER("customer", false),
        /** The job has no address. */
        ADDRESS("address", false),
        /** Checks wait for readings. */
        MEASURE("measure", false),
        /** The quote has lapsed: revise it or let it rest. */
        REVISE("revise", false),
        /** The customer has time to answer. */
        WAIT("wait", false),
        /** The quote says what comes next. */
        QUOTED("quoted", false),
        /** Not looked at yet. */
        UNKNOWN("unknown", false),
        /** The work is finished. */
        DONE("done", false),
        /** Nothing more. */
        NONE("none", false);

        private final String key;
        private final boolean due;

        Kind(String key, boolean due) {
            this.key = key;
            this.due = due;
        }

        /** End of the keys of its texts. */
        public String key() {
            return key;
        }

        /** Whether it is for the office to do now. */
        public boolean due() {
            return due;
        }
    }

    /**
     * What comes next for an issued quote.
     *
     * @param today the day on which that is asked
     */
    public static NextStep of(IssuedQuote quote, OfficeFolder office, LocalDate today) {
        if (!quote.unchanged()) {
            return new NextStep(Kind.CHECK_FILE, null, 0);
        }
        LocalDate until = quote.quote().getValidUntil();
        LocalDate issued = quote.quote().getDate();
        return switch (quote.stateOn(today)) {
            case ISSUED ->
                new NextStep(
                        ChronoUnit.DAYS.between(today, until) <= LAPSES_DAYS
                                ? Kind.LAPSES
                                : ChronoUnit.DAYS.between(issued, today) >= FOLLOW_UP_DAYS ? Kind.FOLLOW_UP : Kind.WAIT,
                        ChronoUnit.DAYS.between(today, until) <= LAPSES_DAYS ? until : issued,
                        0);
            case LAPSED -> new NextStep(office.revised(quote) ? Kind.NONE : Kind.REVISE, until, 0);
            case ACCEPTED ->
                done(quote, office)
                        .map(day -> new NextStep(Kind.DONE, day, 0))
                        .orElse(new NextStep(Kind.DO_WORK, quote.quote().getDecidedOn(), 0));
            case DRAFT, DECLINED, SUPERSEDED -> new NextStep(Kind.NONE, null, 0);
        };
    }

    private static Optional<LocalDate> done(IssuedQuote quote, OfficeFolder office) {
        return office.jobs().stream()
                .filter(job -> job.matches(quote))
                .map(OfficeJob::doneOn)
                .filter(day -> day != null && !day.isBefore(quote.quote().getDate()))
                .findFirst();
    }

    /**
     * What comes next for a job.
     *
     * @param readings how many readings the checks still wait for; negative if the job cannot be judged, empty if nobody has looked yet
     */
    public static NextStep of(OfficeJob job, OfficeFolder office, OptionalInt readings, LocalDate today) {
        if (job.doneOn() != null) {
            return new NextStep(Kind.DONE, job.doneOn(), 0);
        }
        Optional<IssuedQuote> quote = office.latest(job)
                .filter(each -> each.stateOn(today) != QuoteState.DECLINED && each.stateOn(today) != QuoteState.LAPSED);
        if (quote.isPresent()) {
            return new NextStep(Kind.QUOTED, quote.get().quote().getDate(), 0);
        }
        if (job.customer().isEmpty()) {
            return new NextStep(Kind.CUSTOMER, null, 0);
        }
        if (!job.addressed()) {
            return new NextStep(Kind.ADDRESS, null, 0);
        }
        if (office.latest(job).isPresent()) {
            return new NextStep(Kind.NONE, null, 0);
        }
        if (readings.isEmpty()) {
            return new NextStep(Kind.UNKNOWN, null, 0);
        }
        if (readings.getAsInt() < 0) {
            return new NextStep(Kind.CORRECT, null, 0);
        }
        return readings.getAsInt() > 0
                ? new NextStep(Kind.MEASURE, null, readings.getAsInt())
                : new NextStep(Kind.ISSUE, null, 0);
    }
}
