// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import twinfeed.units.text.Texts;

/** The two halves of a refusal's text: what is wrong, and what would be right. */
final class Refusal {
    private static final Texts MESSAGES = new Texts(Refusal.class, "messages");

    private Refusal() {}

    static String wrong(String key, String... arguments) {
        return MESSAGES.toReader(key + ".wrong", arguments);
    }

    static String right(String key, String... arguments) {
        return MESSAGES.toReader(key + ".right", arguments);
    }

    static String text(String key, String... arguments) {
        return MESSAGES.toReader(key, (Object[]) arguments);
    }

    static InputException ofFile(String file, String key, String... arguments) {
        return new InputException(InputProblem.ofFile(file, wrong(key, arguments), right(key, arguments)));
    }

    static InputException ofFile(Throwable cause, String file, String key, String... arguments) {
        return new InputException(InputProblem.ofFile(file, wrong(key, arguments), right(key, arguments)), cause);
    }

    static InputException atLine(String file, int line, String key, String... arguments) {
        return new InputException(new InputProblem(file, line, "", "", wrong(key, arguments), right(key, arguments)));
    }
}
