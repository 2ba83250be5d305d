// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EAttribute;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Days;
import twinfeed.desktop.text.Words;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.units.Quantity;
import twinfeed.units.UnitException;

/**
 * How readings are written and read in the person's way: quantities with units and the locale's decimal separator, days in the
 * locale's order or as YYYY-MM-DD.
 */
public final class FieldFormat {
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
    private static final Pattern INNER_CAPITAL = Pattern.compile("(?<=[a-z])(?=[A-Z])");

    private final Words words;

    /** In one language. */
    public FieldFormat(Words words) {
        this.words = words;
    }

    /** A reading as text; empty if it was not taken. */
    public String show(@Nullable Object value) {
        if (value == null) {
            return "";
        }
        if (value instanceof Quantity quantity) {
            return quantity.toString(words.locale());
        }
        return value instanceof LocalDate day ? Days.of(day, words) : value.toString();
    }

    /** Several lines are kept in one text, separated by semicolons. */
    public String showLines(@Nullable Object value) {
        return value == null ? "" : value.toString().replaceAll("\\s*;\\s*", System.lineSeparator());
    }

    /** The text of several lines. */
    public static @Nullable String readLines(String typed) {
        String joined = typed.strip().replaceAll("\\s*\\R\\s*", "; ");
        return joined.isEmpty() ? null : joined;
    }

    /**
     * What was typed as a value of an attribute; null if nothing was typed. A number without a unit takes that of the field.
     *
     * @throws InvalidFieldException if it cannot be one
     */
    public @Nullable Object read(EAttribute attribute, String typed) throws InvalidFieldException {
        String text = BareNumber.withUnit(FieldUnit.of(attribute), typed);
        if (text.isEmpty()) {
            return null;
        }
        return switch (FieldForm.of(attribute)) {
            case QUANTITY -> quantity(kind(attribute), text);
            case WHOLE -> whole(text);
            case DAY -> day(text);
            default -> text;
        };
    }

    /** The kind of quantity that an attribute holds. */
    public static Kind kind(EAttribute attribute) {
        String type = attribute.getEAttributeType().getName();
        return Kind.valueOf(INNER_CAPITAL.matcher(type).replaceAll("_").toUpperCase(Locale.ROOT));
    }

    private Quantity quantity(Kind kind, String text) throws InvalidFieldException {
        try {
            return Quantities.parse(kind, text, words.locale());
        } catch (UnitException refused) {
            throw new InvalidFieldException(refused.wrong(words.locale()) + "; " + refused.right(words.locale()));
        }
    }

    private Integer whole(String text) throws InvalidFieldException {
        if (!WHOLE.matcher(text).matches()) {
            throw new InvalidFieldException(words.format("fault.whole", Map.of("typed", text)));
        }
        return Integer.valueOf(text);
    }

    private LocalDate day(String text) throws InvalidFieldException {
        return Days.typed(text, words.locale())
                .orElseThrow(() -> new InvalidFieldException(words.format(
                        "fault.day", Map.of("typed", text, "example", Days.of(LocalDate.of(2026, 10, 6), words)))));
    }
}
