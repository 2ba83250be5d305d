// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import twinfeed.units.UnitException.Fault;

/**
 * Reads the text forms {@code 3.0 bar}, {@code 3.0 bar ± 0.05 bar}, {@code 3.0 bar ± 2 %} and {@code 3.0 bar u 0.02 bar}. */
final class ReadingParser {
    private static final int LONGEST = 120;
    private static final String[] TOLERANCE_SIGNS = {"±", "+/-", "+-"};
    private static final BigDecimal SMALL = new BigDecimal("1e-100");
    private static final BigDecimal HUNDREDTH = new BigDecimal("0.01");

    private final Kind kind;
    private final String reading;
    private final NumberStyle style;

    private ReadingParser(Kind kind, String reading, NumberStyle style) {
        this.kind = kind;
        this.reading = reading;
        this.style = style;
    }

    static Reading parse(Kind kind, String typed, Locale locale) {
        return new ReadingParser(kind, oneSpaced(typed), NumberStyle.of(locale)).parse();
    }

    private Reading parse() {
        if (reading.isEmpty()) {
            throw fault(Fault.EMPTY, reading);
        }
        if (reading.length() > LONGEST) {
            throw fault(Fault.TOO_LONG, reading);
        }
        Parts parts = Parts.of(reading);
        Numeral numeral = numeral(parts.value());
        TradeUnit unit = unitOf(numeral, kind);
        double si = toSi(unit, numeral);
        double halfWidthSi = parts.spread() == Spread.NONE ? 0 : halfWidthSi(parts.tolerance(), numeral, unit);
        if (si < kind.lowest()) {
            throw fault(Fault.BELOW_ABSOLUTE_ZERO, parts.value());
        }
        return new Reading(kind, si, halfWidthSi, parts.spread(), style.toPoint(reading));
    }

    private Numeral numeral(String part) {
        Numeral numeral = Numeral.headOf(part, style);
        if (numeral.isEmpty()) {
            throw fault(part.isEmpty() ? Fault.NO_TOLERANCE : Fault.NO_NUMBER, part);
        }
        if (numeral.isGrouped()) {
            throw fault(Fault.GROUPED, part);
        }
        if (numeral.isBeyondDouble()) {
            throw fault(Fault.OUT_OF_RANGE, numeral.typed());
        }
        return numeral;
    }

    private double halfWidthSi(String part, Numeral value, TradeUnit valueUnit) {
        Numeral numeral = numeral(part);
        if (numeral.value().signum() < 0) {
            throw fault(Fault.NEGATIVE_TOLERANCE, part);
        }
        Kind toleranceKind = kind.ofTolerance();
        if (numeral.rest().isEmpty()) {
            return toSi(toleranceKind.find(valueUnit.symbol()).orElseThrow(), numeral);
        }
        if (numeral.rest().equals("%") && kind != Kind.RATIO) {
            return percentage(numeral, value, valueUnit);
        }
        return toSi(unitOf(numeral, toleranceKind), numeral);
    }

    private double percentage(Numeral percent, Numeral value, TradeUnit valueUnit) {
        if (kind == Kind.TEMPERATURE) {
            throw fault(Fault.PERCENT_OF_TEMPERATURE, percent.typed() + " %");
        }
        BigDecimal part = value.value().abs().multiply(percent.value()).multiply(HUNDREDTH);
        return inRange(valueUnit.toSi(part), part, percent);
    }

    private TradeUnit unitOf(Numeral numeral, Kind asked) {
        String spelling = numeral.rest();
        if (spelling.isEmpty() && !asked.mayBeBare()) {
            throw fault(Fault.NO_UNIT, numeral.typed());
        }
        Optional<TradeUnit> unit = asked.find(spelling.isEmpty() ? asked.symbol() : spelling);
        if (unit.isEmpty()) {
            throw fault(Fault.of(asked, spelling), spelling);
        }
        return unit.get();
    }

    private double toSi(TradeUnit unit, Numeral numeral) {
        BigDecimal magnitude = numeral.value();
        return inRange(unit.toSi(magnitude), magnitude, numeral);
    }

    /** Refuses what became infinite, and what became 0 though it was not (a shifted unit's 0 comes from no small number). */
    private double inRange(double si, BigDecimal magnitude, Numeral numeral) {
        boolean vanished = si == 0 && magnitude.signum() != 0 && magnitude.abs().compareTo(SMALL) < 0;
        if (Double.isInfinite(si) || vanished) {
            throw fault(Fault.OUT_OF_RANGE, numeral.typed());
        }
        return si;
    }

    private UnitException fault(Fault fault, String part) {
        return new UnitException(fault, kind, reading, part, style.decimal());
    }

    private static String oneSpaced(String typed) {
        StringBuilder out = new StringBuilder(typed.length());
        for (int i = 0; i < typed.length(); i++) {
            char c = typed.charAt(i);
            boolean space = Character.isWhitespace(c) || Character.isSpaceChar(c);
            if (!space) {
                out.append(c);
            } else if (!out.isEmpty() && out.charAt(out.length() - 1) != ' ') {
                out.append(' ');
            }
        }
        return out.toString().stripTrailing();
    }

    /** A reading cut at its tolerance. */
    private record Parts(String value, String tolerance, Spread spread) {

        static Parts of(String reading) {
            for (String sign : TOLERANCE_SIGNS) {
                int at = reading.indexOf(sign);
                if (at >= 0) {
                    return cut(reading, at, sign.length(), Spread.RECTANGULAR);
                }
            }
            int at = reading.endsWith(" u") ? reading.length() - 2 : reading.indexOf(" u ");
            return at < 0 ? new Parts(reading, "", Spread.NONE) : cut(reading, at, 2, Spread.NORMAL);
        }

        private static Parts cut(String reading, int at, int length, Spread spread) {
            return new Parts(
                    reading.substring(0, at).strip(),
                    reading.substring(at + length).strip(),
                    spread);
        }
    }
}
