// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import java.util.List;
import twinfeed.calculator.SharedQuantities;

/**
 * What one calculator answers where some readings stand.
 *
 * @param margins what it says of its checks
 * @param provided the quantities that it provides, without their workings
 */
public record CalculatorAnswer(List<CheckMargin> margins, SharedQuantities provided) {}
