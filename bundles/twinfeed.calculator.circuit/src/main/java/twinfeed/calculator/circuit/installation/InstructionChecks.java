// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.installation;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.OldCable;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.formula.Working;

/** What the instructions of heater and isolator allow: the largest device and the largest conductor. */
public final class InstructionChecks implements CheckGroup {
    /** A conductor of this size and more does not fit every terminal, mm2 (common practice). */
    private static final double LARGE_MM2 = 16;

    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public InstructionChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(
                CircuitChecks.INSTRUCTED_DEVICE,
                CircuitChecks.SMALLEST_CONDUCTOR,
                CircuitChecks.LARGE_CONDUCTOR,
                CircuitChecks.TERMINALS);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        device(shower, findings);
        smallest(shower, findings);
        terminals(shower, findings);
    }

    private void device(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.INSTRUCTED_DEVICE;
        Double mostA = SiValues.of(shower.heater().getMaximumDevice());
        if (mostA == null) {
            findings.on(check).add();
            return;
        }
        if (findings.blocked(check)) {
            return;
        }
        Double ratingA = survey.device().ratingA();
        if (ratingA == null) {
            findings.on(check)
                    .cannotTell(java.util.List.of(ReadingPaths.DEVICE_RATING))
                    .add();
            return;
        }
        FindingBuilder finding = findings.on(check).compare(ratingA, mostA).working(() -> Working.start()
                .input("In", "deviceRating", ratingA, "A", "", survey.device().ratingOrigin())
                .build());
        finding.remedies(() -> remedies.devicesUpTo(shower, mostA));
        finding.add();
    }

    /** Instructions may ask for a thicker cable than its current needs. */
    private void smallest(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.SMALLEST_CONDUCTOR;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        Double leastMm2 = SiValues.mm2(shower.heater().getMinimumConductor());
        if (leastMm2 == null) {
            findings.on(check).add();
            return;
        }
        Double sizeMm2 = survey.run().thinnestMm2();
        if (findings.blocked(check) || sizeMm2 == null) {
            return;
        }
        findings.on(check)
                .compare(SiValues.m2(sizeMm2), SiValues.m2(leastMm2))
                .working(() -> size(sizeMm2))
                .remedies(() -> remedies.cables(shower))
                .add();
    }

    private void terminals(ShowerCase shower, Findings findings) {
        Double heaterMm2 = SiValues.mm2(shower.heater().getMaximumConductor());
        Double isolatorMm2 = survey.isolator().conductorMm2();
        Double sizeMm2 = survey.run().lastSizeMm2();
        terminals(shower, findings, heaterMm2, isolatorMm2, sizeMm2);
        if (OldCable.skips(survey, findings, CircuitChecks.LARGE_CONDUCTOR)) {
            return;
        }
        if (findings.blocked(CircuitChecks.LARGE_CONDUCTOR) || sizeMm2 == null) {
            return;
        }
        // Only a note: that nobody knows a terminal is no reason to refuse the cable that everything else asks for.
        boolean known = heaterMm2 != null && isolatorMm2 != null;
        if (known || sizeMm2 < LARGE_MM2) {
            findings.on(CircuitChecks.LARGE_CONDUCTOR).add();
            return;
        }
        findings.on(CircuitChecks.LARGE_CONDUCTOR)
                .report(SiValues.m2(sizeMm2))
                .working(() -> size(sizeMm2))
                .add();
    }

    private void terminals(
            ShowerCase shower,
            Findings findings,
            @Nullable Double heaterMm2,
            @Nullable Double isolatorMm2,
            @Nullable Double sizeMm2) {
        Check check = CircuitChecks.TERMINALS;
        if (OldCable.skips(survey, findings, check)) {
            return;
        }
        if (heaterMm2 == null && isolatorMm2 == null) {
            findings.on(check).add();
            return;
        }
        if (findings.blocked(check) || sizeMm2 == null) {
            return;
        }
        double heater = heaterMm2 == null ? Double.MAX_VALUE : heaterMm2;
        double isolator = isolatorMm2 == null ? Double.MAX_VALUE : isolatorMm2;
        FindingBuilder finding = findings.on(check)
                .compare(SiValues.m2(sizeMm2), SiValues.m2(Math.min(heater, isolator)))
                .variant(isolator < heater ? "isolator" : "")
                .condition(Condition.NONE)
                .working(() -> size(sizeMm2));
        if (!LimitType.exceeds(sizeMm2, heater)) {
            finding.remedies(() -> remedies.renewedIsolators(shower));
        }
        finding.add();
    }

    private static Working size(double sizeMm2) {
        return Working.start().input("S", "conductorSize", sizeMm2, "mm²", "").build();
    }
}
