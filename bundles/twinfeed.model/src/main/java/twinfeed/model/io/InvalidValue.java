// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Locale.Category;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.jspecify.annotations.Nullable;
import twinfeed.units.UnitException;

/**
 * Why a text is no value of a type.
 *
 * @param wrong what is wrong
 * @param right what would be right
 */
public record InvalidValue(String wrong, String right) {
    private static final int MOST_DIGITS = 30;

    /** Longest note. */
    private static final int LONGEST_TEXT = 100_000;

    /** Longest number, quantity, date or word of a list. */
    private static final int LONGEST_VALUE = 200;

    /** The fault of a text, or null if it can be read. */
    public static @Nullable InvalidValue of(EDataType type, String text) {
        if (isLong(type, text)) {
            return fault("value.long", String.valueOf(text.length()), String.valueOf(longest(type)));
        }
        try {
            Object value = type.getEPackage().getEFactoryInstance().createFromString(type, text);
            return value instanceof BigDecimal number ? ofDecimal(number) : null;
        } catch (RuntimeException refused) {
            return ofRefusal(type, text, refused);
        }
    }

    /** Whether a text is too long for a type, whatever it says. */
    static boolean isLong(EDataType type, String text) {
        return text.length() > longest(type);
    }

    private static int longest(EDataType type) {
        return type.getInstanceClass() == String.class ? LONGEST_TEXT : LONGEST_VALUE;
    }

    /** An exponent such as 1e999999999 is a legal number and would be written out digit by digit later. */
    private static @Nullable InvalidValue ofDecimal(BigDecimal number) {
        boolean tooLong = number.precision() > MOST_DIGITS || Math.abs((long) number.scale()) > MOST_DIGITS;
        return tooLong ? fault("value.decimal") : null;
    }

    private static InvalidValue ofRefusal(EDataType type, String text, Throwable refused) {
        for (Throwable cause = refused; cause != null; cause = cause.getCause()) {
            if (cause instanceof UnitException unit) {
                Locale locale = Locale.getDefault(Category.DISPLAY);
                return new InvalidValue(unit.wrong(locale), unit.right(locale));
            }
        }
        return type instanceof EEnum choice ? ofChoice(choice, text) : fault(keyOf(type));
    }

    private static InvalidValue ofChoice(EEnum choice, String text) {
        List<String> literals =
                choice.getELiterals().stream().map(EEnumLiteral::getLiteral).collect(Collectors.toList());
        String nearest = NearestName.of(text, literals);
        String all = String.join(", ", literals);
        return nearest.isEmpty() ? fault("value.choice", all) : fault("value.choice.near", all, nearest);
    }

    private static String keyOf(EDataType type) {
        Class<?> java = type.getInstanceClass();
        if (java == Boolean.class) {
            return "value.boolean";
        }
        if (java == LocalDate.class) {
            return "value.date";
        }
        return java == Integer.class || java == int.class ? "value.whole" : "value.decimal";
    }

    private static InvalidValue fault(String key, String... arguments) {
        return new InvalidValue(Refusal.wrong(key, arguments), Refusal.right(key, arguments));
    }
}
