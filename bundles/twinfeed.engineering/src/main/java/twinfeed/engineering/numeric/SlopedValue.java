// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

/**
 * A value and its slope at one point. The one mutable class of the package: made afresh for each solve, never shared,
 * because a coupled solve needs some fifty of these and is meant to take microseconds.
 */
public final class SlopedValue {
    public double value;
    public double slope;

    public void set(double newValue, double newSlope) {
        value = newValue;
        slope = newSlope;
    }
}
