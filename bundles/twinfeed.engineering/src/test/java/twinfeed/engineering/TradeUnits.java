// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

/** Units in which the trade and the sources of check values speak, in SI. */
final class TradeUnits {
    static final double L_PER_MIN = 1e-3 / 60;
    static final double KG_PER_MIN = 1.0 / 60;
    static final double BAR = 1e5;
    static final double KPA = 1e3;
    static final double FOOT = 0.3048;
    static final double INCH = 0.0254;
    /** Pound-force per square inch. */
    static final double PSI = 6894.757293168;
    /** US gallon a minute. */
    static final double US_GPM = 3.785411784e-3 / 60;

    private TradeUnits() {}
}
