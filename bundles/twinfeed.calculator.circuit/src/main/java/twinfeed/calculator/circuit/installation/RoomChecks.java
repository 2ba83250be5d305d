// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.installation;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.model.assessment.Outcome;
import twinfeed.units.DisplayUnit;

/** The room with the shower: zones, protection against water, supplementary bonding. */
public final class RoomChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;
    private final Context context;

    public RoomChecks(CircuitSurvey survey, CircuitRemedies remedies, Context context) {
        this.survey = survey;
        this.remedies = remedies;
        this.context = context;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.ZONES, CircuitChecks.INGRESS, CircuitChecks.SUPPLEMENTARY);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        zones(findings);
        ingress(shower, findings);
        supplementary(shower, findings);
    }

    private void zones(Findings findings) {
        Check check = CircuitChecks.ZONES;
        Boolean outside = survey.room().outsideZones();
        if (outside == null) {
            findings.on(check).cannotTell(List.of(ReadingPaths.OUTSIDE_ZONES)).add();
            return;
        }
        findings.on(check)
                .outcome(outside ? Outcome.PASSES : Outcome.FAILS)
                .source(survey.cite("zones"))
                .remedies(remedies::moveIsolator)
                .add();
    }

    /** What the heater's data do not say is not held against it: the rating plate tells. */
    private void ingress(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.INGRESS;
        String code = shower.heater().getIngress();
        int digit = waterDigit(code);
        if (code == null || digit < 0) {
            findings.on(check).variant("unstated").add();
            return;
        }
        boolean enough = digit >= survey.rules().number("ingress.zones");
        findings.on(check)
                .outcome(enough ? Outcome.PASSES : Outcome.FAILS)
                .argument("code", code)
                .source(survey.cite("zones"))
                .add();
    }

    private static final Pattern CODE = Pattern.compile("IP[X0-6][0-9].*");

    /** The second digit of a code such as IPX4 or IP25; -1 if there is none. */
    static int waterDigit(@Nullable String code) {
        if (code == null) {
            return -1;
        }
        String plain = code.strip().toUpperCase(Locale.ROOT).replace(" ", "");
        return CODE.matcher(plain).matches() ? plain.charAt(3) - '0' : -1;
    }

    private void supplementary(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.SUPPLEMENTARY;
        if (Boolean.FALSE.equals(survey.room().extraneousParts())) {
            findings.on(check).variant("nothingToBond").add();
            return;
        }
        Boolean there = survey.room().supplementary();
        if (Boolean.TRUE.equals(there)) {
            findings.on(check)
                    .outcome(Outcome.PASSES)
                    .source(survey.cite("supplementary"))
                    .add();
        } else if (survey.residual().kind() == null) {
            findings.on(check).cannotTell(List.of(ReadingPaths.RCD_KIND)).add();
        } else if (survey.residual().none() || survey.residual().fails(survey.residualLimitA())) {
            missing(shower, findings, check, there != null);
        } else if (there != null
                && survey.protectedByResidual()
                && survey.feed().withoutBonding()) {
            findings.on(check)
                    .outcome(Outcome.FAILS)
                    .variant("mainBonding")
                    .source(survey.cite("supplementary"))
                    .remedies(() -> remedies.bonding(0))
                    .add();
        } else if (mainBondingUnknown() || !survey.protectedByResidual()) {
            String open = there == null
                    ? ReadingPaths.SUPPLEMENTARY
                    : survey.protectedByResidual() ? ReadingPaths.BONDING : ReadingPaths.RCD_RESIDUAL;
            findings.on(check).cannotTell(List.of(open)).add();
        } else {
            context.assume("otherCircuits", Map.of("most", DisplayUnit.MILLIAMPERE.amount(survey.residualLimitA())));
            findings.on(check)
                    .outcome(Outcome.PASSES)
                    .variant("omitted")
                    .source(survey.cite("supplementary"))
                    .add();
        }
    }

    /** Main bonding is there, or there is nothing to bond; otherwise supplementary bonding cannot be left out. */
    private boolean mainBondingUnknown() {
        return survey.feed().bondingMm2() == null && !survey.feed().nothingToBond();
    }

    private void missing(ShowerCase shower, Findings findings, Check check, boolean seen) {
        if (!seen) {
            findings.on(check).cannotTell(List.of(ReadingPaths.SUPPLEMENTARY)).add();
            return;
        }
        FindingBuilder finding = findings.on(check).outcome(Outcome.FAILS).source(survey.cite("supplementary"));
        finding.remedies(() -> remedies.residual(shower));
        finding.add();
    }
}
