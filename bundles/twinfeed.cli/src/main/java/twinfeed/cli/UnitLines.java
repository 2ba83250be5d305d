// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.units.UnitException;

/** A quantity in all units that are understood for it, in one line: {@code pressure: 0.3 bar = 30 kPa = 3.059 m head}. */
final class UnitLines {
    /** Units are defined more exactly than anything is read. */
    private static final int DIGITS = 6;

    private UnitLines() {}

    /**
     * One line for each kind of quantity that the text can be: "5 m" is a length, "20 K" may be a temperature or a difference.
     *
     * @throws ArgumentException if it is none
     */
    static List<String> of(String text) {
        List<String> lines = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            if (!kind.mayBeBare()) {
                try {
                    lines.add(line(kind, Quantities.parse(kind, text).si()));
                } catch (UnitException e) {
                    continue;
                }
            }
        }
        if (lines.isEmpty()) {
            throw new ArgumentException("value=" + text
                    + " is no quantity with a unit that is understood; write for example value=0.3bar or value=8L/min");
        }
        return lines;
    }

    private static String line(Kind kind, double si) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ": "
                + kind.unitSymbols().stream()
                        .map(unit -> number(Quantities.toUnit(kind, si, unit)) + " " + unit)
                        .collect(Collectors.joining(" = "));
    }

    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(DIGITS));
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
