// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.faults;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import twinfeed.calculator.Assessor;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.Context;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.inference.Diagnosis;
import twinfeed.diagnosis.inference.Evidence;
import twinfeed.diagnosis.inference.Posterior;
import twinfeed.diagnosis.inference.RankedPart;
import twinfeed.diagnosis.inference.SupplyState;
import twinfeed.diagnosis.reading.CoilAssessment;
import twinfeed.diagnosis.reading.ElementAssessment;
import twinfeed.diagnosis.reading.ResistanceBand;
import twinfeed.engineering.numeric.Solution;
import twinfeed.engineering.water.Heat;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Survey;
import twinfeed.model.usual.UsualValues;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;
import twinfeed.units.text.Phrase;

/** Judges the unit that is there; for candidates the question does not arise. */
final class FaultsAssessor implements Assessor {
    private static final String JUDGEMENT = "judgement, editable in the data file; leading parts by common practice";
    private static final String BAND =
            "Ur^2/Pr; +5/-10 % tolerance of an appliance's power (from memory) where its data state none";
    private static final String INSTRUCTIONS = "maker's data of the coil";
    private static final String ISOLATION = "common practice";

    private final Survey survey;
    private final FaultData data;
    private final double intakeC;
    private final double outletC;

    FaultsAssessor(Context context, FaultData data) {
        this.survey = context.survey();
        this.data = data;
        this.intakeC = context.grid().intakes().get(0).temperatureC();
        this.outletC = UsualValues.targetOutletC(survey);
    }

    @Override
    public void assess(Candidate candidate, SharedQuantities shared, Findings findings) {
        if (!candidate.present()) {
            FaultsChecks.ALL.forEach(check -> notApplicable(check, findings, "candidate"));
            return;
        }
        Evidence evidence = Evidence.of(survey, candidate.heater(), feeds(shared), data);
        if (findings.asks(List.of(FaultsChecks.LIKELY))) {
            likely(evidence, findings);
        }
        elements(evidence.elements(), candidate.heater(), findings);
        coil(evidence.coil(), findings);
        isolation(evidence, findings);
    }

    /** A margin within the error of a usual gauge says nothing. */
    private SupplyState feeds(SharedQuantities shared) {
        if (!shared.has(SharedQuantity.SWITCH_MARGIN)) {
            return SupplyState.UNKNOWN;
        }
        double marginPa = shared.get(SharedQuantity.SWITCH_MARGIN)[0];
        return Math.abs(marginPa) < data.limit("gaugePa")
                ? SupplyState.UNKNOWN
                : new SupplyState(Optional.of(marginPa < 0), Optional.empty());
    }

    private static void notApplicable(Check check, Findings findings, String variant) {
        findings.on(check).outcome(Outcome.NOT_APPLICABLE).variant(variant).add();
    }

    private void likely(Evidence evidence, Findings findings) {
        if (!evidence.begun()) {
            notApplicable(FaultsChecks.LIKELY, findings, "");
            return;
        }
        if (!evidence.any()) {
            findings.on(FaultsChecks.LIKELY)
                    .cannotTell(List.of("survey.symptoms"))
                    .add();
            return;
        }
        Diagnosis diagnosis = Diagnosis.of(evidence, data);
        Posterior posterior = diagnosis.posterior();
        List<RankedPart> ranked = posterior.ranked();
        findings.on(FaultsChecks.LIKELY)
                .report(ranked.get(0).chance())
                .outcome(Outcome.FAILS)
                .variant(variant(diagnosis.conclusion()))
                .argument("part", name(ranked.get(0).part()))
                .argument("percent", ranked.get(0).percent())
                .argument("second", name(ranked.get(1).part()))
                .argument(
                        "secondChance", DisplayUnit.PERCENT.amount(ranked.get(1).chance()))
                .argument("one", name(posterior.pair().first()))
                .argument("other", name(posterior.pair().second()))
                .argument("several", DisplayUnit.PERCENT.amount(posterior.several()))
                .argument("next", next(diagnosis))
                .source(JUDGEMENT)
                .working(() -> FaultsWorking.posterior(data, posterior))
                .add();
    }

