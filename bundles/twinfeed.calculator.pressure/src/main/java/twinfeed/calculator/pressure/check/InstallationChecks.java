// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.Working;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.text.Phrase;

/** What is to be said of the service pipe, of backflow and of hardness. */
public final class InstallationChecks implements CheckGroup {
    private static final double MG_PER_L = 1000;

    /** From here on water is called hard, mg/L: bands of the Drinking Water Inspectorate. */
    private static final double HARD_MG_PER_L = 200;

    private static final String REGULATIONS =
            "Water Fittings Regulations guidance: fluid category 3, or 5 where a WC pan is in reach";

    @Override
    public void answer(HeaterCase heater) {
        SupplyChecks.standard(heater);
        servicePipe(heater);
        backflow(heater);
        hardness(heater);
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

    private static void hardness(HeaterCase heater) {
        if (heater.unit().heater().getMaximumHardness() == null) {
            heater.notApplicable(PressureChecks.HARDNESS, "");
        } else if (!heater.blocked(PressureChecks.HARDNESS)) {
            double limit = heater.unit().heater().getMaximumHardness().si() * MG_PER_L;
            FindingBuilder finding = heater.on(PressureChecks.HARDNESS).source("maker's instructions");
            boolean over = LimitType.exceeds(hardnessMgPerL(heater), limit);
            if (over
                    && (heater.present()
                            || WaterRemedies.hasScaleInhibitor(heater.house().water()))) {
                // The unit that is there has this water whatever is decided; that it scales is said as advice.
                finding.outcome(Outcome.NOT_APPLICABLE)
                        .variant(heater.present() ? "present" : "inhibitor")
                        .argument("hardness", hardnessMgPerL(heater))
                        .argument("allowed", limit);
            } else {
                finding.compare(hardnessMgPerL(heater), limit).working(() -> hardnessWorking(heater));
                if (over) {
                    finding.remedy(WaterRemedies.scaleInhibitor());
                }
            }
            finding.add();
        }
    }

    private static Working hardnessWorking(HeaterCase heater) {
        return Working.start()
                .input("H", "hardness", hardnessMgPerL(heater), "mg/L", "", "survey.water.hardness")
                .build();
    }

    private static double hardnessMgPerL(HeaterCase heater) {
        WaterFeed water = heater.house().water();
        return water == null ? 0 : water.getHardness().si() * MG_PER_L;
    }

    private static void scale(HeaterCase heater) {
        if (!heater.blocked(PressureChecks.SCALE)) {
            heater.on(PressureChecks.SCALE)
                    .compare(hardnessMgPerL(heater), HARD_MG_PER_L)
                    .working(() -> hardnessWorking(heater))
                    .source("hardness bands of the Drinking Water Inspectorate: hard above 200 mg/L")
                    .add();
        }
    }
}
