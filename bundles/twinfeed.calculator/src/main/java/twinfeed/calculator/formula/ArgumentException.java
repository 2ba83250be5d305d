// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import java.util.List;
import java.util.Locale;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;

/** Says which argument cannot be used, why, and what would be right. */
public final class ArgumentException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;

    /** With a message ready for a person. */
    public ArgumentException(String message) {
        super(message);
    }

    static ArgumentException unknown(String key, List<String> known) {
        return new ArgumentException("\"" + key + "\" is not known here; known are " + String.join(", ", known));
    }

    static ArgumentException missing(String key, Kind kind) {
        return new ArgumentException("\"" + key + "\" is missing; give a "
                + kind.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", for example " + key + "="
                + Quantities.format(kind, 1, 3).replace(" ", ""));
    }

    static ArgumentException missing(String key, List<String> words) {
        return new ArgumentException(
                "\"" + key + "\" is missing" + (words.isEmpty() ? "" : "; give one of " + String.join(", ", words)));
    }

    static ArgumentException unknownWord(String key, String word, List<String> words) {
        return new ArgumentException(
                key + "=" + word + ": \"" + word + "\" is not known; give one of " + String.join(", ", words));
    }

    static ArgumentException outOfRange(Parameter parameter, String typed) {
        Kind kind = parameter.kind();
        if (kind == null) {
            throw new IllegalArgumentException(parameter.key() + " has no range");
        }
        return new ArgumentException(parameter.key() + "=" + typed + " is out of range; give "
                + Quantities.format(kind, parameter.least(), 4) + " to "
                + Quantities.format(kind, parameter.most(), 4));
    }
}
