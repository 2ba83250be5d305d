// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

/** Sizes and ratings as they stand in price codes and texts: no decimals where there are none. */
public final class CodeNumbers {
    private CodeNumbers() {}

    public static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
