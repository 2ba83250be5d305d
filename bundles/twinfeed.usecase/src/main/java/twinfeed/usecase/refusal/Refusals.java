// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.refusal;

import java.util.Collection;
import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.model.io.NearestName;
import twinfeed.units.text.Texts;

/** Refusals of what a person gave: of each key the messages have what is wrong, {@code KEY.wrong}, and what would be right, {@code KEY.right}. */
public final class Refusals {
    private static final Texts TEXTS = new Texts(Refusals.class, "Refusals");

    private Refusals() {}

    /** A message in the language of the program. */
    public static String text(String key, Object... arguments) {
        return TEXTS.toReader(key, arguments);
    }

    /** What is wrong, as a clause. */
    public static String wrong(String key, Object... arguments) {
        return text(key + ".wrong", arguments);
    }

    /** What would be right, as a clause. */
    public static String right(String key, Object... arguments) {
        return text(key + ".right", arguments);
    }

    /** A problem of a file as a whole. */
    public static InputProblem ofFile(Object file, String key, Object... arguments) {
        return of(file, "", "", key, arguments);
    }

    /**
     * A problem of one place in a file.
     *
     * @param element where in it
     * @param reading what is written there; empty if that tells nothing
     */
    public static InputProblem of(Object file, String element, String reading, String key, Object... arguments) {
        return new InputProblem(file.toString(), 0, element, reading, wrong(key, arguments), right(key, arguments));
    }

    /** The refusal of a file as a whole. */
    public static InputException exception(Throwable cause, Object file, String key, Object... arguments) {
        return new InputException(ofFile(file, key, arguments), cause);
    }

    /**
     * What would be right instead of an unknown name.
     *
     * @param key of {@code KEY.near} with the nearest name that is known and all of them, and {@code KEY.all} where none is near
     */
    public static String oneOf(String key, String unknown, Collection<String> known) {
        String all = String.join(", ", known);
        String nearest = NearestName.of(unknown, known);
        return nearest.isEmpty() ? text(key + ".all", all) : text(key + ".near", nearest, all);
    }
}
