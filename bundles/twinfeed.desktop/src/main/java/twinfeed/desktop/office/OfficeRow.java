// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.office;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.issued.IssuedRow;
import twinfeed.desktop.text.Days;
import twinfeed.desktop.text.Words;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.usecase.office.NextStep;
import twinfeed.usecase.office.NextStep.Kind;
import twinfeed.usecase.office.OfficeFolder;
import twinfeed.usecase.office.OfficeJob;
import twinfeed.usecase.quote.IssuedQuote;

/**
 * A job or an issued quote as a line of the office's list.
 *
 * @param file its file
 * @param name the job's name, or the quote's number and revision
 * @param customer whose it is, and which dwelling
 * @param day day of the survey or of the quote; null if there is none
 * @param until last day on which the quote holds; null for a job
 * @param state where it stands
 * @param sum the largest sum with tax, by which lines are sorted; null for a job
 * @param next what is to be done next
 * @param step sign, word and colour of that
 * @param cells its texts, column by column
 * @param issued the quote; null for a job
 */
public record OfficeRow(
        Path file,
        String name,
        String customer,
        @Nullable LocalDate day,
        @Nullable LocalDate until,
        Mark state,
        @Nullable BigDecimal sum,
        NextStep next,
        Mark step,
        List<String> cells,
        @Nullable IssuedRow issued) {
    /** Column of the state. */
    public static final int STATE = 4;

    /** Column of the sum. */
    public static final int SUM = 5;

    /** Column of what is to be done next. */
    public static final int NEXT = 6;

    /** Keys of the columns' heads. */
    public static final List<String> COLUMNS = List.of(
            "issued.number",
            "issued.customer",
            "issued.date",
            "issued.until",
            "issued.state",
            "issued.total",
            "office.next");

    public OfficeRow {
        cells = List.copyOf(cells);
    }

    /** The line of an issued quote on a day. */
    public static OfficeRow of(IssuedQuote issued, OfficeFolder office, LocalDate today, Words words) {
        Quote quote = issued.quote();
        IssuedRow row = IssuedRow.of(issued, today, words);
        NextStep next = NextStep.of(issued, office, today);
        Mark step = next.kind() == Kind.CHECK_FILE ? row.file() : step(next, words);
        Optional<BigDecimal> sum = quote.getOptions().stream()
                .filter(each -> quote.getChosen() == null || quote.getChosen().equals(each.getName()))
                .map(QuoteOption::getTotal)
                .filter(java.util.Objects::nonNull)
                .max(BigDecimal::compareTo);
        List<String> cells = List.of(
                issued.name(),
                row.customer(),
                row.date(),
                row.until(),
                row.state().toString(),
                row.total(),
                text(step));
        return new OfficeRow(
                issued.file(),
                issued.name(),
                row.customer(),
                quote.getDate(),
                quote.getValidUntil(),
                row.state(),
                sum.orElse(null),
                next,
                step,
                cells,
                row);
    }

    /**
     * The line of a job on a day.
     *
     * @param readings how many readings the checks wait for; empty if that is not known yet
     */
    public static OfficeRow of(OfficeJob job, OfficeFolder office, OptionalInt readings, LocalDate today, Words words) {
        Optional<IssuedQuote> quote = office.latest(job);
        Mark state = job.doneOn() != null
                ? new Mark("\u2713", words.get("office.state.done"), Tone.GOOD)
                : quote.map(each -> new Mark("\u2192", each.name(), Tone.QUIET))
                        .orElse(new Mark("\u270E", words.get("office.state.survey"), Tone.WATER));
        NextStep next = NextStep.of(job, office, readings, today);
        Mark step = step(next, words);
        String who = Stream.of(job.customer(), job.site())
                .filter(each -> !each.isEmpty())
                .collect(java.util.stream.Collectors.joining(", "));
        List<String> cells =
                List.of(job.name(), who, Days.of(job.takenOn(), words), "", state.toString(), "", text(step));
        return new OfficeRow(job.file(), job.name(), who, job.takenOn(), null, state, null, next, step, cells, null);
    }

    private static String text(Mark mark) {
        return mark.word().isEmpty() ? "" : mark.toString();
    }

    private static Mark step(NextStep next, Words words) {
        String word = next.kind() == Kind.NONE
                ? ""
                : words.format(
                        "office.next." + next.kind().key(),
                        Map.of("on", Days.of(next.on(), words), "count", next.count()));
        return switch (next.kind()) {
            case CHECK_FILE -> new Mark("\u2717", word, Tone.BAD);
            case LAPSES, FOLLOW_UP, DO_WORK, ISSUE -> new Mark("\u25B6", word, Tone.POWER);
            case CORRECT, CUSTOMER, ADDRESS, MEASURE -> new Mark("?", word, Tone.DOUBT);
            case DONE -> new Mark("\u2713", word, Tone.GOOD);
            case WAIT, REVISE, QUOTED, UNKNOWN, NONE -> new Mark("\u2013", word, Tone.QUIET);
        };
    }

    /** Whether it is a job. */
    public boolean job() {
        return issued == null;
    }

    /** Whether each of some typed words stands somewhere in the line, capitals or not. */
    public boolean holds(String typed) {
        String all = String.join(" ", cells).toLowerCase(Locale.ROOT);
        return Stream.of(typed.strip().toLowerCase(Locale.ROOT).split("\\s+")).allMatch(all::contains);
    }

    /** Compares by a column: days and sums by their value, texts in the order of the language; what is empty comes last. */
    public int compare(OfficeRow other, int column, Words words) {
        return switch (column) {
            case 2 -> compare(day, other.day);
            case 3 -> compare(until, other.until);
            case SUM -> compare(sum, other.sum);
            case NEXT -> Integer.compare(urgency(), other.urgency());
            default ->
                java.text.Collator.getInstance(words.locale()).compare(cells.get(column), other.cells.get(column));
        };
    }

    private int urgency() {
        return next.kind().ordinal();
    }

    private static <T extends Comparable<? super T>> int compare(@Nullable T one, @Nullable T other) {
        if (one == null || other == null) {
            return one == other ? 0 : one == null ? 1 : -1;
        }
        return one.compareTo(other);
    }
}
