// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/** On which side of its limit a value has to lie. */
public enum LimitType {
    /** At or over the limit; margin is value less limit. */
    AT_LEAST,
    /** At or under the limit; margin is limit less value. */
    AT_MOST,
    /** A figure without a limit. */
    REPORT;

    /** The margin of a value: 0 or more passes. */
    public double margin(double value, double limit) {
        return this == AT_LEAST ? value - limit : limit - value;
    }
}
