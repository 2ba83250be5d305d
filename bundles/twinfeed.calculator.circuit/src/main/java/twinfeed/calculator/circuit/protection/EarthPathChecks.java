// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.protection;

import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Working;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.model.survey.Earthing;

/**
 * Whether the readings of the earth path agree with one another: a loop impedance that Ze and the conductors do not explain is a bad
 * joint, whatever the limits of the device; and a Ze above what the supply usually has is a question to the network operator.
 */
public final class EarthPathChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public EarthPathChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        externalLoop(findings);
        earthPath(findings);
    }

    private void externalLoop(Findings findings) {
        Check check = CircuitChecks.EXTERNAL_LOOP;
        Double externalOhm = survey.feed().externalOhm();
        String usual = usualKey();
        if (usual == null || externalOhm == null) {
            findings.on(check).add();
            return;
        }
        findings.on(check)
                .compare(externalOhm, survey.rules().number(usual))
                .argument("earthing", survey.feed().earthing() == Earthing.TN_CS ? "TN-C-S" : "TN-S")
                .source(survey.rules().source(usual))
                .working(() -> Working.start()
                        .input("Ze", "externalLoop", externalOhm, "ohm", "")
                        .build())
                .add();
    }

    private @Nullable String usualKey() {
        Earthing earthing = survey.feed().earthing();
        if (earthing == Earthing.TN_CS) {
            return "ze.usual.tncs";
        }
        return earthing == Earthing.TN_S ? "ze.usual.tns" : null;
    }

    /** Only readings can disagree: without a loop or R1 + R2 that was measured there is nothing to compare. */
    private void earthPath(Findings findings) {
        Check check = CircuitChecks.EARTH_PATH;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        Double externalOhm = survey.feed().externalOhm();
        Double lineOhm = survey.readings().lineOhm();
        Double loopOhm = measuredOhm(externalOhm, lineOhm);
        Double expectedOhm = expectedLineOhm(lineOhm, survey.run().coldLoopOhm());
        if (survey.feed().ownElectrode() || loopOhm == null || externalOhm == null || expectedOhm == null) {
            findings.on(check).add();
            return;
        }
        findings.on(check)
                .compare(loopOhm - externalOhm - expectedOhm, survey.rules().number("loop.unexplained"))
                .argument("loop", loopOhm)
                .argument("external", externalOhm)
                .argument("line", expectedOhm)
                .source(survey.rules().source("loop.unexplained"))
                .working(() -> Working.start()
                        .input("Zs", "measuredLoop", loopOhm, "ohm", "")
                        .input("Ze", "externalLoop", externalOhm, "ohm", "")
                        .input("R12", "coldLoop", expectedOhm, "ohm", "")
                        .step("dZ", "unexplainedLoop", "Zs - Ze - R12", "ohm", "")
                        .build())
                .remedies(remedies::earthPath)
                .add();
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
