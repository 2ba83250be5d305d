// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/**
 * A polynomial with short decimal coefficients, evaluated and printed in the same Horner order.
 *
 * <p>The coefficients are kept as decimals so that a derivative's are exact short decimals too: a spreadsheet keeps only
 * 15 significant digits of a literal, and must still recompute the same number.
 */
public final class Polynomial {
    private final List<BigDecimal> decimals;
    private final double[] ascending;

    private Polynomial(List<BigDecimal> decimals) {
        this.decimals = decimals;
        this.ascending = decimals.stream().mapToDouble(BigDecimal::doubleValue).toArray();
    }

    /** Returns the polynomial with the given coefficients, constant first. */
    public static Polynomial of(String... ascending) {
        return new Polynomial(Arrays.stream(ascending).map(BigDecimal::new).toList());
    }

    /** Returns the exact derivative. */
    public Polynomial derivative() {
        BigDecimal[] factors = new BigDecimal[decimals.size() - 1];
        for (int power = 1; power < decimals.size(); power++) {
            factors[power - 1] = decimals.get(power).multiply(BigDecimal.valueOf(power));
        }
        return new Polynomial(List.of(factors));
    }

    /** Returns the value at x by Horner's rule. */
    public double at(double x) {
        double sum = ascending[ascending.length - 1];
        for (int power = ascending.length - 2; power >= 0; power--) {
            sum = ascending[power] + x * sum;
        }
        return sum;
    }

    /** Returns the same sum as text, without exponents and without signs before a number. */
    public String expression(String symbol) {
        int last = decimals.size() - 1;
        String text = innermost(symbol, decimals.get(last - 1), decimals.get(last));
        for (int power = last - 2; power >= 0; power--) {
            String product = symbol + " * (" + text + ")";
            BigDecimal factor = decimals.get(power);
            text = factor.signum() < 0 ? product + " - " + plain(factor) : plain(factor) + " + " + product;
        }
        return text;
    }

    private static String innermost(String symbol, BigDecimal constant, BigDecimal factor) {
        String start = constant.signum() < 0 ? "0 - " + plain(constant) : plain(constant);
        return start + (factor.signum() < 0 ? " - " : " + ") + symbol + " * " + plain(factor);
    }

    private static String plain(BigDecimal number) {
        return number.abs().stripTrailingZeros().toPlainString();
    }
}
