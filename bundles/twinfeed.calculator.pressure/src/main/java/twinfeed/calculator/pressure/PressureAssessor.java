// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Context;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;

/** Judges the pressure at heaters in one house. */
final class PressureAssessor implements Assessor {
    private final House house;
    private final List<PressureAnswer> answers;

    PressureAssessor(Context context) {
        this.house = House.of(context);
        this.answers = List.of(
                new SupplyAnswer(),
                new RunningPressure(),
                new SwitchAnswer(),
                new ThrottleAnswer(),
                new DropOut(),
                new TapOpens(),
                new SummerAnswer(),
                new PipeAnswer(),
                new WaterAnswer());
    }

    @Override
    public void assess(Candidate candidate, SharedQuantities exchange, Findings findings) {
        HeaterCase heater = new HeaterCase(house, candidate, exchange, findings);
        for (PressureAnswer answer : answers) {
            answer.answer(heater);
        }
    }
}
