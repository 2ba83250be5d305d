// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.survey;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.LimitType;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;
import twinfeed.model.survey.ResidualDevice;

/**
 * The residual-current device of the circuit.
 *
 * @param kind what it is; absent if nobody looked, {@code NONE} if there is none
 * @param type type by wave form, empty if not read
 * @param residualA IdN, A
 * @param ratingA rated current, A
 * @param tripS measured trip time, s
 * @param scope what it protects
 * @param loadA design currents of the other circuits behind it, A
 * @param delayed whether it is of the time-delayed type, which gives no additional protection
 */
public record ResidualData(
        @Nullable RcdKind kind,
        String type,
        @Nullable Double residualA,
        @Nullable Double ratingA,
        @Nullable Double tripS,
        @Nullable RcdScope scope,
        @Nullable Double loadA,
        boolean delayed) {

    /** A device that is an RCBO by its own kind has the protection, even where the survey has no word about it. */
    public static ResidualData of(@Nullable ResidualDevice rcd, boolean combined) {
        if (rcd == null) {
            return new ResidualData(combined ? RcdKind.RCBO : null, "", null, null, null, null, null, false);
        }
        RcdKind kind = rcd.isSetKind() ? rcd.getKind() : combined ? RcdKind.RCBO : null;
        return new ResidualData(
                kind,
                rcd.getType() == null ? "" : rcd.getType().strip(),
                SiValues.of(rcd.getResidual()),
                SiValues.of(rcd.getRating()),
                SiValues.of(rcd.getTripTime()),
                scope(rcd, kind),
                SiValues.of(rcd.getLoad()),
                Boolean.TRUE.equals(rcd.getTimeDelayed()));
    }

    private static @Nullable RcdScope scope(ResidualDevice rcd, @Nullable RcdKind kind) {
        if (rcd.isSetScope()) {
            return rcd.getScope();
        }
        return kind == RcdKind.RCBO ? RcdScope.CIRCUIT : null;
    }

    public boolean none() {
        return kind == RcdKind.NONE;
    }

    public boolean present() {
        return kind == RcdKind.RCBO || kind == RcdKind.RCCB;
    }

    /** Whether it is there, trips at once, and has at most this rated residual current, A. */
    public boolean within(double mostA) {
        return present() && !delayed && residualA != null && !LimitType.exceeds(residualA, mostA);
    }

    /** Whether it is there, and known to have more than this rated residual current, A, or to trip with a delay. */
    public boolean fails(double mostA) {
        return present() && (delayed || (residualA != null && LimitType.exceeds(residualA, mostA)));
    }
}
