// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.model.survey.RcdScope;
import twinfeed.model.survey.UpstreamRcd;

/**
 * A residual-current device ahead of the circuit's own one.
 *
 * @param there whether there is one, as far as the survey says
 * @param ratingA rated current, A
 * @param loadA design currents of the other circuits behind it, A
 * @param delayed whether it is time-delayed, so that the circuit's own device trips first
 * @param scope what it protects
 */
public record UpstreamData(
        boolean there, @Nullable Double ratingA, @Nullable Double loadA, boolean delayed, @Nullable RcdScope scope) {
    static UpstreamData of(@Nullable UpstreamRcd rcd) {
        return rcd == null
                ? new UpstreamData(false, null, null, false, null)
                : new UpstreamData(
                        true,
                        SiValues.of(rcd.getRating()),
                        SiValues.of(rcd.getLoad()),
                        Boolean.TRUE.equals(rcd.getTimeDelayed()),
                        rcd.isSetScope() ? rcd.getScope() : null);
    }
}
