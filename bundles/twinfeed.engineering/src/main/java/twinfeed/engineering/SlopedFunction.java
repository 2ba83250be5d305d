// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

/** A function that gives its slope together with its value. */
@FunctionalInterface
interface SlopedFunction {
    void at(double x, SlopedValue out);
}
