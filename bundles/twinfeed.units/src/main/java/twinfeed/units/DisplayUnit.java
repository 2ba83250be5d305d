// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.io.Serializable;

/**
 * A unit in which values of a kind are shown to people, and its factor to the SI unit in which they are kept. For values that were computed:
 * the arithmetic is that of {@code double}. What was typed is converted exactly, by {@link Quantities}.
 *
 * @param kind the kind of quantity
 * @param symbol the unit as printed; empty for a ratio
 * @param multiplier how many of this unit make {@code divisor} of the SI unit
 * @param divisor see {@code multiplier}; one of the two is usually 1
 */
public record DisplayUnit(Kind kind, String symbol, double multiplier, double divisor) implements Serializable {
    public static final DisplayUnit PERCENT = of(Kind.RATIO, "%");
    public static final DisplayUnit MILLIAMPERE = of(Kind.CURRENT, "mA");
    public static final DisplayUnit KILOAMPERE = of(Kind.CURRENT, "kA");
    public static final DisplayUnit MILLIMETRE = of(Kind.LENGTH, "mm");
    public static final DisplayUnit MILLISECOND = of(Kind.DURATION, "ms");
    public static final DisplayUnit MEGOHM = of(Kind.RESISTANCE, "MΩ");

    /** The unit in which the trade usually writes a kind. */
    public static DisplayUnit of(Kind kind) {
        return kind.usual();
    }

    /**
     * Another unit of a kind, such as mA for a current.
     *
     * @throws IllegalArgumentException if it is no unit of the kind, or its zero lies elsewhere than that of the SI unit
     */
    public static DisplayUnit of(Kind kind, String symbol) {
        TradeUnit unit = kind.find(symbol)
                .orElseThrow(() -> new IllegalArgumentException("\"" + symbol + "\" is no unit of " + kind));
        return unit.shown(kind, kind.mayBeBare() && unit.isSi() ? "" : symbol);
    }

    /** A value in SI in this unit. */
    public double fromSi(double si) {
        return si * multiplier / divisor;
    }

    /** A value in this unit in SI. */
    public double toSi(double value) {
        return value * divisor / multiplier;
    }

    /** A value in SI that is printed in this unit. */
    public Amount amount(double si) {
        return new Amount(si, this);
    }
}
