// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.units.Kind;

/**
 * A parameter of a calculator or a formula. Either a quantity of a kind or, with kind absent, one of some words.
 *
 * @param key key as typed; its help is the text {@code parameter.KEY}
 * @param kind kind of quantity, absent for words
 * @param defaultValue value in SI if it is not given; absent means that it must be given, or that the formula does without
 * @param required whether it must be given
 * @param least least allowed value, SI
 * @param most greatest allowed value, SI
 * @param words allowed words, empty for quantities and for free text
 * @param defaultWord word if it is not given
 */
public record Parameter(
        String key,
        @Nullable Kind kind,
        @Nullable Double defaultValue,
        boolean required,
        double least,
        double most,
        List<String> words,
        @Nullable String defaultWord) {
    public Parameter {
        words = List.copyOf(words);
    }

    /** A quantity that must be given. */
    public static Parameter required(String key, Kind kind, double least, double most) {
        return new Parameter(key, kind, null, true, least, most, List.of(), null);
    }

    /** A quantity with a default. */
    public static Parameter optional(String key, Kind kind, double defaultValue, double least, double most) {
        return new Parameter(key, kind, defaultValue, false, least, most, List.of(), null);
    }

    /** A quantity that may be left out. */
    public static Parameter absent(String key, Kind kind, double least, double most) {
        return new Parameter(key, kind, null, false, least, most, List.of(), null);
    }

    /** A word with a default, or free text if no words are listed. */
    public static Parameter word(String key, @Nullable String defaultValue, String... words) {
        return new Parameter(key, null, null, defaultValue == null, 0, 0, List.of(words), defaultValue);
    }
}