    private static String variant(Diagnosis.Conclusion conclusion) {
        return switch (conclusion) {
            case SUPPLY -> "supply";
            case SEVERAL -> "several";
            case NONE_OF_THESE -> "none";
            default -> "";
        };
    }

    private static Phrase name(String part) {
        return Phrase.of("part." + part);
    }

    private static Phrase next(Diagnosis diagnosis) {
        return diagnosis
                .next()
                .map(step -> new Phrase(
                        step.opensCover() ? "next.cover" : "next.safe",
                        Map.of(
                                "question",
                                Phrase.of("question." + step.observation().key()))))
                .orElseGet(() -> Phrase.of("next.none"));
    }

    private void elements(ElementAssessment elements, Heater heater, Findings findings) {
        if (!elements.measured()) {
            notApplicable(FaultsChecks.ELEMENTS, findings, "");
            return;
        }
        if (findings.blocked(FaultsChecks.ELEMENTS)) {
            return;
        }
        if (!elements.faulty() && !elements.sound()) {
            findings.on(FaultsChecks.ELEMENTS)
                    .cannotTell(List.of("survey.faultFinding.elements"))
                    .add();
            return;
        }
        findings.on(FaultsChecks.ELEMENTS)
                .compare(elements.powerW(), FaultsWorking.leastW(elements, heater, data))
                .outcome(elements.faulty() ? Outcome.FAILS : Outcome.PASSES)
                .variant(elements.openCount() > 0 ? "open" : "")
                .argument("rated", Kind.POWER.amount(elements.ratedW()))
                .argument("open", elements.openCount())
                .argument("share", DisplayUnit.PERCENT.amount(elements.powerW() / elements.ratedW()))
                .argument("flow", Kind.FLOW.amount(flow(elements.powerW())))
                .argument("fullFlow", Kind.FLOW.amount(flow(elements.ratedW())))
                .argument("outlet", outletC)
                .argument("intake", intakeC)
                .source(BAND)
                .working(() -> FaultsWorking.elements(elements, heater, data))
                .add();
    }

    /** Flow at the target temperature in winter, m3/s at the outlet; 0 where nothing is heated. */
    private double flow(double powerW) {
        Solution mass = powerW <= 0 ? null : Heat.massFlowForOutlet(powerW, intakeC, outletC);
        return mass == null || !mass.isPresent() ? 0 : Heat.volumeFlowAtOutlet(mass.value(), outletC);
    }

    private static void coil(CoilAssessment coil, Findings findings) {
        if (!coil.measured()) {
            notApplicable(FaultsChecks.COIL, findings, "");
        } else if (coil.open()) {
            findings.on(FaultsChecks.COIL)
                    .outcome(Outcome.FAILS)
                    .variant("open")
                    .source(INSTRUCTIONS)
                    .add();
        } else if (!findings.blocked(FaultsChecks.COIL)) {
            band(coil, findings);
        }
    }

    private static void band(CoilAssessment coil, Findings findings) {
        ResistanceBand band = coil.band();
        Double reading = coil.readingOhm();
        if (band == null || reading == null) {
            findings.on(FaultsChecks.COIL)
                    .cannotTell(List.of("heater.coilResistance"))
                    .add();
            return;
        }
        findings.on(FaultsChecks.COIL)
                .compare(Math.abs(reading / band.ratedOhm() - 1), coil.toleranceShare())
                .argument("reading", reading)
                .argument("rated", band.ratedOhm())
                .source(INSTRUCTIONS)
                .working(() -> FaultsWorking.coil(reading, band.ratedOhm()))
                .add();
    }

    private void isolation(Evidence evidence, Findings findings) {
        if (evidence.unsafeReading(data)) {
            findings.on(FaultsChecks.ISOLATION)
                    .cannotTell(List.of("survey.faultFinding.isolation"))
                    .argument("steps", steps(evidence.isolation().open()))
                    .source(ISOLATION)
                    .add();
        } else if (evidence.isolation().complete()) {
            findings.on(FaultsChecks.ISOLATION)
                    .outcome(Outcome.PASSES)
                    .source(ISOLATION)
                    .add();
        } else {
            notApplicable(FaultsChecks.ISOLATION, findings, "");
        }
    }

    private static List<Phrase> steps(List<String> keys) {
        return keys.stream().map(key -> Phrase.of("isolation." + key)).toList();
    }
}
