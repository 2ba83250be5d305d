// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.io.InputException;
import twinfeed.usecase.refusal.Refusals;

/** Whether a file may be written at a place that a person named: a slip of the keyboard must not cost a survey or a price book. */
public final class OutputCheck {
    private OutputCheck() {}

    /**
     * Refuses a place.
     *
     * @param out the place
     * @param ending how names of its kind end, with the dot
     * @param inputs files that were read
     * @throws InputException if it is one of the inputs, by whatever name or link, or no regular file, or write-protected, or it, or
     *     what a link there leads to, has another ending
     */
    public static void check(Path out, String ending, Collection<Path> inputs) {
        check(out, List.of(ending), inputs);
    }

    /**
     * The same for a file that may be of several kinds; a link must lead to one of the kind that its own name says.
     *
     * @param endings how names of each kind end, with the dot
     */
    public static void check(Path out, List<String> endings, Collection<Path> inputs) {
        for (Path input : inputs) {
            if (same(out, input)) {
                throw new InputException(Refusals.ofFile(out, "out.input", input));
            }
        }
        String ending = ending(out, out, endings);
        AtomicFile.checkPlace(out);
        if (Files.exists(out)) {
            ending(out, real(out), List.of(ending));
        }
    }

    /** The one of some endings that a name has. */
    private static String ending(Path out, Path named, List<String> endings) {
        String name = named.toString().toLowerCase(Locale.ROOT);
        return endings.stream().filter(name::endsWith).findFirst().orElseThrow(() -> {
            String which = endings.size() == 1
                    ? Refusals.text("out.ending", endings.get(0))
                    : Refusals.text("out.endings", String.join(", ", endings));
            return new InputException(
                    named.equals(out)
                            ? Refusals.ofFile(out, "out.name", which)
                            : Refusals.ofFile(out, "out.link", named, which));
        });
    }

    /** By the name as it was given, and without its steps up: files are written by that one, even where a folder in it is not there. */
    private static boolean same(Path out, Path input) {
        return sameFile(out, input) || sameFile(out.toAbsolutePath().normalize(), input);
    }

    private static boolean sameFile(Path out, Path input) {
        try {
            return Files.exists(out) && Files.exists(input) && Files.isSameFile(out, input);
        } catch (IOException unknown) {
            return out.toAbsolutePath()
                    .normalize()
                    .equals(input.toAbsolutePath().normalize());
        }
    }

    private static Path real(Path out) {
        try {
            return out.toRealPath();
        } catch (IOException unreadable) {
            return out;
        }
    }
}
