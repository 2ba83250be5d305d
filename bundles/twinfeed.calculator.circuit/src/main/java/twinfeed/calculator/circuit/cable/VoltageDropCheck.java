// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import java.util.ArrayList;
import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FeedProfile;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Series;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.MissingData;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CableRunWorking;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.formula.Working;
import twinfeed.engineering.cable.Cable;
import twinfeed.engineering.cable.CableSegment;
import twinfeed.units.Kind;

/** The voltage drop against its limit: tabulated values at full conductor temperature and the design current. */
public final class VoltageDropCheck implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public VoltageDropCheck(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.VOLTAGE_DROP);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.VOLTAGE_DROP;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        ShowerLoad load = shower.load();
        List<CableSegment> run = survey.run().resistive();
        if (load == null || run == null) {
            unknown(shower, findings, check);
            return;
        }
        double limitV = survey.dropLimitV();
        double dropV = Cable.voltageDropV(run, load.designA());
        FindingBuilder finding = findings.on(check)
                .compare(dropV, limitV)
                .argument("percent", 100 * dropV / survey.rules().number("voltage.nominal"))
                .argument("current", load.designA())
                .source(survey.cite("drop"))
                .series(() -> voltages(run, load.designA()))
                .working(() -> working(load));
        finding.remedies(() -> remedies.cables(shower));
        finding.add();
    }

    /** The voltage at the origin and at the far end of each piece, with the drop that the check counts. */
    private Series voltages(List<CableSegment> run, double designA) {
        int points = run.size() + 1;
        double[] x = new double[points];
        double[] y = new double[points];
        List<String> labels = new ArrayList<>(List.of(FeedProfile.START));
        double originV = survey.grid().voltage(survey.grid().nominal());
        y[0] = originV;
        for (int i = 1; i < points; i++) {
            labels.add(survey.run().segments().get(i - 1).name());
            x[i] = x[i - 1] + run.get(i - 1).lengthM();
            y[i] = originV - Cable.voltageDropV(run.subList(0, i), designA);
        }
        return new Series(
                FeedProfile.VOLTAGE,
                Series.Axis.of("distance", Kind.LENGTH),
                Series.Axis.of("voltage", Kind.VOLTAGE),
                labels,
                x,
                y);
    }

    private void unknown(ShowerCase shower, Findings findings, Check check) {
        if (shower.load() == null) {
            findings.on(check).cannotTell(shower.missingRating()).add();
            return;
        }
        MissingData.add(findings, check, survey.run().loopGap());
    }

    private Working working(ShowerLoad load) {
        Working.Builder working = survey.addDropLimit(load.working(), LimitType.SYMBOL);
        CableRunWorking.drops(working, survey);
        return working.build();
    }
}
