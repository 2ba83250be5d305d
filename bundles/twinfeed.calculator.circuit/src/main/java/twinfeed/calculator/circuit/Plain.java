// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

/** Sizes and ratings as they stand in price codes and texts: no decimals where there are none. */
final class Plain {
    private Plain() {}

    static String number(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
