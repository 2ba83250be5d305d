// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;

/**
 * The residual-current device without overcurrent protection through which the heater's current flows: the circuit's own one or the
 * one ahead of it.
 *
 * @param upstream whether it is the one ahead
 * @param ratingA its rated current, A, absent if not read
 * @param othersA design currents of the other circuits behind it, A, absent if not known
 */
public record SharedRcd(boolean upstream, @Nullable Double ratingA, @Nullable Double othersA) {
    /** The device; absent where there is none, or nobody looked. */
    static @Nullable SharedRcd of(ResidualData residual, UpstreamData upstream) {
        if (upstream.there()) {
            return new SharedRcd(true, upstream.ratingA(), upstream.loadA());
        }
        if (residual.kind() != RcdKind.RCCB) {
            return null;
        }
        boolean alone = residual.scope() == RcdScope.CIRCUIT;
        return new SharedRcd(false, residual.ratingA(), alone ? Double.valueOf(0) : residual.loadA());
    }

    /** Origin of its rated current in workings. */
    public String ratingOrigin() {
        return upstream ? ReadingPaths.UPSTREAM_RATING : ReadingPaths.RCD_RATING;
    }

    /** Origin of the other circuits' currents in workings. */
    public String othersOrigin() {
        return upstream ? ReadingPaths.UPSTREAM_LOAD : ReadingPaths.RCD_LOAD;
    }

    /** Whether a heater and the other circuits are known to be more than it carries. */
    boolean overloadedBy(ShowerLoad load) {
        return ratingA != null && othersA != null && LimitType.exceeds(load.designA() + othersA, ratingA);
    }
}
