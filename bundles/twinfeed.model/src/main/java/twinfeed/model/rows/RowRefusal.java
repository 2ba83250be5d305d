// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.rows;

import twinfeed.model.io.InputException;
import twinfeed.model.io.InputProblem;
import twinfeed.units.text.Texts;

/** Why a list is not read, in the language of the program. */
final class RowRefusal {
    private static final Texts MESSAGES = new Texts(RowRefusal.class, "messages");

    private RowRefusal() {}

    /**
     * The refusal of a list.
     *
     * @param line its line, from 1; 0 for the file as a whole
     * @param key of {@code KEY.wrong} and {@code KEY.right}
     */
    static InputException of(String file, int line, String key, Object... arguments) {
        return new InputException(problem(file, line, key, arguments));
    }

    /** The same as a problem. */
    static InputProblem problem(String file, int line, String key, Object... arguments) {
        return new InputProblem(file, line, "", "", text(key + ".wrong", arguments), text(key + ".right", arguments));
    }

    private static String text(String key, Object... arguments) {
        return MESSAGES.toReader(key, arguments);
    }
}
