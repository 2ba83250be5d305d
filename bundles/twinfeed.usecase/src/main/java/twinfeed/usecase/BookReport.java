// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.pricing.book.BookComparison;
import twinfeed.pricing.book.ImportReport;
import twinfeed.pricing.book.PriceBookText;

/**
 * What is in a price list, and what it would change.
 *
 * @param added codes that are new; all of them where there is no book yet
 * @param changed values that differ
 * @param removed codes that would be gone
 * @param refused refused rows with their reasons, a line each; where there are any, nothing is taken
 * @param notices what is odd but would be taken, a line each
 * @param lacking codes that quotes may need and the list lacks; a work that needs one is then priced on request
 * @param text the whole list as a price book in CSV; absent where a row is refused
 */
public record BookReport(
        List<String> added,
        List<Change> changed,
        List<String> removed,
        List<String> refused,
        List<String> notices,
        List<Lack> lacking,
        @Nullable String text) {
    public BookReport {
        added = List.copyOf(added);
        changed = List.copyOf(changed);
        removed = List.copyOf(removed);
        refused = List.copyOf(refused);
        notices = List.copyOf(notices);
        lacking = List.copyOf(lacking);
    }

    /** What needs a code. */
    public enum Need {
        /** A job of any kind. */
        JOB,
        /** Work that a calculator may offer. */
        WORK,
        /** The renewal of a part of the unit that is there. */
        REPAIR
    }

    /**
     * Codes that a list lacks.
     *
     * @param need what needs them
     * @param subject title of the calculator that offers the work; empty for jobs and repairs
     * @param codes the codes
     */
    public record Lack(Need need, String subject, List<String> codes) {
        public Lack {
            codes = List.copyOf(codes);
        }
    }

    /**
     * A value that differs.
     *
     * @param code code of its item; empty for the head of the book
     * @param field which value
     * @param before what it was; empty for none
     * @param after what it would be; empty for none
     */
    public record Change(String code, String field, String before, String after) {}

    static BookReport of(ImportReport report, @Nullable PriceBook present, PriceCodes needed) {
        Optional<BookComparison> comparison = present == null ? Optional.empty() : report.against(present);
        return new BookReport(
                comparison.map(BookComparison::added).orElse(report.added()),
                comparison.map(BookComparison::changed).stream()
                        .flatMap(List::stream)
                        .map(one -> new Change(one.code(), one.field(), one.before(), one.after()))
                        .toList(),
                comparison.map(BookComparison::removed).orElse(List.of()),
                lines(report.refused().stream().map(one -> one.message(Locale.getDefault(Locale.Category.DISPLAY)))),
                lines(report.notices().stream().map(one -> one.message(Locale.getDefault(Locale.Category.DISPLAY)))),
                report.book().map(needed::lacking).orElse(List.of()),
                report.book().map(PriceBookText::of).orElse(null));
    }

    private static List<String> lines(Stream<String> lines) {
        return lines.toList();
    }
}
