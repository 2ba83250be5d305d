// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.Locale;
import java.util.Map;
import twinfeed.units.text.Texts;

/**
 * What is wrong with a calculator or with a file that should have brought one.
 *
 * @param source the file that it came in, as a person knows it, for example {@code cupboard.jar}
 * @param kind what is wrong
 * @param detail what the sentence names beside the file: the reason, the version or the other file
 */
public record CalculatorProblem(String source, Kind kind, String detail) {
    /** What can be wrong. */
    public enum Kind {
        /** Another calculator of the same id is newer, and is used. */
        OLDER,
        /** It does not say what it is. */
        NO_DESCRIPTOR,
        /** It did not end in time. */
        TOO_SLOW,
        /** It changed the survey that it was given to read. */
        CHANGED_SURVEY,
        /** The file is no bundle. */
        NO_BUNDLE,
        /** The bundle cannot start. */
        NOT_STARTED,
        /** The bundle offers no calculator. */
        NO_CALCULATOR,
        /** Its class cannot be loaded. */
        NOT_LOADED,
        /** It is no jar, or lies in a folder of its own. */
        NO_JAR,
        /** The folder that was named is not there. */
        NO_FOLDER
    }

    /** The problem in one sentence. */
    public String text(Locale locale) {
        return Runner.TEXTS.format(locale, "problem." + Texts.key(kind), Map.of("source", source, "detail", detail));
    }
}
