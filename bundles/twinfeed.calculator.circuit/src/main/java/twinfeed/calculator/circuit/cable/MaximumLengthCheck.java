// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Series;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.MissingData;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.rules.CableSize;
import twinfeed.engineering.cable.Cable;
import twinfeed.units.Kind;

/** How long the cable may be before the voltage drop passes its limit. */
public final class MaximumLengthCheck implements CheckGroup {
    private final CircuitSurvey survey;

    public MaximumLengthCheck(CircuitSurvey survey) {
        this.survey = survey;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.LONGEST_RUN);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.LONGEST_RUN;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        ShowerLoad load = shower.load();
        CableSize size = survey.run().segments().get(0).size();
        if (load == null || size == null) {
            if (load == null) {
                findings.on(check).cannotTell(shower.missingRating()).add();
            } else {
                MissingData.add(findings, check, survey.run().placingGap());
            }
            return;
        }
        findings.on(check)
                .report(longestM(size, load))
                .argument("size", CodeNumbers.number(size.sizeMm2()))
                .source(survey.cite("drop"))
                .series(() -> series(load, size.cable()))
                .working(() -> working(load, size))
                .add();
    }

    private double longestM(CableSize size, ShowerLoad load) {
        return Cable.longestRunByDropM(survey.dropLimitV(), 0, size.dropVPerAm(), load.designA())
                .orElse(0);
    }

    private Series series(ShowerLoad load, String cable) {
        List<CableSize> sizes = survey.rules().cables().sizes(cable);
        return new Series(
                "longestRun",
                Series.Axis.of("cableSize", Kind.AREA),
                Series.Axis.of("length", Kind.LENGTH),
                sizes.stream().map(size -> CodeNumbers.number(size.sizeMm2())).toList(),
                sizes.stream().mapToDouble(size -> SiValues.m2(size.sizeMm2())).toArray(),
                sizes.stream().mapToDouble(size -> longestM(size, load)).toArray());
    }

    private Working working(ShowerLoad load, CableSize size) {
        return survey.addDropLimit(load.working(), "dUmax")
                .input(
                        "g",
                        "dropGradient",
                        Kind.GRADIENT_VOLTAGE.amount(size.dropVPerAm()),
                        survey.rules().tableSource("cables"))
                .step("L", "longestRun", "dUmax / (g / 1000 * Ib)", "m", survey.cite("drop"))
                .build();
    }
}
