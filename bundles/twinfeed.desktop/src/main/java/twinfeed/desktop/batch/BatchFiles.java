// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.batch;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import twinfeed.desktop.text.Words;

/**
 * The files with which a list is judged, as they are typed.
 *
 * @param list the dwellings
 * @param like the job that stands for what the list does not say
 * @param book the price book
 * @param out the workbook to write
 */
public record BatchFiles(String list, String like, String book, String out) {
    private record Asked(String key, String typed, List<String> endings, boolean there) {}

    private List<Asked> asked() {
        return List.of(
                new Asked("batch.list", list, List.of(".csv", ".xlsx"), true),
                new Asked("batch.like", like, List.of(".job"), true),
                new Asked("batch.book", book, List.of(".csv", ".xlsx"), true),
                new Asked("batch.out", out, List.of(".xlsx"), false));
    }

    /** What keeps the list from being judged, in words; empty if nothing does. */
    public String problem(Words words) {
        return asked().stream()
                .map(each -> problem(each, words))
                .filter(text -> !text.isEmpty())
                .findFirst()
                .orElse("");
    }

    private static String problem(Asked asked, Words words) {
        String label = words.get(asked.key());
        if (asked.typed().isBlank()) {
            return words.format("batch.problem.none", Map.of("what", label));
        }
        Optional<Path> path = path(asked.typed());
        if (path.isEmpty() || asked.endings().stream().noneMatch(asked.typed().strip()::endsWith)) {
            return words.format(
                    "batch.problem.ending",
                    Map.of("what", label, "typed", asked.typed(), "endings", String.join(", ", asked.endings())));
        }
        if (asked.there() && !Files.isRegularFile(path.get())) {
            return words.format("batch.problem.notThere", Map.of("what", label, "typed", asked.typed()));
        }
        return "";
    }

    private static Optional<Path> path(String typed) {
        try {
            return Optional.of(Path.of(typed.strip()));
        } catch (InvalidPathException odd) {
            return Optional.empty();
        }
    }

    /** A typed path of which {@link #problem} says nothing. */
    static Path file(String typed) {
        return Path.of(typed.strip()).toAbsolutePath().normalize();
    }
}
