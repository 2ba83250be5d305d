// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;
import java.util.Optional;

/** Parsing, formatting and conversion of quantities of a given kind. */
public final class Quantities {
    private Quantities() {}

    /**
     * Reads what a file, the command line or another program says: a decimal point.
     *
     * @throws UnitException if the text is no quantity of this kind
     */
    public static Quantity parse(Kind kind, String text) {
        return parse(kind, text, Locale.ROOT);
    }

    /**
     * Reads what a person typed into a form: decimals as the locale writes them, or behind a point where the locale does
     * not group thousands with it. Group separators are refused everywhere.
     *
     * @throws UnitException if the text is no quantity of this kind
     */
    public static Quantity parse(Kind kind, String text, Locale locale) {
        return of(ReadingParser.parse(kind, text, locale));
    }

    /**
     * Of a value in SI, without a tolerance.
     *
     * @throws IllegalArgumentException if the value is not finite, or is a temperature below absolute zero
     */
    public static Quantity ofSi(Kind kind, double si) {
        return of(Reading.ofSi(kind, si));
    }

    /** The value in the trade's unit with this many significant digits and a decimal point: {@code 3.0 bar}. */
    public static String format(Kind kind, double si, int significant) {
        return format(kind, si, significant, Locale.ROOT);
    }

    /** The value in the trade's unit with this many significant digits (at least 1), by the locale. */
    public static String format(Kind kind, double si, int significant, Locale locale) {
        TradeUnit unit = unit(kind, kind.displayUnit());
        String number = ReadingText.significant(unit.fromSi(finite(si)), significant);
        return ReadingText.withUnit(NumberStyle.of(locale).fromPoint(number), unit.symbol());
    }

    /** The value in a unit of the kind with this many decimals, by the locale; the unit is written as it was given. */
    public static String format(Kind kind, double si, String unit, int decimals, Locale locale) {
        String number = ReadingText.decimals(toUnit(kind, si, unit), decimals);
        return ReadingText.withUnit(NumberStyle.of(locale).fromPoint(number), unit);
    }

    /**
     * The same where the unit says what kind it is of. "K" and "°F" do not (a temperature and a difference differ): give
     * the kind there.
     *
     * @throws IllegalArgumentException if the unit is none, or belongs to kinds that convert it differently
     */
    public static String format(double si, String unit, int decimals, Locale locale) {
        return format(kindOf(unit), si, unit, decimals, locale);
    }

    /**
     * The magnitude of an SI value in a unit of the kind.
     *
     * @throws IllegalArgumentException if the unit is none of this kind, or the value is not finite
     */
    public static double toUnit(Kind kind, double si, String unit) {
        return unit(kind, unit).fromSi(finite(si));
    }

    private static TradeUnit unit(Kind kind, String unit) {
        return kind.find(unit.isEmpty() && kind.mayBeBare() ? kind.symbol() : unit)
                .orElseThrow(() -> new UnitException(UnitException.Fault.of(kind, unit), kind, unit, unit, '.'));
    }

    private static Kind kindOf(String unit) {
        Optional<Kind> found = Optional.empty();
        for (Kind kind : Kind.values()) {
            if (!kind.understands(unit)) {
                continue;
            }
            if (found.isPresent() && !unit(found.get(), unit).convertsLike(unit(kind, unit))) {
                throw new IllegalArgumentException("\"" + unit + "\" is a unit of several kinds; name the kind");
            }
            found = found.or(() -> Optional.of(kind));
        }
        return found.orElseThrow(() -> new IllegalArgumentException("\"" + unit + "\" is no unit"));
    }

    private static double finite(double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(value + " is not finite");
        }
        return value;
    }

    private static Quantity of(Reading reading) {
        return switch (reading.kind()) {
            case PRESSURE -> new Pressure(reading);
            case FLOW -> new Flow(reading);
            case MASS_FLOW -> new MassFlow(reading);
            case LENGTH -> new Length(reading);
            case AREA -> new Area(reading);
            case TEMPERATURE -> new Temperature(reading);
            case TEMPERATURE_DIFFERENCE -> new TemperatureDifference(reading);
            case VOLTAGE -> new Voltage(reading);
            case CURRENT -> new Current(reading);
            case POWER -> new Power(reading);
            case RESISTANCE -> new Resistance(reading);
            case DURATION -> new Duration(reading);
            case VELOCITY -> new Velocity(reading);
            case ENERGY -> new Energy(reading);
            case CONCENTRATION -> new Concentration(reading);
            case LET_THROUGH -> new LetThrough(reading);
            case GRADIENT_VOLTAGE -> new VoltageGradient(reading);
            case GRADIENT_RESISTANCE -> new ResistanceGradient(reading);
            case GRADIENT_PRESSURE -> new PressureGradient(reading);
            case RATIO -> new Ratio(reading);
        };
    }
}
