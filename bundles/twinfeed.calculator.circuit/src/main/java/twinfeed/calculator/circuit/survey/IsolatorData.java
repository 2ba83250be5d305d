// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.IsolatorCondition;

/**
 * The local isolator.
 *
 * @param ratingA rated current, A
 * @param namedA largest upstream device that its instructions name, A
 * @param condition what it looks like, absent if nobody looked
 * @param none whether there is said to be none, which is not the same as not looked for
 * @param conductorMm2 largest conductor that its terminals take, mm2
 */
public record IsolatorData(
        @Nullable Double ratingA,
        @Nullable Double namedA,
        @Nullable IsolatorCondition condition,
        boolean none,
        @Nullable Double conductorMm2) {

    public static IsolatorData of(@Nullable Isolator isolator) {
        return isolator == null
                ? new IsolatorData(null, null, null, false, null)
                : new IsolatorData(
                        SiValues.of(isolator.getRating()),
                        SiValues.of(isolator.getNamedDevice()),
                        isolator.isSetCondition() ? isolator.getCondition() : null,
                        "none".equals(isolator.getKind()),
                        SiValues.mm2(isolator.getMaximumConductor()));
    }
}
