// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.ProblemLines;
import twinfeed.model.pricebook.PriceBook;

/**
 * What came of reading a price book.
 *
 * @param name name of the file
 * @param accepted the book, or null if any row was refused
 * @param added codes of the items read, in order; also those of good rows of a refused book
 * @param refused every refused row, column by column
 * @param notices what is odd but taken
 */
public record ImportReport(
        String name,
        @Nullable PriceBook accepted,
        List<String> added,
        List<RowRemark> refused,
        List<RowRemark> notices) {
    public ImportReport {
        added = List.copyOf(added);
        refused = List.copyOf(refused);
        notices = List.copyOf(notices);
    }

    /** The book; none if any row was refused. */
    public Optional<PriceBook> book() {
        return Optional.ofNullable(accepted);
    }

    /**
     * The book.
     *
     * @throws PriceBookException if any row was refused
     */
    public PriceBook bookOrThrow() {
        if (accepted == null) {
            throw new PriceBookException(this);
        }
        return accepted;
    }

    /** What the book changes against an earlier one; none if it was refused. */
    public Optional<BookComparison> against(PriceBook earlier) {
        return book().map(book -> BookComparison.compare(earlier, book));
    }

    /** The refusals, one a line, as many as can be read at once. */
    public String refusals(Locale locale) {
        return ProblemLines.of(refused.stream().map(one -> one.message(locale)).toList());
    }
}
