// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Context;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.pressure.check.SurveyedHouse;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.model.survey.Survey;

/** The feed as the calculator maps it. */
final class Mapped {
    private Mapped() {}

    /** A calculator that only looks at its context. */
    private record Peek(List<Feed> seen) implements Calculator {
        @Override
        public CalculatorDescriptor descriptor() {
            return new CalculatorDescriptor(
                    "peek",
                    "1",
                    Runner.TEXTS,
                    List.of(),
                    List.of(),
                    List.of(),
                    new PressureCalculator().descriptor().parameters(),
                    List.of());
        }

        @Override
        public Assessor prepare(Context context) {
            seen.add(Objects.requireNonNull(SurveyedHouse.of(context).feed()).feed());
            return (candidate, shared, findings) -> {};
        }
    }

    static Feed feed(Survey survey) {
        return feed(survey, survey);
    }

    /** The feed of a house with works done. */
    static Feed feed(Survey surveyed, Survey changed) {
        Peek peek = new Peek(new ArrayList<>());
        new Runner(List.of(peek), (mean, spread, day, southern) -> mean)
                .judge(surveyed, changed, new Candidate(Samples.heater(), false));
        return peek.seen().get(0);
    }
}
