// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.ReadingName;
import twinfeed.desktop.text.Words;
import twinfeed.model.check.JobCheck;
import twinfeed.model.check.Problem;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.Judged;
import twinfeed.usecase.Office;
import twinfeed.usecase.Opened;

/** What all open jobs share: the use cases, the price book in force, the day, the language. */
public final class Desk {
    /**
     * A price book and where it came from.
     *
     * @param file its file
     * @param book its content
     */
    public record Prices(Path file, PriceBook book) {}

    private final Office office;
    private final Supplier<LocalDate> today;
    private final Locale locale;
    private final Signal changed = new Signal();
    private final AtomicReference<@Nullable Prices> prices = new AtomicReference<>();

    /**
     * A desk without a price book.
     *
     * @param office the use cases
     * @param today the day that a draft bears
     * @param locale language and way of writing numbers
     */
    public Desk(Office office, Supplier<LocalDate> today, Locale locale) {
        this.office = office;
        this.today = today;
        this.locale = locale;
    }

    /** Fires when other prices are in force. */
    public Signal changed() {
        return changed;
    }

    /** The use cases. */
    public Office office() {
        return office;
    }

    /** Language and way of writing numbers. */
    public Locale locale() {
        return locale;
    }

    /** The day that a draft bears. */
    public LocalDate today() {
        return today.get();
    }

    /** The price book in force; null without one. */
    public @Nullable Prices prices() {
        return prices.get();
    }

    /**
     * From now on quotes use this price book.
     *
     * @throws twinfeed.model.io.InputException if it cannot be used; the one before stays in force then
     */
    public void usePrices(Path file) {
        prices.set(new Prices(file, office.book(file)));
        changed.fire();
    }

    /** The findings as the house is, quickly; see {@link #result}. */
    JobResult glance(long revision, Opened opened) {
        return attempt(revision, opened, () -> new JobResult(revision, false, office.glance(opened, locale), null, ""));
    }

    /**
     * Judges and prices a job that nobody else changes meanwhile. Never throws: whatever goes wrong behind the user interface
     * must be read there, or the window would go on showing an older answer as if it were this one.
     */
    JobResult result(long revision, Opened opened) {
        @Nullable Prices inForce = prices.get();
        return attempt(revision, opened, () -> {
            Judged judged = office.judge(opened, inForce == null ? null : inForce.book(), null, locale);
            return priced(revision, judged, inForce);
        });
    }

    private JobResult attempt(long revision, Opened opened, Supplier<JobResult> work) {
        // Without calculators nothing fails, and everything would seem to suit.
        String errors =
                office.calculators().isEmpty() ? new Words(locale).get("findings.noCalculators") : errors(opened);
        if (!errors.isEmpty()) {
            return new JobResult(revision, true, null, null, errors);
        }
        try {
            return work.get();
        } catch (RuntimeException refused) {
            return new JobResult(revision, true, null, null, reason(refused));
        }
    }

    /** What cannot be so in the survey: nothing must be computed, let alone sold, from it. */
    private String errors(Opened opened) {
        return JobCheck.of(opened.job(), opened.catalogue()).stream()
                .filter(Problem::isError)
                .map(this::error)
                .collect(Collectors.joining("\n"));
    }

    private String error(Problem problem) {
        String name = ReadingName.of(problem.path(), new Words(locale));
        String reading = problem.reading().isEmpty() ? "" : " " + problem.reading();
        return name + reading + ": " + problem.wrong() + "; " + problem.right();
    }

    private JobResult priced(long revision, Judged judged, @Nullable Prices inForce) {
        if (inForce == null) {
            return new JobResult(revision, true, judged, null, "");
        }
        try {
            Quote quote = office.quote(judged, inForce.book(), today.get());
            return new JobResult(revision, true, judged, quote, "");
        } catch (RuntimeException refused) {
            return new JobResult(revision, true, judged, null, reason(refused));
        }
    }

    private static String reason(RuntimeException refused) {
        String message = refused.getMessage();
        return message == null ? refused.toString() : message;
    }
}
