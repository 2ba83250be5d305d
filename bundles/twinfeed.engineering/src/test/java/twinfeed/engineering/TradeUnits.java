// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering;

/** Units in which the trade and the sources of check values speak, in SI. */
public final class TradeUnits {
    public static final double L_PER_MIN = 1e-3 / 60;
    public static final double KG_PER_MIN = 1.0 / 60;
    public static final double BAR = 1e5;
    public static final double KPA = 1e3;
    public static final double FOOT = 0.3048;
    public static final double INCH = 0.0254;
    /** Pound-force per square inch. */
    public static final double PSI = 6894.757293168;
    /** US gallon a minute. */
    public static final double US_GPM = 3.785411784e-3 / 60;

    private TradeUnits() {}
}
