// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/**
 * Numbers of an office, taken by creating the file {@code numbers/YEAR/COUNT} in its folder. Creating a file that must not be
 * there is atomic on local and network drives, so that two people who issue at once get two numbers, without a server or a lock
 * that could be left behind. A number once taken is never given out again, even if the quote was never written: the next one is
 * beyond the largest that is there, and gaps are not filled.
 */
public final class QuoteNumbers {
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
        Files.createDirectories(ofYear);
        int count = largest(ofYear) + 1;
        while (!create(ofYear.resolve(String.valueOf(count)))) {
            count++;
        }
        return new QuoteNumber(year, count);
    }

    private static boolean create(Path file) throws IOException {
        try {
            Files.createFile(file);
            return true;
        } catch (FileAlreadyExistsException taken) {
            return false;
        }
    }

    private static int largest(Path ofYear) throws IOException {
        try (Stream<Path> files = Files.list(ofYear)) {
            return files.map(file -> String.valueOf(file.getFileName()))
                    .filter(name -> name.matches("[1-9]\\d{0,8}"))
                    .mapToInt(Integer::parseInt)
                    .max()
                    .orElse(0);
        }
    }
}
