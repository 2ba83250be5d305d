// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

/** A function that gives its slope together with its value. */
@FunctionalInterface
public interface SlopedFunction {
    void at(double x, SlopedValue out);
}
