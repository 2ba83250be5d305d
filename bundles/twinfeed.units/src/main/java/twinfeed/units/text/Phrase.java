// SPDX-License-Identifier: EPL-2.0
package twinfeed.units.text;

import java.util.Map;

/**
 * A message as an argument of another message of the same bundle: it is put into words with that message and in its language, so that
 * findings and assumptions hold no language of their own.
 *
 * @param key key of the message
 * @param arguments values that the message names; may hold phrases again
 */
public record Phrase(String key, Map<String, Object> arguments) {
    public Phrase {
        arguments = Map.copyOf(arguments);
    }

    /** A message that names no values. */
    public static Phrase of(String key) {
        return new Phrase(key, Map.of());
    }
}
