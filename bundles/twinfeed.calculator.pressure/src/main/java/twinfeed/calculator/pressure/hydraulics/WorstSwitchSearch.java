// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import twinfeed.engineering.heater.PressureSwitch;
import twinfeed.engineering.heater.SwitchMargin;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.model.catalogue.SwitchPlace;

/**
 * Finds the condition in which the switch of a unit has the smallest margin.
 *
 * <p>Ahead of the throttle the pressure falls with the flow and with open taps, so the worst is the largest flow at the highest
 * voltage with most taps open. The target flow grows faster with the intake temperature than the water's thinning lowers its
 * losses, so that is the warmest month, unless the feed limits the flow there: then the months in which it does are looked at,
 * for in all others more than the unit's need is left. Behind the throttle the pressure is that of the flow, so the worst is the smallest flow.
 */
public final class WorstSwitchSearch {
    private final FeedConditions feed;
    private final UnitFlows flows;
    private final PressureSwitch limits;
    private final double strainer;

    public WorstSwitchSearch(FeedConditions feed, UnitFlows flows, PressureSwitch limits, double strainer) {
        this.feed = feed;
        this.flows = flows;
        this.limits = limits;
        this.strainer = strainer;
    }

    /** The worst condition of a switch ahead of the throttle. There must be something to heat. */
    public SwitchState inlet() {
        int open = feed.mostOpen();
        int voltage = feed.highestVoltage();
        SwitchState worst = inlet(flows.running(flows.largestTarget(), voltage, open));
        for (int i = 0; worst.point().limited() && i < feed.grid().intakes().size(); i++) {
            OperatingPoint point = flows.running(i, voltage, open);
            if (point.flowM3PerS() > 0 && point.limited()) {
                worst = SwitchState.worse(worst, inlet(point));
            }
        }
        return worst;
    }

    /** The switch ahead of the throttle in one condition: what it needs to close is more than what keeps it closed. */
    public SwitchState inlet(OperatingPoint point) {
        double flow = point.flowM3PerS();
        double inletPa = inletPa(point);
        return new SwitchState(
                SwitchPlace.INLET_CHAMBER,
                true,
                point,
                SwitchMargin.inletChamberPa(inletPa, strainer, flow),
                limits.makePa());
    }

    /** Where the feed limits the flow, its pressure is the unit's need. */
    private double inletPa(OperatingPoint point) {
        Outlet fullBore = flows.fullBore();
        return point.limited() && fullBore != null
                ? fullBore.pressureAt(point.flowM3PerS())
                : feed.at(point.intake()).inletPa(point.flowM3PerS(), point.open());
    }

    /** The worst condition of a switch behind the throttle. */
    public SwitchState heating(double downstream, double lowestHandsetM) {
        return heating(flows.smallest(), downstream, lowestHandsetM);
    }

    /** The switch behind the throttle in one condition: it closes with an empty hose and stays closed with the handset low. */
    public SwitchState heating(OperatingPoint point, double downstream, double lowestHandsetM) {
        return SwitchState.worse(
                heating(point, downstream, 0, true), heating(point, downstream, lowestHandsetM, false));
    }

    private SwitchState heating(OperatingPoint point, double downstream, double handsetM, boolean making) {
        double switchPa = SwitchMargin.heatingChamberPa(
                downstream,
                point.flowM3PerS(),
                handsetM,
                feed.at(point.intake()).fluid());
        return new SwitchState(
                SwitchPlace.HEATING_CHAMBER, making, point, switchPa, making ? limits.makePa() : limits.breakPa());
    }
}
