// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A value of one kind, in SI, with the text that was typed and, where one was given, its tolerance.
 *
 * <p>Text forms, read by {@code valueOf} of each subclass and written by {@link #toString()} without loss: {@code 3.0
 * bar}; {@code 3.0 bar ± 0.05 bar} (or {@code +/-}; without a unit the tolerance is in the unit of the value; a
 * percentage is of the value); {@code 3.0 bar u 0.02 bar} for a standard uncertainty. A tolerance of a temperature is a
 * difference: in {@code 5 °C ± 0.5 °C} it is 0.5 K, and 9 °F of it are 5 K. A percentage of a ratio is in points:
 * {@code 80 % ± 2 %} is 0.80 ± 0.02.
 *
 * <p>Immutable and safe for threads. Two quantities are equal if class, value, tolerance and text are.
 */
public abstract class Quantity {
    /** A unit stands behind a number, and ends before a tolerance or with the text. */
    private static final Pattern UNIT = Pattern.compile(
            "(\\d(?:[eE][-+]?\\d+)?\\s*)((?![eE][-+]?\\d)[^\\d\\s.\u00b1+][^\u00b1+]*?)(?=\\s*(?:\u00b1|\\+/-|\\su\\s+[-\\d.]|$))");

    private final Reading reading;
    private @Nullable String text;

    Quantity(Reading reading) {
        this.reading = reading;
        this.text = reading.text();
    }

    /** The value in the unit {@link Kind#symbol()} of its kind: SI, but for a temperature, which is in degree Celsius. */
    public final double si() {
        return reading.si();
    }

    /** The kind of this quantity. */
    public final Kind kind() {
        return reading.kind();
    }

    /** Whether a tolerance or an uncertainty was stated; one of 0 is stated. */
    public final boolean hasTolerance() {
        return reading.spread() != Spread.NONE;
    }

    /**
     * The half-width of the tolerance, or the standard uncertainty if {@link #normal()}, in SI; in K for a temperature.
     * 0 if none was stated.
     */
    public final double halfWidthSi() {
        return reading.halfWidthSi();
    }

    /** Whether {@link #halfWidthSi()} is the standard uncertainty of a normal distribution. */
    public final boolean normal() {
        return reading.spread() == Spread.NORMAL;
    }

    /**
     * The same with another value; the tolerance stays what it is in SI, also where it was typed as a percentage.
     *
     * @throws IllegalArgumentException if the value is not finite, or is a temperature below absolute zero
     */
    public abstract Quantity withSi(double si);

    /**
     * The same with a tolerance of this half-width in SI (K for a temperature), also 0.
     *
     * @throws IllegalArgumentException if it is not finite or is negative
     */
    public abstract Quantity withHalfWidthSi(double halfWidthSi);

    /**
     * The same with a standard uncertainty in SI (K for a temperature), also 0.
     *
     * @throws IllegalArgumentException if it is not finite or is negative
     */
    public abstract Quantity withStandardUncertaintySi(double uncertaintySi);

    final Reading reading() {
        return reading;
    }

    final Reading rectangular(double halfWidthSi) {
        return reading.withSpread(halfWidthSi, Spread.RECTANGULAR);
    }

    final Reading normal(double uncertaintySi) {
        return reading.withSpread(uncertaintySi, Spread.NORMAL);
    }

    /** As typed, with single spaces and a decimal point; for a computed quantity a text that reads back the same. */
    @Override
    public final String toString() {
        String known = text;
        if (known == null) {
            known = ReadingText.lossless(reading);
            text = known;
        }
        return known;
    }

    /**
     * {@link #toString()} with the decimal separator of the locale, and each unit by its symbol, however it was typed: {@code 0.35 ohm} is shown as
     * {@code 0.35 Ω}, {@code 6 mm2} as {@code 6 mm²}. {@link Quantities#parse} reads the same value and tolerance in that locale.
     */
    public final String toString(Locale locale) {
        String printed = UNIT.matcher(toString())
                .replaceAll(unit -> Matcher.quoteReplacement(unit.group(1) + symbol(unit.group(2))));
        return NumberStyle.of(locale).fromPoint(printed);
    }

    private String symbol(String typed) {
        return kind().find(typed)
                .or(() -> kind().ofTolerance().find(typed))
                .map(TradeUnit::symbol)
                .orElse(typed);
    }

    @Override
    public final boolean equals(@Nullable Object other) {
        return other instanceof Quantity that
                && reading.kind() == that.reading.kind()
                && reading.si() == that.reading.si()
                && reading.halfWidthSi() == that.reading.halfWidthSi()
                && reading.spread() == that.reading.spread()
                && toString().equals(that.toString());
    }

    @Override
    public final int hashCode() {
        return Objects.hash(reading.kind().ordinal(), reading.si(), toString());
    }
}
