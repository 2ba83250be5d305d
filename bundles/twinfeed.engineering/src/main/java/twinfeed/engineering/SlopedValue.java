// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

/**
 * A value and its slope at one point. The one mutable class of the package: made afresh for each solve, never shared,
 * because a coupled solve needs some fifty of these and is meant to take microseconds.
 */
final class SlopedValue {
    double value;
    double slope;

    void set(double newValue, double newSlope) {
        value = newValue;
        slope = newSlope;
    }
}
