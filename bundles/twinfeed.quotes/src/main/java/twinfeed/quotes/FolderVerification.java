// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import twinfeed.model.io.InputException;

/**
 * What was found where the quotes of an office were looked at.
 *
 * @param quotes each quote, by number and revision
 * @param missing numbers, revisions and photographs that are not there
 */
public record FolderVerification(List<Checked> quotes, List<Missing> missing) {
    /**
     * A quote that was looked at.
     *
     * @param file its file
     * @param opened the quote; absent if it cannot be read
     * @param problem why it cannot be read; empty if it can
     */
    public record Checked(Path file, @Nullable OpenedQuote opened, String problem) {
        /** Whether it is as it was issued. */
        public boolean sound() {
            return opened != null && opened.verification() == Verification.UNCHANGED;
        }
    }

    /** What is missing. */
    public enum Kind {
        /** A number that was taken, and no quote bears it: its writing was stopped, or it was removed. */
        QUOTE,
        /** A number below the largest that nobody seems to have taken: both its files were removed. */
        NUMBER,
        /** A revision below the latest one. */
        REVISION,
        /** A photograph of a quote, missing or not as it was issued. */
        PHOTOGRAPH
    }

    /**
     * A quote that is not there.
     *
     * @param name its number, of a revision with that: {@code 2026-0042} or {@code 2026-0042-r1}; of a photograph with its name too
     * @param kind what is missing
     */
    public record Missing(String name, Kind kind) {}

    /** An office that misses more has another trouble. */
    private static final int MOST_MISSING = 1000;

    public FolderVerification {
        quotes = List.copyOf(quotes);
        missing = List.copyOf(missing);
    }

    /** Whether every quote is as it was issued and none is missing. */
    public boolean sound() {
        return missing.isEmpty() && quotes.stream().allMatch(Checked::sound);
    }

    static FolderVerification of(List<Path> files, SortedSet<QuoteNumber> taken, QuotePhotos photos) {
        List<Checked> checked = files.stream().map(FolderVerification::check).toList();
        Map<QuoteNumber, SortedSet<Integer>> revisions = new TreeMap<>();
        for (Path file : files) {
            revisions
                    .computeIfAbsent(QuoteFolder.number(file), number -> new TreeSet<>())
                    .add(QuoteFolder.revision(file));
        }
        List<Missing> missing = new ArrayList<>();
        for (Map.Entry<Integer, Integer> year :
                largest(taken, revisions.keySet()).entrySet()) {
            for (int count = 1; count <= year.getValue() && missing.size() < MOST_MISSING; count++) {
                missing(new QuoteNumber(year.getKey(), count), taken, revisions, missing);
            }
        }
        checked.forEach(each -> photographs(each.opened(), photos, missing));
        return new FolderVerification(checked, missing);
    }

    private static void photographs(@Nullable OpenedQuote opened, QuotePhotos photos, List<Missing> missing) {
        if (opened != null) {
            opened.frozen().photos().forEach((name, digest) -> {
                if (!photos.sound(digest)) {
                    missing.add(new Missing(QuoteLife.name(opened.current()) + ", " + name, Kind.PHOTOGRAPH));
                }
            });
        }
    }

    /** Looks at one file. */
    public static Checked check(Path file) {
        try {
            return new Checked(file, QuoteFolder.open(file), "");
        } catch (LifeException | InputException refused) {
            return new Checked(file, null, String.valueOf(refused.getMessage()));
        } catch (IOException unreadable) {
            return new Checked(file, null, file.getFileName() + ": " + unreadable.getMessage());
        }
    }

    private static Map<Integer, Integer> largest(Iterable<QuoteNumber> taken, Iterable<QuoteNumber> quoted) {
        Map<Integer, Integer> largest = new TreeMap<>();
        for (Iterable<QuoteNumber> numbers : List.of(taken, quoted)) {
            numbers.forEach(number -> largest.merge(number.year(), number.count(), Math::max));
        }
        return largest;
    }

    private static void missing(
            QuoteNumber number,
            SortedSet<QuoteNumber> taken,
            Map<QuoteNumber, SortedSet<Integer>> revisions,
            List<Missing> missing) {
        SortedSet<Integer> there = revisions.get(number);
        if (there == null) {
            missing.add(new Missing(number.toString(), taken.contains(number) ? Kind.QUOTE : Kind.NUMBER));
            return;
        }
        for (int revision = 1; revision < there.last(); revision++) {
            if (!there.contains(revision)) {
                missing.add(new Missing(number + "-r" + revision, Kind.REVISION));
            }
        }
    }
}
