// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Optional;

/** Numbers and readings as text, with a decimal point. */
final class ReadingText {
    private static final int MOST_PLAIN_DIGITS = 15;

    private ReadingText() {}

    /** The text of a computed quantity: in the trade's unit if that reads back to the same double, else in SI. */
    static String lossless(Reading reading) {
        return losslessIn(reading, reading.kind().displayUnit())
                .or(() -> losslessIn(reading, reading.kind().symbol()))
                .orElseThrow(() -> new IllegalStateException("the SI unit is not lossless: " + reading));
    }

    private static Optional<String> losslessIn(Reading reading, String symbol) {
        Optional<String> value = losslessIn(reading.kind(), symbol, reading.si());
        if (reading.spread() == Spread.NONE) {
            return value;
        }
        Kind toleranceKind = reading.kind().ofTolerance();
        String toleranceSymbol = toleranceKind == reading.kind() ? symbol : toleranceKind.symbol();
        String sign = reading.spread() == Spread.NORMAL ? " u " : " ± ";
        return value.flatMap(v -> losslessIn(toleranceKind, toleranceSymbol, reading.halfWidthSi())
                .map(t -> v + sign + t));
    }

    private static Optional<String> losslessIn(Kind kind, String symbol, double si) {
        TradeUnit unit = kind.find(symbol).orElseThrow();
        double magnitude = unit.fromSi(si);
        if (!Double.isFinite(magnitude) || unit.toSi(BigDecimal.valueOf(magnitude)) != si) {
            return Optional.empty();
        }
        return Optional.of(withUnit(shortest(magnitude), unit.symbol()));
    }

    static String withUnit(String number, String symbol) {
        return symbol.equals("1") || symbol.isEmpty() ? number : number + " " + symbol;
    }

    /** The shortest decimal that denotes the double. */
    static String shortest(double value) {
        BigDecimal decimal = BigDecimal.valueOf(value).stripTrailingZeros();
        int exponent = decimal.precision() - decimal.scale();
        boolean plain = Math.abs(exponent) <= MOST_PLAIN_DIGITS && decimal.scale() <= MOST_PLAIN_DIGITS;
        return plain ? decimal.toPlainString() : decimal.toString();
    }

    /** Rounded half up (half away from zero) to a number of significant digits, trailing zeros kept. */
    static String significant(double value, int digits) {
        if (digits < 1) {
            throw new IllegalArgumentException(digits + " significant digits; at least 1");
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(digits, RoundingMode.HALF_UP));
        if (rounded.signum() == 0) {
            return "0";
        }
        int decimals = digits - (rounded.precision() - rounded.scale());
        return rounded.setScale(Math.max(0, decimals), RoundingMode.HALF_UP).toPlainString();
    }

    /** Rounded half up (half away from zero) to a number of decimals; never "-0". */
    static String decimals(double value, int decimals) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.toPlainString();
    }
}
