// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.cable;

import java.util.List;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Require;
import twinfeed.engineering.numeric.Roots;
import twinfeed.engineering.numeric.Solution;

/**
 * Current-carrying capacity, voltage drop and delivered voltage of a cable run made of segments.
 *
 * <p>Formulas of BS 7671 Appendix 4 (from memory); every table value is a parameter. The worst segment sets the capacity,
 * the sum sets the drop.
 */
public final class Cable {
    /** Temperature, degC, of the copper line's zero of resistance, negated: a property of copper, never a voltage. */
    public static final double COPPER_ZERO_C = 230;

    /** Highest temperature of a conductor with 70 degC thermoplastic insulation, degC. */
    public static final double THERMOPLASTIC_C = 70;

    private static final double REFERENCE_AMBIENT_C = 30;

    private Cable() {}

    /**
     * Returns the tabulated capacity, A, that a cable needs: In / (Ca Cg Ci Cf).
     *
     * @param deviceA rating of the protective device, A, zero or more
     * @param ca factor for ambient temperature, positive
     * @param cg factor for grouping, positive
     * @param ci factor for thermal insulation, positive
     * @param cf factor for the kind of device, positive
     */
    public static double neededTabulatedA(double deviceA, double ca, double cg, double ci, double cf) {
        double product = Require.positive(ca, "ca")
                * Require.positive(cg, "cg")
                * Require.positive(ci, "ci")
                * Require.positive(cf, "cf");
        return Require.result(Require.notNegative(deviceA, "deviceA") / product);
    }

    /**
     * Returns the index of the segment with the least capacity, the first of several; it governs the run.
     *
     * @param segments the run, not empty
     */
    public static int governingSegment(List<CableSegment> segments) {
        Require.positive(segments.size(), "segments.size");
        int governing = 0;
        for (int i = 1; i < segments.size(); i++) {
            if (segments.get(i).capacityA() < segments.get(governing).capacityA()) {
                governing = i;
            }
        }
        return governing;
    }

    /** Returns the capacity of a run, A, that of its governing segment. */
    public static double capacityA(List<CableSegment> segments) {
        return segments.get(governingSegment(segments)).capacityA();
    }

    /** Returns the voltage drop, V, of a current, A, along a run at full conductor temperature (Ct = 1). */
    public static double voltageDropV(List<CableSegment> segments, double currentA) {
        return Require.result(segments.stream()
                .mapToDouble(segment -> segment.dropV(currentA))
                .sum());
    }

    /**
     * Returns the factor Ct for the temperature of a conductor that carries less than its capacity:
     * (230 + tp - (Ca^2 Cg^2 - Ib^2/It^2)(tp - 30)) / (230 + tp).
     *
     * <p>The 230 is a constant of copper in degC, not a voltage, and It is the tabulated capacity, not the corrected one.
     * Above 1 it says that the conductor is beyond its temperature.
     *
     * @param ca factor for ambient temperature, positive
     * @param cg factor for grouping, positive
     * @param currentA Ib, A, zero or more
     * @param tabulatedA It, A, positive
     * @param conductorC tp, highest conductor temperature, degC, above 30
     */
    public static double temperatureFactor(
            double ca, double cg, double currentA, double tabulatedA, double conductorC) {
        Require.positive(ca, "ca");
        Require.positive(cg, "cg");
        Require.within(conductorC, REFERENCE_AMBIENT_C, 250, "conductorC");
        double load = Require.notNegative(currentA, "currentA") / Require.positive(tabulatedA, "tabulatedA");
        double cooler = (ca * ca * cg * cg - load * load) * (conductorC - REFERENCE_AMBIENT_C);
        return Require.result((COPPER_ZERO_C + conductorC - cooler) / (COPPER_ZERO_C + conductorC));
    }

    /** Returns Ct of a segment at a current, A, for thermoplastic insulation, under a rule. */
    public static double temperatureFactor(CableSegment segment, double currentA, ConductorTemperature rule) {
        if (rule == ConductorTemperature.FULL || segment.ci() < 1 || segment.cf() < 1) {
            return 1;
        }
        return temperatureFactor(
                Math.min(1, segment.ca()), segment.cg(), currentA, segment.tabulatedA(), THERMOPLASTIC_C);
    }

