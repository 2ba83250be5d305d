// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Flow;
import twinfeed.units.Length;
import twinfeed.units.Pressure;

/** A worse reading never gives a better verdict: less pressure, longer pipes, a larger draw-off of others. */
class WorseReadingProperties {
    private enum Worse {
        LESS_PRESSURE {
            @Override
            void make(Survey survey, double share) {
                WaterTest test = survey.getWater().getTest();
                double less = share * test.getRunningPressure().si();
                test.setStaticPressure(Pressure.ofSi(test.getStaticPressure().si() - less));
                test.setRunningPressure(Pressure.ofSi(test.getRunningPressure().si() - less));
            }
        },
        WEAKER_SUPPLY {
            @Override
            void make(Survey survey, double share) {
                WaterTest test = survey.getWater().getTest();
                test.setRunningPressure(
                        Pressure.ofSi((1 - share) * test.getRunningPressure().si()));
            }
        },
        LONGER_PIPE {
            @Override
            void make(Survey survey, double share) {
                int last = survey.getWater().getSegments().size() - 1;
                PipeSegment branch = survey.getWater().getSegments().get(last);
                branch.setLength(
                        Length.ofSi((1 + 10 * share) * branch.getLength().si()));
            }
        },
        LARGER_DRAW_OFF {
            @Override
            void make(Survey survey, double share) {
                DrawOff tap = survey.getWater().getDrawOffs().get(0);
                tap.setFlow(Flow.ofSi((1 + share) * tap.getFlow().si()));
            }
        };

        abstract void make(Survey survey, double share);
    }

    @Property(tries = 150)
    void neverABetterVerdict(
            @ForAll Worse worse,
            @ForAll @DoubleRange(min = 0.01, max = 0.5) double share,
            @ForAll @DoubleRange(min = 1, max = 5) double staticBar,
            @ForAll @DoubleRange(min = 0.3, max = 0.95) double runningShare,
            @ForAll @IntRange(min = 8, max = 20) int testFlow,
            @ForAll @IntRange(min = 3, max = 12) int tap,
            @ForAll @DoubleRange(min = 0.1, max = 0.6) double makeBar) {
        Survey survey = Samples.survey();
        WaterTest test = survey.getWater().getTest();
        test.setStaticPressure(Pressure.ofSi(staticBar * 1e5));
        test.setRunningPressure(Pressure.ofSi(runningShare * staticBar * 1e5));
        test.setFlow(Flow.valueOf(testFlow + " L/min"));
        survey.getWater().getDrawOffs().get(0).setFlow(Flow.valueOf(tap + " L/min"));
        Survey changed = EcoreUtil.copy(survey);
        worse.make(changed, share);
        assertTrue(
                rank(changed, heater(makeBar)) >= rank(survey, heater(makeBar)),
                () -> worse + " by " + share + " makes the verdict better");
    }

    private static Heater heater(double makeBar) {
        Heater heater = Samples.heater();
        heater.setMakePressure(Pressure.ofSi(makeBar * 1e5));
        heater.setBreakPressure(Pressure.ofSi(makeBar * 0.7e5));
        heater.setActivationFlow(null);
        return heater;
    }

    /** 2 where a deciding check fails, 1 where one cannot be told, 0 otherwise. */
    private static int rank(Survey survey, Heater heater) {
        return Houses.runner().judge(survey, new Candidate(heater, false)).findings().stream()
                .filter(finding -> finding.check().deciding())
                .map(Finding::outcome)
                .mapToInt(outcome -> outcome == Outcome.FAILS
                        ? 2
                        : outcome == Outcome.PASSES || outcome == Outcome.NOT_APPLICABLE ? 0 : 1)
                .max()
                .orElse(0);
    }
}
