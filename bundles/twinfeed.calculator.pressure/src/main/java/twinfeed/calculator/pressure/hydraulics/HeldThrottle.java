// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.hydraulics;

import org.jspecify.annotations.Nullable;
import twinfeed.engineering.heater.SwitchMargin;
import twinfeed.engineering.heater.Throttle;
import twinfeed.engineering.numeric.FailureReason;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.pipe.Outlet;

/**
 * A unit whose throttle stays where it is while a tap opens.
 *
 * @param before the condition before: all taps shut
 * @param inletPa pressure at its inlet before, Pa
 * @param outlet the unit from then on: with its throttle held or, where it holds its flow by itself, with that valve fully open
 * @param stabilised whether it holds its flow by itself
 */
public record HeldThrottle(OperatingPoint before, double inletPa, Outlet outlet, boolean stabilised) {
    /**
     * The unit as it is set for the target temperature, or null where no water reaches it.
     *
     * @param open a unit that holds its flow, with its valve fully open, or null for one that does not
     */
    public static @Nullable HeldThrottle of(FeedConditions feed, OperatingPoint before, @Nullable Outlet open) {
        double flow = before.flowM3PerS();
        double inletPa = flow > 0 ? feed.at(before.intake()).inletPa(flow, 0) : 0;
        if (inletPa <= 0) {
            return null;
        }
        if (open != null && open.pressureAt(flow) < inletPa) {
            return new HeldThrottle(before, inletPa, open, true);
        }
        return new HeldThrottle(before, inletPa, Throttle.held(flow, inletPa, 0), false);
    }

    /** Flow through the unit with the first taps open, m3/s. */
    public double flowWith(FeedConditions feed, int open) {
        double flow = before.flowM3PerS();
        FeedHydraulics hydraulics = feed.at(before.intake());
        return stabilised && hydraulics.inletPa(flow, open) >= outlet.pressureAt(flow)
                ? flow
                : hydraulics.flowThrough(outlet, open);
    }

    /** Flow at which a switch ahead of the throttle opens, m3/s. */
    Solution inletBreak(double breakPa, double strainer) {
        return SwitchMargin.breakFlowInInletChamber(breakPa, outlet, strainer);
    }

    /** The draw-off of others, m3/s, at which the unit is down to a flow. */
    public Solution drawOff(FeedConditions feed, Solution breakFlow) {
        if (!breakFlow.isPresent()) {
            return breakFlow.trouble() == FailureReason.HELD_BY_HEIGHT
                    ? Solution.none(FailureReason.NEVER_REACHED)
                    : Solution.none(FailureReason.BELOW_WITHOUT_DRAW_OFF);
        }
        double flow = breakFlow.value();
        return flow >= before.flowM3PerS()
                ? Solution.none(FailureReason.BELOW_WITHOUT_DRAW_OFF)
                : feed.at(before.intake()).drawOffAt(flow, outlet.pressureAt(flow));
    }
}