    /** Returns the resistance, ohm, of line and neutral of a run together, warmed by a current, A, under a rule. */
    public static double loopResistanceOhm(List<CableSegment> segments, double currentA, ConductorTemperature rule) {
        Require.notNegative(currentA, "currentA");
        double sum = 0;
        for (CableSegment segment : segments) {
            sum += segment.dropVPerAm() * segment.lengthM() * temperatureFactor(segment, currentA, rule);
        }
        return Require.result(sum);
    }

    /**
     * Returns the voltage, V, at the terminals of a resistance at the end of a run: U = U0 R / (R + r), where r follows
     * from the current that flows (Brent's method on [0, U0]).
     *
     * @param originV voltage at the origin under load, V, zero or more
     * @param elementOhm resistance of the heater, ohm, positive
     * @param segments the run
     * @param rule how warm the conductors are taken to be
     */
    public static double terminalVoltageV(
            double originV, double elementOhm, List<CableSegment> segments, ConductorTemperature rule) {
        Require.notNegative(originV, "originV");
        Require.positive(elementOhm, "elementOhm");
        if (originV == 0) {
            return 0;
        }
        return Roots.bracketed(
                        volt -> {
                            double ohm = loopResistanceOhm(segments, volt / elementOhm, rule);
                            return originV / (1 + ohm / elementOhm) - volt;
                        },
                        0,
                        originV,
                        Math.max(originV * 1e-14, Double.MIN_NORMAL))
                .value();
    }

    /**
     * Returns the longest run, m, of a cable within a limit of voltage drop, at full conductor temperature.
     *
     * @param limitV the limit, V, zero or more
     * @param usedV drop in other segments, V, zero or more
     * @param dropVPerAm the cable's drop, V/(A m), positive
     * @param currentA current, A, positive
     * @return the length, or {@link FailureReason#NO_LENGTH_LEFT} when the other segments use up the limit
     */
    public static Solution longestRunByDropM(double limitV, double usedV, double dropVPerAm, double currentA) {
        double leftV = Require.notNegative(limitV, "limitV") - Require.notNegative(usedV, "usedV");
        double perMetre = Require.positive(dropVPerAm, "dropVPerAm") * Require.positive(currentA, "currentA");
        return leftV <= 0 ? Solution.none(FailureReason.NO_LENGTH_LEFT) : Solution.of(leftV / perMetre);
    }

    /**
     * Returns the longest run, m, of a cable within a limit of loop impedance.
     *
     * @param limitOhm the limit of Zs, ohm, zero or more
     * @param usedOhm external loop impedance and other segments, ohm, zero or more
     * @param r1r2OhmPerM the cable's R1 + R2 at the temperature that belongs to the limit, ohm/m, positive
     * @return the length, or {@link FailureReason#NO_LENGTH_LEFT} when the limit is used up before the first metre
     */
    public static Solution longestRunByLoopM(double limitOhm, double usedOhm, double r1r2OhmPerM) {
        double leftOhm = Require.notNegative(limitOhm, "limitOhm") - Require.notNegative(usedOhm, "usedOhm");
        Require.positive(r1r2OhmPerM, "r1r2OhmPerM");
        return leftOhm <= 0 ? Solution.none(FailureReason.NO_LENGTH_LEFT) : Solution.of(leftOhm / r1r2OhmPerM);
    }

    /**
     * Returns the highest rated power, W, that a circuit carries: Ib &lt;= In &lt;= Iz and the drop within its limit.
     *
     * @param deviceA In, A, positive
     * @param ratedV rated voltage of the heater, V, positive
     * @param segments the run, not empty
     * @param dropLimitV limit of the voltage drop, V, zero or more
     * @return the power, or {@link FailureReason#DEVICE_ABOVE_CAPACITY} when In is above Iz
     */
    public static Solution highestPowerW(
            double deviceA, double ratedV, List<CableSegment> segments, double dropLimitV) {
        Require.positive(deviceA, "deviceA");
        Require.positive(ratedV, "ratedV");
        Require.notNegative(dropLimitV, "dropLimitV");
        if (deviceA > capacityA(segments)) {
            return Solution.none(FailureReason.DEVICE_ABOVE_CAPACITY);
        }
        double perAmpV = voltageDropV(segments, 1);
        double byDropA = perAmpV * deviceA <= dropLimitV ? deviceA : dropLimitV / perAmpV;
        return Solution.of(ratedV * byDropA);
    }
}
