// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.engineering.heater.SwitchMargin;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Fluid;

/** At what flow the heat of a unit goes off, by what its data say: a flow, or pressures at one place or another. */
public final class SwitchOffCondition {
    private final UnitData unit;
    private final @Nullable PressureSwitch limits;
    private final @Nullable Double activationM3PerS;
    private final double strainer;
    private final @Nullable Double lowestHandsetM;

    /**
     * What switches a unit off.
     *
     * @param strainer loss of strainer and solenoid valve over the square of the flow, Pa/(m3/s)2
     * @param lowestHandsetM height of the lowest handset position over the unit, m
     */
    public SwitchOffCondition(UnitData unit, double strainer, @Nullable Double lowestHandsetM) {
        this.unit = unit;
        this.limits = unit.pressureSwitch();
        this.activationM3PerS = limits == null ? unit.activationM3PerS() : null;
        this.strainer = strainer;
        this.lowestHandsetM = lowestHandsetM;
    }

    /** The flow, m3/s, where the data name a flow and no pressure. */
    @Nullable
    public Double activationM3PerS() {
        return activationM3PerS;
    }

    /** Whether a pressure ahead of the throttle can switch the heat off. */
    public boolean byInlet() {
        return limits != null && unit.inletPossible();
    }

    /** Whether a pressure behind the throttle can, and is known. */
    public boolean byHeating() {
        return limits != null && unit.heatingPossible() && unit.downstream() != null && lowestHandsetM != null;
    }

    /** Path of what is missing to say when the heat goes off; empty where nothing is. */
    public String missing() {
        if (activationM3PerS != null || byHeating() || (byInlet() && !unit.heatingPossible())) {
            return "";
        }
        if (limits == null) {
            return "heater.makePressure";
        }
        return unit.downstream() == null ? "heater.downstreamPressure" : "survey.water.lowestHandset";
    }

    public double strainer() {
        return strainer;
    }

    public double breakPa() {
        return limits == null ? 0 : limits.breakPa();
    }

    /** Height of the lowest handset position over the unit, m; 0 where it is not known and nothing depends on it. */
    public double lowestHandsetM() {
        return lowestHandsetM == null ? 0 : lowestHandsetM;
    }

    public Solution inlet(HeldThrottle held) {
        return held.inletBreak(breakPa(), strainer);
    }

    public Solution heating(Fluid fluid) {
        Double downstream = unit.downstream();
        return downstream == null || downstream <= 0
                ? Solution.none(FailureReason.ALL_PRESSURE_LOST)
                : SwitchMargin.breakFlowInHeatingChamber(breakPa(), downstream, lowestHandsetM(), fluid);
    }

    /**
     * The smallest flow, m3/s, at which the heat may still be on; without a value where nothing known switches it off. Where the
     * place is not known this is the lower of both, for it is asked by how hot the water can get.
     */
    public Solution lowest(HeldThrottle held, Fluid fluid) {
        if (activationM3PerS != null) {
            return Solution.of(activationM3PerS);
        }
        Solution lowest = Solution.none(FailureReason.HELD_BY_HEIGHT);
        if (byInlet()) {
            lowest = inlet(held);
        }
        if (byHeating()) {
            Solution heating = heating(fluid);
            boolean both = byInlet() && lowest.isPresent() && heating.isPresent();
            lowest = both ? Solution.of(Math.min(lowest.value(), heating.value())) : heating;
        }
        return unit.heatingPossible() && !byHeating() ? Solution.none(FailureReason.HELD_BY_HEIGHT) : lowest;
    }
}
