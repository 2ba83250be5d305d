// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import org.jspecify.annotations.Nullable;
import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.engineering.heater.SwitchMargin;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Fluid;

/** At what flow the heat of a unit goes off, by what its data say: a flow, or pressures at one place or another. */
final class Breaks {
    private final UnitData unit;
    private final @Nullable PressureSwitch limits;
    private final @Nullable Double activationM3PerS;
    private final double strainer;
    private final @Nullable Double lowestHandsetM;

    Breaks(HeaterCase heater) {
        this.unit = heater.unit();
        this.limits = unit.pressureSwitch();
        this.activationM3PerS = limits == null ? unit.activationM3PerS() : null;
        this.strainer = limits == null ? 0 : SwitchAnswer.strainer(heater);
        this.lowestHandsetM = heater.house().lowestHandsetM();
    }

    /** The flow, m3/s, where the data name a flow and no pressure. */
    @Nullable
    Double activationM3PerS() {
        return activationM3PerS;
    }

    /** Whether a pressure ahead of the throttle can switch the heat off. */
    boolean byInlet() {
        return limits != null && unit.inletPossible();
    }

    /** Whether a pressure behind the throttle can, and is known. */
    boolean byHeating() {
        return limits != null && unit.heatingPossible() && unit.downstream() != null && lowestHandsetM != null;
    }

    /** Path of what is missing to say when the heat goes off; empty where nothing is. */
    String missing() {
        if (activationM3PerS != null || byHeating() || (byInlet() && !unit.heatingPossible())) {
            return "";
        }
        if (limits == null) {
            return "heater.makePressure";
        }
        return unit.downstream() == null ? "heater.downstreamPressure" : "survey.water.lowestHandset";
    }

    double strainer() {
        return strainer;
    }

    double breakPa() {
        return limits == null ? 0 : limits.breakPa();
    }

    /** Height of the lowest handset position over the unit, m; 0 where it is not known and nothing depends on it. */
    double lowestHandsetM() {
        return lowestHandsetM == null ? 0 : lowestHandsetM;
    }

    Solution inlet(HeldUnit held) {
        return held.inletBreak(breakPa(), strainer);
    }

    Solution heating(Fluid fluid) {
        Double downstream = unit.downstream();
        return downstream == null || downstream <= 0
                ? Solution.none(FailureReason.ALL_PRESSURE_LOST)
                : SwitchMargin.breakFlowInHeatingChamber(breakPa(), downstream, lowestHandsetM(), fluid);
    }

    /**
     * The smallest flow, m3/s, at which the heat may still be on; without a value where nothing known switches it off. Where the
     * place is not known this is the lower of both, for it is asked by how hot the water can get.
     */
    Solution lowest(HeldUnit held, Fluid fluid) {
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
