// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.data;

import org.jspecify.annotations.Nullable;
import twinfeed.units.text.Texts;

/** Why the figures of the fault-finding cannot be used, in the language of the program. */
public final class DataRefusal {
    private static final Texts MESSAGES = new Texts(DataRefusal.class, "messages");

    private DataRefusal() {}

    static String text(String key, Object... arguments) {
        return MESSAGES.toReader(key, arguments);
    }

    /**
     * The refusal.
     *
     * @param cause what the system said, for the log; null for nothing
     * @param key of the message
     * @param arguments its values in order
     */
    public static IllegalArgumentException of(@Nullable Throwable cause, String key, Object... arguments) {
        return new IllegalArgumentException(text(key, arguments), cause);
    }
}
