// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.flow;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Condition;
import twinfeed.calculator.Context;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterSource;

/** The temperatures that are let in and asked for. */
final class TemperatureAdvice {
    private static final String INSTRUCTIONS = "maker's instructions";
    private static final String SCALD =
            "41 °C: healthcare maximum at a shower (NHS guidance, read second hand); 44 °C: judgement";

    private final TargetOutlet target;
    private final double flagC;
    private final double strongC;
    private final boolean vulnerable;
    private final @Nullable Double readingC;
    private final boolean hotFeed;

    TemperatureAdvice(Context context, TargetOutlet target) {
        Survey survey = context.survey();
        this.target = target;
        this.flagC = context.parameters().si("flag");
        this.strongC = context.parameters().si("strong");
        this.vulnerable = survey.getCustomer() != null
                && Boolean.TRUE.equals(survey.getCustomer().getVulnerable());
        this.hotFeed = survey.getWater() != null && survey.getWater().getSource() == WaterSource.HOT;
        this.readingC = survey.getWater() == null || survey.getWater().getIntakeReading() == null
                ? null
                : Double.valueOf(survey.getWater().getIntakeReading().si());
    }

    void check(Candidate candidate, Findings findings) {
        intake(candidate.heater(), findings);
        outlet(findings);
    }

    /** Water that is warm already, from a tank in a hot loft or a solar panel, can overheat a unit made for the main. */
    private void intake(Heater heater, Findings findings) {
        FindingBuilder finding = findings.on(FlowChecks.INTAKE).outcome(Outcome.NOT_APPLICABLE);
        if (hotFeed) {
            // Whether the instructions allow a hot feed, and how hot, is said where the source of the water is judged.
            finding.variant("hot");
        } else if (heater.getMaximumIntake() != null) {
            int warmest = target.warmest();
            double monthC = target.intakeC(warmest);
            boolean measured = readingC != null && readingC > monthC;
            finding.compare(
                            measured ? readingC : monthC,
                            heater.getMaximumIntake().si())
                    .variant(measured ? "measured" : "")
                    .condition(
                            measured
                                    ? Condition.NONE
                                    : Condition.of(target.grid().intakes().get(warmest), null, null));
        }
        finding.source(INSTRUCTIONS).add();
    }

    private void outlet(Findings findings) {
        findings.on(FlowChecks.OUTLET)
                .compare(target.outletC(), flagC)
                .variant(warning())
                .argument("strong", strongC)
                .source(SCALD)
                .working(() -> Working.start()
                        .input("T_out", "outlet", target.outletC(), "°C", "", "survey.targetOutlet")
                        .build())
                .add();
    }

    private String warning() {
        String strength = target.outletC() >= strongC ? "strong" : "";
        if (!vulnerable) {
            return strength;
        }
        return strength.isEmpty() ? "vulnerable" : "strongVulnerable";
    }
}
