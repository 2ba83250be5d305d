// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import twinfeed.engineering.numeric.DomainException;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.SlopedValue;
import twinfeed.engineering.numeric.Solution;

/**
 * The curve of a supply through a two-point test: p(Q) = p0 - (p0 - p1) (Q/Q1)^n.
 *
 * <p>The exponent is the pessimistic one on each side of the test: 1.85 (pipe friction) within 0..Q1, 2 (an orifice)
 * beyond it. Beyond Q1 the curve is an extrapolation and whoever shows it says so.
 *
 * <p>Source: form of NFPA 291 and handbooks; 1.85 is the exponent of Hazen-Williams.
 *
 * @param staticPa p0, pressure with everything shut, Pa, positive
 * @param runningPa p1, pressure at the same point and height while Q1 runs, Pa, zero or more and below p0
 * @param testFlowM3PerS Q1, m3/s, positive
 */
public record SupplyCurve(double staticPa, double runningPa, double testFlowM3PerS) implements Supply {
    /** Exponent within the test flow. */
    public static final double EXPONENT_WITHIN = 1.85;

    /** Exponent beyond the test flow. */
    public static final double EXPONENT_BEYOND = 2;

    /**
     * Checks the test; ask {@link SupplyTest#of} first to learn of a refusal without an exception.
     *
     * @throws DomainException with {@link FailureReason#RUNNING_NOT_BELOW_STATIC} or {@link FailureReason#FLOW_NOT_POSITIVE} for a
     *     test that is refused
     */
    public SupplyCurve {
        switch (SupplyTest.of(staticPa, runningPa, testFlowM3PerS)) {
            case RUNNING_NOT_BELOW_STATIC ->
                throw new DomainException(FailureReason.RUNNING_NOT_BELOW_STATIC, "runningPa", runningPa);
            case FLOW_NOT_POSITIVE ->
                throw new DomainException(FailureReason.FLOW_NOT_POSITIVE, "testFlowM3PerS", testFlowM3PerS);
            case USABLE, SMALL_DROP -> {}
        }
    }

    /** Returns the drop of the test, p0 - p1, Pa. */
    public double dropPa() {
        return staticPa - runningPa;
    }

    @Override
    public double pressureAt(double flowM3PerS) {
        return pressureAt(flowM3PerS, exponentAt(flowM3PerS));
    }

    /**
     * Returns the pressure, Pa, by one exponent throughout.
     *
     * @param flowM3PerS flow, m3/s, zero or more
     * @param exponent n, 1..2
     * @throws DomainException outside the ranges, or at a flow so absurd that no pressure is finite
     */
    public double pressureAt(double flowM3PerS, double exponent) {
        double ratio = Require.notNegative(flowM3PerS, "flowM3PerS") / testFlowM3PerS;
        double drop = dropPa() * Math.pow(ratio, Require.within(exponent, 1, 2, "exponent"));
        return Require.result(staticPa - drop);
    }

    @Override
    public double slopeAt(double flowM3PerS) {
        double exponent = exponentAt(flowM3PerS);
        double ratio = Require.notNegative(flowM3PerS, "flowM3PerS") / testFlowM3PerS;
        return Require.result(-exponent * dropPa() / testFlowM3PerS * Math.pow(ratio, exponent - 1));
    }

    /** Pressure and slope at a flow of zero or more, with one power for both. */
    void at(double flow, SlopedValue out) {
        double exponent = exponentAt(flow);
        double ratio = flow / testFlowM3PerS;
        double drop = dropPa() * (exponent == EXPONENT_BEYOND ? ratio * ratio : Math.pow(ratio, exponent));
        out.set(staticPa - drop, flow > 0 ? -exponent * drop / flow : 0);
    }

    private double exponentAt(double flowM3PerS) {
        return flowM3PerS <= testFlowM3PerS ? EXPONENT_WITHIN : EXPONENT_BEYOND;
    }

    /**
     * Returns the flow, m3/s, at which the supply is down to a pressure.
     *
     * @param pressurePa pressure at the gauge, Pa, zero or more
     * @return the flow, or {@link FailureReason#SUPPLY_TOO_WEAK} above the static pressure
     */
    public Solution flowAt(double pressurePa) {
        return flowAt(pressurePa, pressurePa >= runningPa ? EXPONENT_WITHIN : EXPONENT_BEYOND);
    }

    /**
     * Returns the flow, m3/s, at which the supply is down to a pressure, by one exponent throughout.
     *
     * @param pressurePa pressure at the gauge, Pa, zero or more
     * @param exponent n, 1..2
     * @return the flow, or {@link FailureReason#SUPPLY_TOO_WEAK} above the static pressure
     */
    public Solution flowAt(double pressurePa, double exponent) {
        Require.notNegative(pressurePa, "pressurePa");
        Require.within(exponent, 1, 2, "exponent");
        if (pressurePa > staticPa) {
            return Solution.none(FailureReason.SUPPLY_TOO_WEAK);
        }
        return Solution.of(testFlowM3PerS * Math.pow((staticPa - pressurePa) / dropPa(), 1 / exponent));
    }
}
