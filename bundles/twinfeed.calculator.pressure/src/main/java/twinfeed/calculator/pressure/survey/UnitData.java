// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.catalogue.SwitchPlace;
import twinfeed.units.Quantity;

/** What a heater's instructions say of its hydraulics, in SI; what they do not say is null. */
public final class UnitData {
    /** More than any datum of a heater, Pa; beyond it is a slip of the pen. */
    private static final double MOST_PA = 100e5;

    /** A tenth of a millilitre a minute: less is a slip of the pen, m3/s. */
    private static final double LEAST_FLOW = 1e-9 / 6;

    private final Heater heater;
    private final @Nullable Outlet need;
    private final @Nullable PressureSwitch pressureSwitch;
    private final @Nullable Double strainer;
    private final @Nullable Double downstream;

    public UnitData(Heater heater) {
        this.heater = heater;
        this.need = need(heater);
        this.pressureSwitch = pressureSwitch(heater);
        this.strainer = resistance(heater.getInletLoss(), heater.getInletLossFlow());
        this.downstream = resistance(heater.getDownstreamPressure(), heater.getDownstreamFlow());
    }

    private static @Nullable Outlet need(Heater heater) {
        return pressure(heater.getMinimumRunningPressure())
                        && heater.getMinimumRunningPressure().si() > 0
                        && flow(heater.getRunningPressureFlow())
                ? Outlet.ofPoint(
                        heater.getRunningPressureFlow().si(),
                        heater.getMinimumRunningPressure().si(),
                        0)
                : null;
    }

    /** Whether a datum is a pressure of this world. */
    private static boolean pressure(@Nullable Quantity quantity) {
        return quantity != null && quantity.si() >= 0 && quantity.si() <= MOST_PA;
    }

    /** Whether a datum is a flow that can be worked with. */
    public static boolean flow(@Nullable Quantity quantity) {
        return quantity != null && quantity.si() >= LEAST_FLOW && quantity.si() <= ReadingLimits.MAX_FLOW_M3_PER_S;
    }

    /** Without a break pressure the make pressure stands for it, which is on the safe side. */
    private static @Nullable PressureSwitch pressureSwitch(Heater heater) {
        if (!pressure(heater.getMakePressure())) {
            return null;
        }
        double makePa = heater.getMakePressure().si();
        double breakPa = heater.getBreakPressure() == null
                ? makePa
                : heater.getBreakPressure().si();
        return breakPa < 0 || breakPa > makePa ? null : new PressureSwitch(makePa, breakPa);
    }

    private static @Nullable Double resistance(@Nullable Quantity pressure, @Nullable Quantity flow) {
        return pressure == null || flow == null || !pressure(pressure) || !flow(flow)
                ? null
                : Double.valueOf(pressure.si() / (flow.si() * flow.si()));
    }

    /** Flow that brings the heat on, m3/s, or null. */
    @Nullable
    public Double activationM3PerS() {
        return flow(heater.getActivationFlow())
                ? Double.valueOf(heater.getActivationFlow().si())
                : null;
    }

    /** The heater itself. */
    public Heater heater() {
        return heater;
    }

    /** The least running pressure at its flow, as an outlet: a specification minimum that stands in for a loss curve. */
    public Optional<Outlet> need() {
        return Optional.ofNullable(need);
    }

    /** Its switch, or null where its make pressure is not known or make and break contradict one another. */
    @Nullable
    public PressureSwitch pressureSwitch() {
        return pressureSwitch;
    }

    /** Whether the switch may be ahead of the throttle. */
    public boolean inletPossible() {
        return !heater.isSetSwitchPlace() || heater.getSwitchPlace() == SwitchPlace.INLET_CHAMBER;
    }

    /** Whether the switch may be behind the throttle. */
    public boolean heatingPossible() {
        return !heater.isSetSwitchPlace() || heater.getSwitchPlace() == SwitchPlace.HEATING_CHAMBER;
    }

    /** Outlet temperature at which the thermal cut-out is expected to open, degC; unlimited where nobody says. */
    public double cutOutC() {
        return heater.getCutOutTemperature() == null
                ? Double.POSITIVE_INFINITY
                : heater.getCutOutTemperature().si();
    }

    /** Loss of strainer and solenoid valve over the square of the flow, Pa/(m3/s)2, or null. */
    @Nullable
    public Double strainer() {
        return strainer;
    }

    /** Pressure behind the throttle over the square of the flow, Pa/(m3/s)2, or null. */
    @Nullable
    public Double downstream() {
        return downstream;
    }
}
