// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import twinfeed.calculator.FindingBuilder;
import twinfeed.model.catalogue.Heater;

/** The running pressure at the unit's inlet, at the flow that its instructions name, with the house otherwise shut. */
final class RunningPressure implements PressureAnswer {
    private static final String SOURCE = "maker's instructions; form of NFPA 291 and Darcy-Weisbach";

    @Override
    public void answer(HeaterCase heater) {
        FeedConditions feed = heater.feed(PressureChecks.RUNNING_PRESSURE);
        if (feed == null) {
            return;
        }
        Heater data = heater.unit().heater();
        double flow = data.getRunningPressureFlow().si();
        if (flow <= 0) {
            heater.cannotTell(PressureChecks.RUNNING_PRESSURE, "heater.runningPressureFlow");
            return;
        }
        // The coldest water is the thickest.
        int intake = feed.coldest();
        double inletPa = feed.at(intake).inletPa(flow, 0);
        FindingBuilder finding = heater.on(PressureChecks.RUNNING_PRESSURE)
                .compare(
                        inletPa / FeedWorking.BAR,
                        data.getMinimumRunningPressure().si() / FeedWorking.BAR)
                .condition(feed.shut(intake))
                .argument("flow", flow * FeedWorking.L_PER_MIN)
                .source(SOURCE)
                .working(() -> FeedWorking.inlet(feed.feed(), feed.intakeC(intake), flow));
        finding.add();
    }
}
