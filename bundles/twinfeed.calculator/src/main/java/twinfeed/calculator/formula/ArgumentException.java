// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import java.util.List;
import java.util.Locale;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.units.UnitException;
import twinfeed.units.text.Texts;

/** Says which argument cannot be used, why, and what would be right, in the language of the program. */
public final class ArgumentException extends IllegalArgumentException {
    private static final long serialVersionUID = 1;
    private static final Texts MESSAGES = new Texts(ArgumentException.class, "messages");
    private static final int DIGITS = 4;

    private final String argument;
    private final String typed;
    private final String reason;

    /** With a message ready for a person, where no value that was typed is at fault. */
    public ArgumentException(String message) {
        this("", "", message);
    }

    /**
     * About a value that was typed. The message begins with both, as they are typed in a command; who asked in another way, by
     * fields of a form, names the field and takes the reason.
     *
     * @param argument key of the argument
     * @param typed its value as typed
     * @param reason what is wrong with it and what would be right, in words that follow the value
     */
    public ArgumentException(String argument, String typed, String reason) {
        super(argument.isEmpty() ? reason : argument + "=" + typed + " " + reason);
        this.argument = argument;
        this.typed = typed;
        this.reason = reason;
    }

    /**
     * A quantity beyond what is accepted.
     *
     * @param argument key of the argument
     * @param typed its value as typed
     * @param kind what kind of quantity it is
     * @param least least value in SI that is accepted
     * @param most greatest value in SI that is accepted
     */
    public static ArgumentException outOfRange(String argument, String typed, Kind kind, double least, double most) {
        return new ArgumentException(argument, typed, text("range", formatted(kind, least), formatted(kind, most)));
    }

    static ArgumentException outOfRange(Parameter parameter, String typed) {
        Kind kind = parameter.kind();
        if (kind == null) {
            throw new IllegalArgumentException(parameter.key() + " has no range");
        }
        return outOfRange(parameter.key(), typed, kind, parameter.least(), parameter.most());
    }

    static ArgumentException notUnderstood(String argument, String typed, UnitException refused) {
        ArgumentException named =
                new ArgumentException(argument, typed, text("quantity", refused.wrong(), refused.right()));
        named.initCause(refused);
        return named;
    }

    static ArgumentException unknown(String key, List<String> known) {
        return new ArgumentException(text("unknown", key, String.join(", ", known)));
    }

    static ArgumentException missing(String key, Kind kind) {
        DisplayUnit unit = DisplayUnit.of(kind);
        String example = Quantities.format(kind, unit.toSi(1), unit.symbol(), 0, Locale.ROOT);
        return new ArgumentException(text("missing.quantity", key, example.replace(" ", "")));
    }

    static ArgumentException missing(String key, List<String> words) {
        return new ArgumentException(
                words.isEmpty() ? text("missing.word", key) : text("missing.choice", key, String.join(", ", words)));
    }

    static ArgumentException unknownWord(String key, String word, List<String> words) {
        return new ArgumentException(key, word, text("word", String.join(", ", words)));
    }

    private static String text(String key, Object... arguments) {
        return MESSAGES.toReader(key, arguments);
    }

    private static String formatted(Kind kind, double si) {
        return Quantities.format(kind, si, DIGITS, Locale.getDefault(Locale.Category.DISPLAY));
    }

    /** Key of the argument at fault; empty where no value that was typed is. */
    public String argument() {
        return argument;
    }

    /** Its value as typed; empty likewise. */
    public String typed() {
        return typed;
    }

    /** What is wrong and what would be right, without the argument and its value. */
    public String reason() {
        return reason;
    }
}
