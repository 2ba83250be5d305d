// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Working;
import twinfeed.engineering.Cable;
import twinfeed.engineering.CableSegment;

/** The voltage drop against its limit: tabulated values at full conductor temperature and the design current. */
final class DropJudge implements Judge {
    private final CircuitSurvey survey;
    private final CircuitWorks works;

    DropJudge(CircuitSurvey survey, CircuitWorks works) {
        this.survey = survey;
        this.works = works;
    }

    @Override
    public void judge(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.VOLTAGE_DROP;
        if (findings.blocked(check)) {
            return;
        }
        ShowerLoad load = shower.load();
        List<CableSegment> run = survey.run().resistive();
        if (load == null || run == null) {
            unknown(shower, findings, check);
            return;
        }
        double limitV = survey.rules().number("drop.limit") * survey.rules().number("voltage.nominal");
        double dropV = Cable.voltageDropV(run, load.designA());
        FindingBuilder finding = findings.on(check)
                .compare(dropV, limitV)
                .argument("percent", 100 * dropV / survey.rules().number("voltage.nominal"))
                .argument("current", load.designA())
                .source(survey.cite("drop"))
                .working(() -> working(load));
        if (dropV > limitV) {
            works.cables(shower).forEach(finding::remedy);
        }
        finding.add();
    }

    private void unknown(ShowerCase shower, Findings findings, Check check) {
        if (shower.load() == null) {
            findings.on(check).cannotTell(shower.missingRating()).add();
            return;
        }
        Gaps.add(findings, check, survey.run().loopGap());
    }

    private Working working(ShowerLoad load) {
        Working.Builder working = LoadJudge.working(load);
        RunWorking.drops(working, survey);
        return working.build();
    }
}
