// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import java.util.function.Consumer;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.StandInCalculator;
import twinfeed.calculator.engine.Runner;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;

/** Assesses variants of the sample house. */
final class Houses {
    private Houses() {}

    static Runner runner() {
        return new Runner(
                List.of(
                        new PressureCalculator(),
                        new StandInCalculator(List.of(SharedQuantity.TARGET_FLOW, SharedQuantity.DELIVERED_POWER))),
                (mean, spread, day, southern) -> mean);
    }

    static List<Finding> findings(Survey survey, Heater heater, boolean present) {
        return runner().assess(survey, List.of(new Candidate(heater, present)))
                .options()
                .get(0)
                .findings();
    }

    /** A finding with works done in the second survey, a copy of the first. */
    static Finding finding(Survey surveyed, Survey changed, Heater heater, String check) {
        return runner().judge(surveyed, changed, new Candidate(heater, false)).findings().stream()
                .filter(finding -> finding.check().key().equals(check))
                .findFirst()
                .orElseThrow();
    }

    static Finding finding(Survey survey, Heater heater, String check) {
        return findings(survey, heater, false).stream()
                .filter(finding -> finding.check().key().equals(check))
                .findFirst()
                .orElseThrow();
    }

    static Finding finding(String check, Consumer<Survey> survey, Consumer<Heater> heater) {
        Survey house = Samples.survey();
        Heater unit = Samples.heater();
        survey.accept(house);
        heater.accept(unit);
        return finding(house, unit, check);
    }
}
