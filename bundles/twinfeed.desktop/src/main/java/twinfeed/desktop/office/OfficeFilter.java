// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.office;

import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.issued.IssuedRow;
import twinfeed.model.quote.QuoteState;
import twinfeed.usecase.office.NextStep.Kind;

/** Which lines of the office's list are shown. */
public enum OfficeFilter {
    /** All of them. */
    ALL("all", row -> true),
    /** What the office does next. */
    DUE("due", row -> row.next().kind().due()),
    /** Where something is missing, or a file is not as it was issued. */
    MISSING("missing", row -> switch (row.next().kind()) {
        case CHECK_FILE, CORRECT, CUSTOMER, ADDRESS, MEASURE -> true;
        default -> false;
    }),
    /** Jobs. */
    JOBS("jobs", OfficeRow::job),
    /** Quotes that wait for an answer. */
    OPEN(
            "open",
            row -> !row.job()
                    && switch (row.next().kind()) {
                        case LAPSES, FOLLOW_UP, WAIT -> true;
                        default -> false;
                    }),
    /** Quotes that were accepted. */
    ACCEPTED("accepted", row -> is(row, QuoteState.ACCEPTED)),
    /** Quotes that have lapsed or were declined. */
    LOST("lost", row -> is(row, QuoteState.DECLINED) || row.next().kind() == Kind.REVISE);

    private final String key;
    private final Predicate<OfficeRow> which;

    OfficeFilter(String key, Predicate<OfficeRow> which) {
        this.key = key;
        this.which = which;
    }

    private static boolean is(OfficeRow row, QuoteState state) {
        @Nullable IssuedRow issued = row.issued();
        return issued != null && issued.issued().quote().getState() == state;
    }

    /** End of the key of its text. */
    public String key() {
        return key;
    }

    /** Whether a line is shown. */
    public boolean accepts(OfficeRow row) {
        return which.test(row);
    }
}
