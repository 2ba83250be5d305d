// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.installation;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.circuit.check.CheckGroup;
import twinfeed.calculator.circuit.check.CircuitChecks;
import twinfeed.calculator.circuit.check.MissingData;
import twinfeed.calculator.circuit.remedy.CircuitRemedies;
import twinfeed.calculator.circuit.survey.CableRun;
import twinfeed.calculator.circuit.survey.CircuitSurvey;
import twinfeed.calculator.circuit.survey.CodeNumbers;
import twinfeed.calculator.circuit.survey.ReadingPaths;
import twinfeed.calculator.circuit.survey.ShowerCase;
import twinfeed.calculator.circuit.survey.SiValues;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Earthing;

/** What has to be right before anything is altered: tails, earthing conductor, main bonding. Not seen is "cannot tell". */
public final class OriginChecks implements CheckGroup {
    private final CircuitSurvey survey;
    private final CircuitRemedies remedies;

    public OriginChecks(CircuitSurvey survey, CircuitRemedies remedies) {
        this.survey = survey;
        this.remedies = remedies;
    }

    @Override
    public List<Check> checks() {
        return List.of(
                CircuitChecks.TAILS,
                CircuitChecks.EARTHING_CONDUCTOR,
                CircuitChecks.MAIN_BONDING,
                CircuitChecks.BONDING_SIZE);
    }

    @Override
    public void check(ShowerCase shower, Findings findings) {
        tails(findings);
        earthingConductor(findings);
        mainBonding(findings);
        bondingSize(findings);
    }

    private void tails(Findings findings) {
        Check check = CircuitChecks.TAILS;
        Double fuseA = survey.feed().fuseA();
        Double tailsMm2 = survey.feed().tailsMm2();
        if (findings.blocked(check) || fuseA == null || tailsMm2 == null) {
            return;
        }
        OptionalDouble needed = survey.rules().earthing().tailsMm2(fuseA);
        if (needed.isEmpty()) {
            notInTable(findings, check, ReadingPaths.SERVICE_FUSE, CodeNumbers.number(fuseA) + " A");
            return;
        }
        FindingBuilder finding = findings.on(check)
                .compare(SiValues.m2(needed.getAsDouble()), SiValues.m2(tailsMm2))
                .argument("fuse", fuseA)
                .source(survey.cite("tails"))
                .limitIs("tails", ReadingPaths.TAILS)
                .working(() -> needed(
                        Working.start().input("If", "serviceFuse", fuseA, "A", "", ReadingPaths.SERVICE_FUSE),
                        "neededTails",
                        survey.rules().earthing().tailsExpression("If"),
                        "tails"));
        finding.remedies(() -> remedies.tails(needed.getAsDouble()));
        finding.add();
    }

    /** A size that a table asks for by the line above. */
    private Working needed(Working.Builder by, String meaning, String expression, String cited) {
        return by.step("S", meaning, expression, "mm²", survey.cite(cited)).build();
    }

    private static void notInTable(Findings findings, Check check, String path, String what) {
        MissingData.add(findings, check, new CableRun.Gap(path, what));
    }

    private void earthingConductor(Findings findings) {
        Check check = CircuitChecks.EARTHING_CONDUCTOR;
        if (survey.feed().withoutEarthingConductor()) {
            findings.on(check)
                    .outcome(Outcome.FAILS)
                    .variant("none")
                    .source(survey.cite("earthing"))
                    .remedies(() -> remedies.earthing(0))
                    .add();
            return;
        }
        Double conductorMm2 = survey.feed().earthingMm2();
        if (findings.blocked(check) || conductorMm2 == null) {
            return;
        }
        Double neededMm2 = neededEarthingMm2();
        if (neededMm2 == null) {
            findings.on(check).cannotTell(List.of(ReadingPaths.TAILS)).add();
            return;
        }
        FindingBuilder finding = findings.on(check)
                .compare(SiValues.m2(neededMm2), SiValues.m2(conductorMm2))
                .source(survey.cite("earthing"))
                .limitIs("earthingConductor", ReadingPaths.EARTHING_CONDUCTOR)
                .working(() -> neededEarthing("S", neededMm2).build());
        finding.remedies(() -> remedies.earthing(neededMm2));
        finding.add();
    }

    /** Begins a working with the earthing conductor that is needed, under a symbol. */
    private Working.Builder neededEarthing(String symbol, double neededMm2) {
        Double tailsMm2 = survey.feed().tailsMm2();
        String cite = survey.cite("earthing");
        return survey.feed().ownElectrode() || tailsMm2 == null
                ? Working.start().input(symbol, "neededEarthing", neededMm2, "mm²", cite, Origin.rule("earthing.tt"))
                : Working.start()
                        .input("St", "tails", tailsMm2, "mm²", "", ReadingPaths.TAILS)
                        .step(
                                symbol,
                                "neededEarthing",
                                survey.rules().earthing().conductorExpression("St"),
                                "mm²",
                                cite);
    }

