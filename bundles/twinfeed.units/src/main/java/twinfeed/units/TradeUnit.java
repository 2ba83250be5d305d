// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.util.List;
import javax.measure.UnitConverter;
import org.jspecify.annotations.Nullable;
import tech.units.indriya.function.AddConverter;
import tech.units.indriya.function.MultiplyConverter;

/**
 * One unit of one kind: its symbol, its other spellings, and the way to SI, {@code si = (x + offset) dividend/divisor}.
 *
 * <p>The factor is kept as a fraction and the number as the decimals that were typed, so that 15 L/min becomes the
 * double nearest to 2.5e-4 m3/s and not the product of two rounded doubles. The library's converters do the
 * arithmetic; they are made when the unit is first used, and not at all for a unit that is the SI unit itself, because
 * the library's start costs more than everything else in this package.
 */
final class TradeUnit {
    private final String symbol;
    private final List<String> aliases;
    private final String dividend;
    private final String divisor;
    private final String offset;
    private volatile @Nullable Conversion conversion;

    private TradeUnit(String symbol, String dividend, String divisor, String offset, String... aliases) {
        this.symbol = symbol;
        this.dividend = dividend;
        this.divisor = divisor;
        this.offset = offset;
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
        return isSi() ? magnitude.doubleValue() : conversion().toSi(magnitude).doubleValue();
    }

    /** The magnitude in this unit of a finite value in SI, taken as the shortest decimal that denotes it. */
    double fromSi(double si) {
        return isSi() ? si : conversion().fromSi(BigDecimal.valueOf(si)).doubleValue();
    }

    /**
     * This unit for values of a kind that are shown.
     *
     * @param written the symbol as it is printed
     * @throws IllegalArgumentException if its zero is not that of the SI unit
     */
    DisplayUnit shown(Kind kind, String written) {
        if (!offset.equals("0")) {
            throw new IllegalArgumentException(symbol + " differs from its SI unit in its zero, not by a factor alone");
        }
        return new DisplayUnit(kind, written, Double.parseDouble(divisor), Double.parseDouble(dividend));
    }

    /** How many of the SI unit make one of this unit. */
    double siInOne() {
        return Double.parseDouble(dividend) / Double.parseDouble(divisor);
    }

    /** How many of this unit make one of the SI unit. */
    double inOneSi() {
        return Double.parseDouble(divisor) / Double.parseDouble(dividend);
    }

    /**
     * What turns an expression in SI units into one in this unit: a factor where the SI unit is the larger, else a divisor.
     *
     * @param times what a factor is written after
     * @param over what a divisor is written after
     */
    String factor(String times, String over) {
        if (!offset.equals("0")) {
            throw new IllegalStateException(symbol + " differs from its SI unit in its zero, not by a factor alone");
        }
        String multiplied = divisor.equals("1") ? "" : times + divisor;
        return dividend.equals("1") ? multiplied : multiplied + over + dividend;
    }

    boolean isSi() {
        return dividend.equals(divisor) && offset.equals("0");
    }

    /** Whether both units turn every number into the same SI value. */
    boolean convertsLike(TradeUnit other) {
        return dividend.equals(other.dividend) && divisor.equals(other.divisor) && offset.equals(other.offset);
    }

    private Conversion conversion() {
        Conversion known = conversion;
        if (known == null) {
            known = Conversion.of(dividend, divisor, offset);
            conversion = known;
        }
        return known;
    }

    /**
     * The library's converters one after the other; concatenating them would start its machinery for simplifying
     * converters, which costs as much again as the converters.
     */
    private record Conversion(@Nullable UnitConverter shift, UnitConverter scale) {

        static Conversion of(String dividend, String divisor, String offset) {
            UnitConverter shift = offset.equals("0") ? null : new AddConverter(new BigDecimal(offset));
            return new Conversion(
                    shift, MultiplyConverter.ofRational(new BigInteger(dividend), new BigInteger(divisor)));
        }

        Number toSi(Number magnitude) {
            return scale.convert(shift == null ? magnitude : shift.convert(magnitude));
        }

        Number fromSi(Number si) {
            Number scaled = scale.inverse().convert(si);
            return shift == null ? scaled : shift.inverse().convert(scaled);
        }
    }
}
