// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.cable;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.Rating;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.ShowerLoad;
import twinfeed.calculator.formula.Working;
import twinfeed.units.Kind;

/** The current of the heater against its protective device. */
public final class LoadChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public LoadChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(CircuitChecks.DESIGN_CURRENT, CircuitChecks.HIGH_VOLTAGE_CURRENT);
    }

    @Override
    public List<SharedQuantity> provides() {
        return List.of(SharedQuantity.DESIGN_CURRENT);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        give(shower);
        designCurrent(shower, findings);
        highVoltage(shower, findings);
    }

    private static void give(ShowerCase shower) {
        SharedQuantities shared = shower.shared();
        ShowerLoad load = shower.load();
        if (load == null) {
            shared.markMissing(SharedQuantity.DESIGN_CURRENT, shower.missingRating());
        } else {
            shared.put(SharedQuantity.DESIGN_CURRENT, load.designA());
        }
    }

    private void designCurrent(ShowerCase shower, Findings findings) {
        ShowerLoad load = shower.load();
        Double ratingA = survey.device().ratingA();
        if (findings.blocked(CircuitChecks.DESIGN_CURRENT)) {
            return;
        }
        if (load == null || ratingA == null) {
            unknownRating(shower, findings, CircuitChecks.DESIGN_CURRENT, ratingA == null);
            return;
        }
        FindingBuilder finding = findings.on(CircuitChecks.DESIGN_CURRENT)
                .compare(load.designA(), ratingA)
                .argument("nominalCurrent", load.currentA(survey.rules().number("voltage.nominal")))
                .argument("nominalVoltage", survey.rules().number("voltage.nominal"))
                .argument("ratedVoltage", load.ratedV())
                .source(survey.cite("overload"))
                .limitIs("deviceRating", survey.device().ratingOrigin())
                .working(() -> load.working().build());
        finding.remedies(() -> remedies.forLoad(shower));
        finding.add();
    }

    private static void unknownRating(ShowerCase shower, Findings findings, Check check, boolean device) {
        List<String> missing = new ArrayList<>(shower.missingRating());
        if (device) {
            missing.add(ReadingPaths.DEVICE_RATING);
        }
        findings.on(check).cannotTell(missing).add();
    }

    /** The current at the highest supply voltage: a caution, no limit of the rules. */
    private void highVoltage(ShowerCase shower, Findings findings) {
        Check check = CircuitChecks.HIGH_VOLTAGE_CURRENT;
        if (findings.blocked(check)) {
            return;
        }
        ShowerLoad load = shower.load();
        Double ratingA = survey.device().ratingA();
        if (load == null || ratingA == null) {
            unknownRating(shower, findings, check, ratingA == null);
            return;
        }
        double highestV = survey.rules().number("voltage.most");
        Double isolatorA = survey.isolator().ratingA();
        findings.on(check)
                .compare(load.currentA(highestV), isolatorA == null ? ratingA : Math.min(ratingA, isolatorA))
                .condition(Condition.of(null, highestV, null))
                .source(survey.rules().source("voltage.most"))
                .working(() -> smallerRating(load.working(), ratingA, isolatorA)
                        .rule("Umax", "highestVoltage", survey.rules(), "voltage.most", "V")
                        .step("I", "highVoltageCurrent", "Ib * Umax / Ur", "A", "")
                        .build())
                .add();
    }

    /** The limit: the smaller of two ratings, or the only one. */
    private Working.Builder smallerRating(Working.Builder working, double ratingA, @Nullable Double isolatorA) {
        return new Rating(
                        "In",
                        "deviceRating",
                        Kind.CURRENT.amount(ratingA),
                        survey.device().ratingOrigin())
                .addLimit(
                        working,
                        isolatorA == null
                                ? null
                                : new Rating(
                                        "Ii",
                                        "isolatorRating",
                                        Kind.CURRENT.amount(isolatorA),
                                        ReadingPaths.ISOLATOR_RATING));
    }
}
