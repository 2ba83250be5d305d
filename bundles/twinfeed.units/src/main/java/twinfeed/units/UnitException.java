// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.List;
import java.util.Locale;
import twinfeed.units.text.Texts;

/**
 * A reading that is not understood: which reading, of what kind, what is wrong with it, and what would be right. The
 * texts are made when they are asked for, so that refusing is cheap and the language is the reader's.
 */
public final class UnitException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private static final Texts TEXTS = new Texts(UnitException.class, "messages");
    private static final int LONGEST_SHOWN = 60;

    private final Fault fault;
    private final Kind kind;
    private final String reading;
    private final String part;
    private final char decimal;

    UnitException(Fault fault, Kind kind, String reading, String part, char decimal) {
        this.fault = fault;
        this.kind = kind;
        this.reading = reading;
        this.part = part;
        this.decimal = decimal;
    }

    /** What is wrong, as a key of the message bundle. */
    public String key() {
        return fault.key;
    }

    /** The kind of quantity that was asked for. */
    public Kind kind() {
        return kind;
    }

    /** The reading as typed, with single spaces. */
    public String reading() {
        return reading;
    }

    /** What is wrong, in the language of the program; in English: {@code "baar" is not a unit of pressure}. */
    public String wrong() {
        return wrong(Locale.getDefault(Locale.Category.DISPLAY));
    }

    /** What is wrong, in the language of the locale where there is a translation. */
    public String wrong(Locale locale) {
        return text(fault.key + ".wrong", locale);
    }

    /** What would be right, in the language of the program; in English: {@code write it in bar, kPa, ...}. */
    public String right() {
        return right(Locale.getDefault(Locale.Category.DISPLAY));
    }

    /** What would be right, in the language of the locale where there is a translation. */
    public String right(Locale locale) {
        return text(fault.key + ".right", locale);
    }

    /** Reading, what is wrong and what would be right, in the language of the program. */
    @Override
    public String getMessage() {
        return message(Locale.getDefault(Locale.Category.DISPLAY));
    }

    /** Reading, what is wrong and what would be right, in the language of the locale where there is a translation. */
    public String message(Locale locale) {
        return '"' + shortened(reading) + "\": " + wrong(locale) + "; " + right(locale);
    }

    private String text(String key, Locale locale) {
        List<String> near = kind.units().ignoringCase(part);
        return TEXTS.inOrder(
                locale,
                key,
                shortened(part),
                TEXTS.get(locale, "kind." + kind.name()),
                units(locale),
                example(),
                decimal,
                String.join(", ", near));
    }

    private String units(Locale locale) {
        String symbols = String.join(", ", kind.unitSymbols());
        return kind.mayBeBare()
                ? TEXTS.get(locale, "bare") + symbols.substring(kind.symbol().length())
                : symbols;
    }

    private String example() {
        String number = "1" + decimal + "5";
        return kind.mayBeBare() ? number : number + " " + kind.displayUnit();
    }

    private static String shortened(String text) {
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...";
    }

    /** What can be wrong with a reading. */
    enum Fault {
        EMPTY("empty"),
        TOO_LONG("tooLong"),
        NO_NUMBER("noNumber"),
        GROUPED("grouped"),
        OUT_OF_RANGE("outOfRange"),
        NO_UNIT("noUnit"),
        UNKNOWN_UNIT("unknownUnit"),
        UNCLEAR_CASE("unclearCase"),
        NO_TOLERANCE("noTolerance"),
        NEGATIVE_TOLERANCE("negativeTolerance"),
        PERCENT_OF_TEMPERATURE("percentOfTemperature"),
        BELOW_ABSOLUTE_ZERO("belowAbsoluteZero");

        final String key;

        Fault(String key) {
            this.key = key;
        }

        /** Why a spelling is no unit of the kind: nothing is like it, or only the case of its letters is wrong. */
        static Fault of(Kind kind, String spelling) {
            return kind.units().ignoringCase(spelling).isEmpty() ? UNKNOWN_UNIT : UNCLEAR_CASE;
        }
    }
}
