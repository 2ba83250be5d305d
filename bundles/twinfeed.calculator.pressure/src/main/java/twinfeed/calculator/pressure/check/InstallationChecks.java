// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.Kind;
import twinfeed.units.text.Phrase;

/** What is to be said of the service pipe, of backflow and of hardness. */
public final class InstallationChecks implements CheckGroup {

    /** From here on water is called hard, mg/L: bands of the Drinking Water Inspectorate. */
    private static final double HARD_KG_PER_M3 = 0.2;

    private static final String REGULATIONS =
            "Water Fittings Regulations guidance: fluid category 3, or 5 where a WC pan is in reach";

    @Override
    public List<Check> checks() {
        return List.of(
                PressureChecks.STANDARD,
                PressureChecks.SERVICE_PIPE,
                PressureChecks.BACKFLOW,
                PressureChecks.HARDNESS,
                PressureChecks.SCALE);
    }

    @Override
    public void answer(HeaterCase heater) {
        SupplyChecks.standard(heater);
        servicePipe(heater);
        backflow(heater);
        limit(heater);
        scale(heater);
    }

    private static void servicePipe(HeaterCase heater) {
        WaterFeed water = heater.house().water();
        if (heater.blocked(PressureChecks.SERVICE_PIPE) || water == null) {
            return;
        }
        boolean shared = Boolean.TRUE.equals(water.getSharedServicePipe());
        boolean lead = water.getSegments().stream().anyMatch(segment -> segment.getMaterial() == PipeMaterial.LEAD);
        FindingBuilder finding = heater.on(PressureChecks.SERVICE_PIPE)
                .outcome(shared || lead ? Outcome.FAILS : Outcome.PASSES)
                .variant(shared ? (lead ? "sharedLead" : "shared") : (lead ? "lead" : ""))
                .source("judgement");
        if (shared || lead) {
            WaterRemedies.servicePipe(water).ifPresent(finding::remedy);
        }
        finding.add();
    }

    /** An air gap suffices for everything; within reach of a WC pan nothing else does. */
    private static void backflow(HeaterCase heater) {
        WaterFeed water = heater.house().water();
        if (heater.blocked(PressureChecks.BACKFLOW) || water == null) {
            return;
        }
        String protection = water.getBackflowProtection();
        boolean reachesWc = Boolean.TRUE.equals(water.getHandsetReachesWc());
        boolean airGap = "air-gap".equals(protection);
        boolean enough = airGap
                || (!reachesWc && ("double-check-valve".equals(protection) || "retaining-ring".equals(protection)));
        FindingBuilder finding = heater.on(PressureChecks.BACKFLOW)
                .outcome(enough ? Outcome.PASSES : Outcome.FAILS)
                .variant(reachesWc ? "wc" : "")
                .argument("found", Phrase.of("backflow." + protection))
                .source(REGULATIONS);
        if (!enough) {
            finding.remedy(reachesWc ? WaterRemedies.hoseRetainer() : WaterRemedies.checkValve());
        }
        finding.add();
    }

    private static void limit(HeaterCase heater) {
        if (heater.unit().heater().getMaximumHardness() == null) {
            heater.notApplicable(PressureChecks.HARDNESS, "");
        } else if (!heater.blocked(PressureChecks.HARDNESS)) {
            double limit = heater.unit().heater().getMaximumHardness().si();
            FindingBuilder finding = heater.on(PressureChecks.HARDNESS).source("maker's instructions");
            boolean over = LimitType.exceeds(hardness(heater), limit);
            if (over
                    && (heater.present()
                            || WaterRemedies.hasScaleInhibitor(heater.house().water()))) {
                // The unit that is there has this water whatever is decided; that it scales is said as advice.
                finding.outcome(Outcome.NOT_APPLICABLE)
                        .variant(heater.present() ? "present" : "inhibitor")
                        .argument("hardness", Kind.CONCENTRATION.amount(hardness(heater)))
                        .argument("allowed", Kind.CONCENTRATION.amount(limit));
            } else {
                finding.compare(hardness(heater), limit).working(() -> hardnessWorking(heater));
                if (over) {
                    finding.remedy(WaterRemedies.scaleInhibitor());
                }
            }
            finding.add();
        }
    }

    private static Working hardnessWorking(HeaterCase heater) {
        return Working.start()
                .input("H", "hardness", Kind.CONCENTRATION.amount(hardness(heater)), "", "survey.water.hardness")
                .build();
    }

    /** Hardness, kg/m3 as calcium carbonate. */
    private static double hardness(HeaterCase heater) {
        WaterFeed water = heater.house().water();
        return water == null ? 0 : water.getHardness().si();
    }

    private static void scale(HeaterCase heater) {
        if (!heater.blocked(PressureChecks.SCALE)) {
            heater.on(PressureChecks.SCALE)
                    .compare(hardness(heater), HARD_KG_PER_M3)
                    .working(() -> hardnessWorking(heater))
                    .source("hardness bands of the Drinking Water Inspectorate: hard above 200 mg/L")
                    .add();
        }
    }
}
