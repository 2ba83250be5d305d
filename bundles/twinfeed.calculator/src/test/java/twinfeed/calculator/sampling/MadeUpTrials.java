// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.SyntheticCalculator;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Kind;

/** Trials of made-up checks in a made-up house. */
final class MadeUpTrials {
    static final Check CHECK = Check.of("made.up", FindingClass.SAFETY, LimitType.AT_LEAST, Kind.RATIO);

    private MadeUpTrials() {}

    /** A flow of 10 L/min within 1, and a loop of 0.5 ohm within so much. */
    static Survey house(String loopTolerance) {
        return Fixtures.survey("10 L/min ± 1 L/min", "0.5 ohm ± " + loopTolerance);
    }

    /** A house with two pieces of cable of method 102, which may be 103; their lengths are certain. */
    static Survey wired() {
        Survey survey = SampleHouse.wired();
        for (String name : List.of("loft", "wall")) {
            CableSegment cable = SurveyFactory.eINSTANCE.createCableSegment();
            cable.setName(name);
            cable.setMethod("102");
            cable.setConfidence(Confidence.ASSUMED);
            survey.getElectricity().getCircuit().getSegments().add(cable);
        }
        return survey;
    }

    /** How many pieces of cable are of method 103. */
    static long moved(Survey survey) {
        return survey.getElectricity().getCircuit().getSegments().stream()
                .filter(cable -> "103".equals(cable.getMethod()))
                .count();
    }

    static double flow(Survey survey) {
        return survey.getWater().getTest().getFlow().si() * 60_000;
    }

    static double loop(Survey survey) {
        return survey.getElectricity().getExternalLoop().si();
    }

    static Trials of(Survey survey, BiConsumer<Survey, Findings> answers, Check... checks) {
        Runner runner = Fixtures.runner(new SyntheticCalculator("made-up", Arrays.asList(checks), answers));
        SampledInputs inputs = SampledInputs.of(survey, survey, RuleSets.standard());
        return new Trials(
                runner, survey, survey, Fixtures.candidate(), inputs, runner.judge(survey, Fixtures.candidate()), null);
    }

    /** Trials of a check whose value is the flow and the loop in one sum. */
    static Trials ofSum(String loopTolerance, double limit) {
        return of(
                house(loopTolerance),
                (survey, findings) -> findings.on(CHECK)
                        .compare(flow(survey) + loop(survey), limit)
                        .add(),
                CHECK);
    }
}
