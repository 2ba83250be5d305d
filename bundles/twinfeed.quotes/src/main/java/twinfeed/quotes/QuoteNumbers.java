// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.stream.Stream;
import twinfeed.model.io.AtomicFile;

/**
 * Numbers of an office, taken by creating the file {@code numbers/YEAR/COUNT} in its folder. Creating a file that must not be
 * there is atomic on local and network drives, so that two people who issue at once get two numbers, without a server or a lock
 * that could be left behind. A number once taken is never given out again, even if the quote was never written: the next one is
 * beyond the largest that is there, and gaps are not filled.
 */
public final class QuoteNumbers {
    private static final String COUNT = "[1-9]\\d{0,8}";

    private final Path folder;

    /**
     * Numbers of an office.
     *
     * @param office the office's folder; created with the first number if it is not there
     */
    public QuoteNumbers(Path office) {
        folder = office.resolve("numbers");
    }

    /**
     * Takes the next number of a year.
     *
     * @throws IOException if the folder cannot be read or written
     */
    public QuoteNumber take(int year) throws IOException {
        Path ofYear = folder.resolve(String.valueOf(new QuoteNumber(year, 1).year()));
        AtomicFile.makeFolder(ofYear);
        int count = largest(ofYear) + 1;
        while (!create(ofYear.resolve(String.valueOf(count)))) {
            count++;
        }
        return new QuoteNumber(year, count);
    }

    /**
     * Gives a number back, which the same run has just taken and no quote bears: no room was left for it, for example.
     *
     * @throws IOException if the folder cannot be written
     */
    void giveBack(QuoteNumber number) throws IOException {
        Files.deleteIfExists(file(number));
    }

    private Path file(QuoteNumber number) {
        return folder.resolve(String.valueOf(number.year())).resolve(String.valueOf(number.count()));
    }

    /**
     * All numbers that were taken, in order.
     *
     * @throws IOException if the folder cannot be read
     */
    SortedSet<QuoteNumber> taken() throws IOException {
        SortedSet<QuoteNumber> taken = new TreeSet<>();
        if (!Files.isDirectory(folder)) {
            return taken;
        }
        try (Stream<Path> years = Files.list(folder)) {
            for (Path year : years.filter(
                            one -> String.valueOf(one.getFileName()).matches("[1-9]\\d{3}"))
                    .toList()) {
                try (Stream<Path> counts = Files.list(year)) {
                    counts.map(one -> String.valueOf(one.getFileName()))
                            .filter(name -> name.matches(COUNT))
                            .forEach(name -> taken.add(new QuoteNumber(
                                    Integer.parseInt(String.valueOf(year.getFileName())), Integer.parseInt(name))));
                }
            }
        }
        return taken;
    }

    private static boolean create(Path file) throws IOException {
        try {
            AtomicFile.claim(file);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        }
    }

    private static int largest(Path ofYear) throws IOException {
        try (Stream<Path> files = Files.list(ofYear)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.matches(COUNT))
                    .mapToInt(Integer::parseInt)
                    .max()
                    .orElse(0);
        }
    }
}
