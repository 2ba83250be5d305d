// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.protection;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CableRunWorking;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.formula.Working;
import twinfeed.model.survey.Earthing;

/**
 * Whether the readings of the earth path agree with one another: a loop impedance that Ze and the conductors do not explain is a bad
 * joint, whatever the limits of the device; a loop below the resistance of the electrode that it runs through is a reading gone wrong or an earth
 * that is not what it was taken for; and a Ze above what the supply usually has is a question to the network operator.
 */
public final class EarthPathChecks implements CheckGroup {
    /** Loop testers and earth testers may each be wrong by 30 % in use (IEC 61557-3 and -5; from memory). */
    private static final double TESTER_ERROR = 0.3;

    /** A loop below this share of its electrode is not explained by the testers: 0.54. */
    private static final double LEAST_SHARE = (1 - TESTER_ERROR) / (1 + TESTER_ERROR);

    /** What keys of the largest usual Ze begin with. */
    private static final String USUAL = "ze.usual.";

    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public EarthPathChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.EXTERNAL_LOOP, CircuitChecks.SUPPLY_EARTH, CircuitChecks.EARTH_PATH);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        externalLoop(findings);
        earthPath(findings);
    }

    private void externalLoop(Findings findings) {
        String supply = supply();
        Double externalOhm = survey.feed().externalOhm();
        if (supply == null || externalOhm == null) {
            findings.on(CircuitChecks.EXTERNAL_LOOP).add();
            findings.on(CircuitChecks.SUPPLY_EARTH).add();
            return;
        }
        String usual = USUAL + supply;
        external(findings.on(CircuitChecks.EXTERNAL_LOOP), externalOhm, usual).add();
        external(findings.on(CircuitChecks.SUPPLY_EARTH), externalOhm, "ze.most." + supply)
                .remedies(() -> remedies.supplyEarth(survey.rules().number(usual)))
                .add();
    }

    /** Ze against a figure of the rule set. */
    private FindingBuilder external(FindingBuilder finding, double externalOhm, String limit) {
        return finding.compare(externalOhm, survey.rules().number(limit))
                .argument("earthing", survey.feed().earthing() == Earthing.TN_CS ? "TN-C-S" : "TN-S")
                .source(survey.rules().source(limit))
                .working(() -> Working.start()
                        .input("Ze", "externalLoop", externalOhm, "Ω", "", ReadingPaths.EXTERNAL_LOOP)
                        .build());
    }

    /** What keys of the rule set end in for the present earthing, null where the earth does not come from the supply. */
    private @Nullable String supply() {
        Earthing earthing = survey.feed().earthing();
        if (earthing == Earthing.TN_CS) {
            return "tncs";
        }
        return earthing == Earthing.TN_S ? "tns" : null;
    }

    /**
     * Only readings can disagree: without a loop or R1 + R2 that was measured there is nothing to compare. Where Ze was not measured, a loop that the
     * largest usual one does not explain may be a lost earth or a supply out of the ordinary: only Ze tells.
     */
    private void earthPath(Findings findings) {
        Check check = CircuitChecks.EARTH_PATH;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        Double externalOhm = survey.feed().externalOhm();
        Double lineOhm = survey.readings().lineOhm();
        Double loopOhm = measuredOhm(externalOhm, lineOhm);
        Double expectedOhm = expectedLineOhm(lineOhm, survey.run().coldLoopOhm());
        if (survey.feed().ownElectrode()) {
            electrode(findings);
            return;
        }
        if (loopOhm == null || expectedOhm == null) {
            findings.on(check).add();
            return;
        }
        if (externalOhm == null) {
            withoutExternal(findings, loopOhm - expectedOhm);
            return;
        }
        findings.on(check)
                .compare(loopOhm - externalOhm - expectedOhm, survey.rules().number("loop.unexplained"))
                .argument("loop", loopOhm)
                .argument("external", externalOhm)
                .argument("line", expectedOhm)
                .source(survey.rules().source("loop.unexplained"))
                .working(() -> working(externalOhm, lineOhm))
                .remedies(remedies::earthPath)
                .add();
    }

    /**
     * The loop through an electrode has the electrode in it. A much smaller one tells that one of the two was misread, or that the earth runs another
     * way too; which, only somebody on site finds out.
     */
    private void electrode(Findings findings) {
        Double electrodeOhm = survey.feed().electrodeOhm();
        Double loopOhm = survey.readings().loopOhm();
        FindingBuilder finding = findings.on(CircuitChecks.EARTH_PATH).variant("electrode");
        if (electrodeOhm != null && loopOhm != null && loopOhm < LEAST_SHARE * electrodeOhm) {
            finding.cannotTell(List.of(ReadingPaths.ELECTRODE, ReadingPaths.MEASURED_LOOP))
                    .argument("loop", loopOhm)
                    .argument("electrode", electrodeOhm);
        }
        finding.add();
    }

    private void withoutExternal(Findings findings, double leftOhm) {
        String supply = supply();
        boolean explained = supply == null
                || !LimitType.exceeds(
                        leftOhm,
                        survey.rules().number(USUAL + supply) + survey.rules().number("loop.unexplained"));
        FindingBuilder finding = findings.on(CircuitChecks.EARTH_PATH);
        (explained ? finding : finding.cannotTell(List.of(ReadingPaths.EXTERNAL_LOOP))).add();
    }

    private Working working(double externalOhm, @Nullable Double lineOhm) {
        Working.Builder working =
                Working.start().input("Ze", "externalLoop", externalOhm, "Ω", "", ReadingPaths.EXTERNAL_LOOP);
        String line = "R12";
        if (lineOhm != null) {
            working.input("Rm", "measuredLine", lineOhm, "Ω", "", "survey.electricity.circuit.measuredLine");
            line = "Rm";
        }
        if (survey.run().coldLoopOhm() != null) {
            CableRunWorking.loops(working, survey);
            line = lineOhm == null ? line : "min(Rm, R12)";
        }
        Double loopOhm = survey.readings().loopOhm();
        if (loopOhm == null) {
            working.step("Zs", "measuredLoop", "Ze + Rm", "Ω", "");
        } else {
            working.input("Zs", "measuredLoop", loopOhm, "Ω", "", ReadingPaths.MEASURED_LOOP);
        }
        return working.step("dZ", "unexplainedLoop", "Zs - Ze - " + line, "Ω", "")
                .build();
    }

    private @Nullable Double measuredOhm(@Nullable Double externalOhm, @Nullable Double lineOhm) {
        Double loopOhm = survey.readings().loopOhm();
        if (loopOhm != null) {
            return loopOhm;
        }
        return externalOhm == null || lineOhm == null ? null : Double.valueOf(externalOhm + lineOhm);
    }

    /** What the conductors explain: the smaller of what they measured and what copper of their size and length has. */
    private static @Nullable Double expectedLineOhm(@Nullable Double measuredOhm, @Nullable Double tabulatedOhm) {
        if (measuredOhm == null || tabulatedOhm == null) {
            return measuredOhm == null ? tabulatedOhm : measuredOhm;
        }
        return Double.valueOf(Math.min(measuredOhm, tabulatedOhm));
    }
}
