// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Context;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.pressure.check.CheckGroup;
import twinfeed.calculator.pressure.check.DrawOffEffect;
import twinfeed.calculator.pressure.check.HeaterCase;
import twinfeed.calculator.pressure.check.InstallationChecks;
import twinfeed.calculator.pressure.check.PipeChecks;
import twinfeed.calculator.pressure.check.RunningPressureChecks;
import twinfeed.calculator.pressure.check.SourceChecks;
import twinfeed.calculator.pressure.check.SummerChecks;
import twinfeed.calculator.pressure.check.SupplyChecks;
import twinfeed.calculator.pressure.check.SurveyedHouse;
import twinfeed.calculator.pressure.check.SwitchChecks;
import twinfeed.calculator.pressure.check.SwitchDropOut;
import twinfeed.calculator.pressure.check.ThrottleCheck;

/** Judges the pressure at heaters in one house. */
final class PressureAssessor implements Assessor {
    private final SurveyedHouse house;
    private final List<CheckGroup> answers;

    PressureAssessor(Context context) {
        this.house = SurveyedHouse.of(context);
        this.answers = List.of(
                new SourceChecks(),
                new SupplyChecks(),
                new RunningPressureChecks(),
                new SwitchChecks(),
                new ThrottleCheck(),
                new SwitchDropOut(),
                new DrawOffEffect(),
                new SummerChecks(),
                new PipeChecks(),
                new InstallationChecks());
    }

    @Override
    public void assess(Candidate candidate, SharedQuantities shared, Findings findings) {
        HeaterCase heater = new HeaterCase(house, candidate, shared, findings);
        for (CheckGroup answer : answers) {
            if (findings.asks(answer.checks()) || shared.asks(answer.provides())) {
                answer.answer(heater);
            }
        }
    }
}
