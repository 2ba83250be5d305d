// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;

/**
 * One unit of one kind: its symbol, its other spellings, and the way to SI, {@code si = (x + offset) dividend/divisor}.
 *
 * <p>The factor is kept as a fraction and the number as the decimals that were typed, so that 15 L/min becomes the
 * double nearest to 2.5e-4 m3/s and not the product of two rounded doubles.
 */
final class TradeUnit {
    private final String symbol;
    private final List<String> aliases;
    private final BigDecimal dividend;
    private final BigDecimal divisor;
    private final BigDecimal offset;

    private TradeUnit(String symbol, String dividend, String divisor, String offset, String... aliases) {
        this.symbol = symbol;
        this.dividend = new BigDecimal(dividend);
        this.divisor = new BigDecimal(divisor);
        this.offset = new BigDecimal(offset);
        this.aliases = List.of(aliases);
    }

    /** The SI unit itself. */
    static TradeUnit si(String symbol, String... aliases) {
        return new TradeUnit(symbol, "1", "1", "0", aliases);
    }

    /** A unit of {@code dividend / divisor} SI units; both are whole numbers. */
    static TradeUnit scaled(String symbol, String dividend, String divisor, String... aliases) {
        return new TradeUnit(symbol, dividend, divisor, "0", aliases);
    }

    /** A unit whose zero lies elsewhere: {@code offset} is added before the factor is applied. */
    static TradeUnit shifted(String symbol, String offset, String dividend, String divisor, String... aliases) {
        return new TradeUnit(symbol, dividend, divisor, offset, aliases);
    }

    String symbol() {
        return symbol;
    }

    List<String> aliases() {
        return aliases;
    }

    double toSi(BigDecimal magnitude) {
        return isSi()
                ? magnitude.doubleValue()
                : magnitude
                        .add(offset)
                        .multiply(dividend)
                        .divide(divisor, MathContext.DECIMAL128)
                        .doubleValue();
    }

    /** The magnitude in this unit of a finite value in SI, taken as the shortest decimal that denotes it. */
    double fromSi(double si) {
        return isSi()
                ? si
                : BigDecimal.valueOf(si)
                        .multiply(divisor)
                        .divide(dividend, MathContext.DECIMAL128)
                        .subtract(offset)
                        .doubleValue();
    }

    /**
     * This unit for values of a kind that are shown.
     *
     * @param written the symbol as it is printed
     * @throws IllegalArgumentException if its zero is not that of the SI unit
     */
    DisplayUnit shown(Kind kind, String written) {
        if (offset.signum() != 0) {
            throw new IllegalArgumentException(symbol + " differs from its SI unit in its zero, not by a factor alone");
        }
        return new DisplayUnit(kind, written, divisor.doubleValue(), dividend.doubleValue());
    }

    /** How many of the SI unit make one of this unit. */
    double siInOne() {
        return dividend.doubleValue() / divisor.doubleValue();
    }

    /** How many of this unit make one of the SI unit. */
    double inOneSi() {
        return divisor.doubleValue() / dividend.doubleValue();
    }

    /**
     * What turns an expression in SI units into one in this unit: a factor where the SI unit is the larger, else a divisor.
     *
     * @param times what a factor is written after
     * @param over what a divisor is written after
     */
    String factor(String times, String over) {
        if (offset.signum() != 0) {
            throw new IllegalStateException(symbol + " differs from its SI unit in its zero, not by a factor alone");
        }
        String multiplied = divisor.equals(BigDecimal.ONE) ? "" : times + divisor;
        return dividend.equals(BigDecimal.ONE) ? multiplied : multiplied + over + dividend;
    }

    boolean isSi() {
        return dividend.equals(divisor) && offset.signum() == 0;
    }

    /** Whether both units turn every number into the same SI value. */
    boolean convertsLike(TradeUnit other) {
        return dividend.equals(other.dividend) && divisor.equals(other.divisor) && offset.equals(other.offset);
    }
}