    /** By the tails; with an own electrode the least size that stands rough handling. */
    private @Nullable Double neededEarthingMm2() {
        if (survey.feed().ownElectrode()) {
            return survey.rules().number("earthing.tt");
        }
        Double tailsMm2 = survey.feed().tailsMm2();
        if (tailsMm2 == null) {
            return null;
        }
        OptionalDouble needed = survey.rules().earthing().conductorMm2(tailsMm2);
        return needed.isPresent() ? Double.valueOf(needed.getAsDouble()) : null;
    }

    private void mainBonding(Findings findings) {
        Check check = CircuitChecks.MAIN_BONDING;
        if (survey.feed().nothingToBond()) {
            findings.on(check).variant("nothingToBond").add();
            return;
        }
        if (survey.feed().withoutBonding()) {
            findings.on(check)
                    .outcome(Outcome.FAILS)
                    .variant("none")
                    .source(survey.cite("bonding"))
                    .remedies(() -> remedies.bonding(0))
                    .add();
            return;
        }
        if (!findings.blocked(check)) {
            findings.on(check)
                    .outcome(Outcome.PASSES)
                    .source(survey.cite("bonding"))
                    .add();
        }
    }

    private void bondingSize(Findings findings) {
        Check check = CircuitChecks.BONDING_SIZE;
        if (survey.feed().nothingToBond() || survey.feed().withoutBonding()) {
            findings.on(check).add();
            return;
        }
        Double bondingMm2 = survey.feed().bondingMm2();
        if (findings.blocked(check) || bondingMm2 == null) {
            return;
        }
        boolean combined = survey.feed().earthing() == Earthing.TN_CS;
        Double source = combined ? survey.feed().neutralMm2() : earthingForBondingMm2();
        if (source == null) {
            findings.on(check)
                    .cannotTell(List.of(combined ? ReadingPaths.NEUTRAL : ReadingPaths.EARTHING_CONDUCTOR))
                    .add();
            return;
        }
        Double neededMm2 = combined ? byNeutral(source) : Double.valueOf(byEarthing(source));
        if (neededMm2 == null) {
            notInTable(findings, check, ReadingPaths.NEUTRAL, CodeNumbers.number(source) + " mm²");
            return;
        }
        bonding(findings, neededMm2, bondingMm2, combined, source);
    }

    private void bonding(Findings findings, double neededMm2, double bondingMm2, boolean combined, double sourceMm2) {
        FindingBuilder finding = findings.on(CircuitChecks.BONDING_SIZE)
                .compare(SiValues.m2(neededMm2), SiValues.m2(bondingMm2))
                .source(survey.cite("bonding"))
                .limitIs("mainBonding", ReadingPaths.BONDING)
                .working(() -> bondingWorking(combined, sourceMm2));
        finding.remedies(() -> remedies.bonding(neededMm2));
        finding.add();
    }

    private Working bondingWorking(boolean combined, double sourceMm2) {
        if (combined) {
            return needed(
                    Working.start().input("Sn", "supplyNeutral", sourceMm2, "mm²", "", ReadingPaths.NEUTRAL),
                    "neededBonding",
                    survey.rules().earthing().bondingExpression("Sn"),
                    "bonding");
        }
        String cite = survey.cite("bonding");
        return earthingForBonding(sourceMm2)
                .input("f", "bondingShare", survey.rules().number("bonding.share"), "", cite)
                .input("Smin", "bondingLeast", survey.rules().number("bonding.least"), "mm²", cite)
                .input("Smax", "bondingMost", survey.rules().number("bonding.most"), "mm²", cite)
                .step("S", "neededBonding", "max(Smin, min(Smax, f * Se))", "mm²", cite)
                .build();
    }

    private Working.Builder earthingForBonding(double sourceMm2) {
        return neededEarthingMm2() == null
                ? Working.start()
                        .input("Se", "earthingConductor", sourceMm2, "mm²", "", ReadingPaths.EARTHING_CONDUCTOR)
                : neededEarthing("Se", sourceMm2);
    }

    /** The earthing conductor that is needed counts, not one that may be too thin itself; the one that is there where nobody can say. */
    private @Nullable Double earthingForBondingMm2() {
        Double neededMm2 = neededEarthingMm2();
        return neededMm2 == null ? survey.feed().earthingMm2() : neededMm2;
    }

    private @Nullable Double byNeutral(double neutralMm2) {
        OptionalDouble needed = survey.rules().earthing().bondingMm2(neutralMm2);
        return needed.isPresent() ? Double.valueOf(needed.getAsDouble()) : null;
    }

    private double byEarthing(double earthingMm2) {
        double share = survey.rules().number("bonding.share") * earthingMm2;
        return Math.max(
                survey.rules().number("bonding.least"), Math.min(survey.rules().number("bonding.most"), share));
    }
}
