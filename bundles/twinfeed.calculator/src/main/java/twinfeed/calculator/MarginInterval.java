// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/**
 * How far the margin of a check may lie from what the readings as taken say.
 *
 * @param low 5 % quantile of the margin, in SI; 0 where the check has no figures
 * @param high 95 % quantile of the margin
 * @param remeasure path of the reading that contributes most to the variance of the margin; empty where none does
 */
public record MarginInterval(double low, double high, String remeasure) {
    /** Of a check without figures. */
    public static final MarginInterval NONE = new MarginInterval(0, 0, "");
}
