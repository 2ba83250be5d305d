// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.pressure.remedy.MainRemedy;
import twinfeed.calculator.pressure.working.WorkingLines;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.units.Kind;

/** Where the water comes from: what the instructions allow, and whether the readings can be those of a header tank. */
public final class SourceChecks implements CheckGroup {
    /** Pressure of a tank ten metres up, Pa: no header tank within a house hangs higher. Judgement. */
    private static final double MOST_TANK_PA = 1.0e5;

    /** Pressure of one metre of cold water, Pa. */
    private static final double METRE_PA = 9807;

    @Override
    public List<Check> checks() {
        return List.of(PressureChecks.SOURCE, PressureChecks.TANK_HEAD);
    }

    @Override
    public void answer(HeaterCase heater) {
        source(heater);
        tankHead(heater);
    }

    private static void source(HeaterCase heater) {
        Heater data = heater.unit().heater();
        switch (heater.house().source()) {
            case MAINS -> outcome(heater, Outcome.PASSES, "").add();
            case PUMPED -> cold(heater, "pumped", data.getPumpedFeedAllowed());
            case TANK -> tank(heater, data);
            case HOT -> hot(heater, data);
        }
    }

    private static FindingBuilder outcome(HeaterCase heater, Outcome outcome, String variant) {
        return heater.on(PressureChecks.SOURCE)
                .outcome(outcome)
                .variant(variant)
                .source("maker's instructions");
    }

    private static void cold(HeaterCase heater, String variant, @Nullable Boolean allowed) {
        if (Boolean.FALSE.equals(allowed)) {
            forbidden(heater, outcome(heater, Outcome.FAILS, variant));
        } else {
            outcome(heater, Outcome.PASSES, variant).add();
        }
    }

    /** What is called a tank and has more pressure than one may be a pumped feed: where only one of the two is forbidden, that decides. */
    private static void tank(HeaterCase heater, Heater data) {
        Double staticPa = staticPa(heater);
        boolean doubtful = staticPa != null && LimitType.exceeds(staticPa, MOST_TANK_PA);
        boolean alike = Objects.equals(
                Boolean.FALSE.equals(data.getTankFeedAllowed()), Boolean.FALSE.equals(data.getPumpedFeedAllowed()));
        if (doubtful && !alike) {
            heater.cannotTell(PressureChecks.SOURCE, "survey.water.source");
        } else {
            cold(heater, "tank", data.getTankFeedAllowed());
        }
    }

    private static void hot(HeaterCase heater, Heater data) {
        if (!Boolean.TRUE.equals(data.getPreheatedAllowed())) {
            forbidden(heater, outcome(heater, Outcome.FAILS, "hot"));
            return;
        }
        WaterFeed water = heater.house().water();
        if (data.getMaximumIntake() == null) {
            heater.cannotTell(PressureChecks.SOURCE, "heater.maximumIntake");
        } else if (water == null || water.getHottestFeed() == null) {
            heater.cannotTell(PressureChecks.SOURCE, "survey.water.hottestFeed");
        } else {
            double hottestC = water.getHottestFeed().si();
            double allowedC = data.getMaximumIntake().si();
            boolean over = LimitType.exceeds(hottestC, allowedC);
            FindingBuilder finding = outcome(heater, over ? Outcome.FAILS : Outcome.PASSES, over ? "tooHot" : "hot")
                    .argument("hottest", hottestC)
                    .argument("allowed", allowedC);
            if (over) {
                forbidden(heater, finding);
            } else {
                finding.add();
            }
        }
    }

    private static void forbidden(HeaterCase heater, FindingBuilder finding) {
        WaterFeed water = heater.house().water();
        MainRemedy.of(water).ifPresent(work -> {
            finding.remedy(work);
            if (water != null && !MainRemedy.measured(water)) {
                heater.house().context().assume("mainAsMeasured", Map.of());
            }
        });
        finding.add();
    }

    private static @Nullable Double staticPa(HeaterCase heater) {
        WaterFeed water = heater.house().water();
        return water == null || water.getTest() == null || water.getTest().getStaticPressure() == null
                ? null
                : Double.valueOf(water.getTest().getStaticPressure().si());
    }

    private static void tankHead(HeaterCase heater) {
        if (heater.house().source() != WaterSource.TANK) {
            heater.notApplicable(PressureChecks.TANK_HEAD, "");
        } else if (!heater.blocked(PressureChecks.TANK_HEAD)) {
            double staticPa = heater.test().getStaticPressure().si();
            heater.on(PressureChecks.TANK_HEAD)
                    .compare(staticPa, MOST_TANK_PA)
                    .argument("height", staticPa / METRE_PA)
                    .source("judgement")
                    .working(() -> new WorkingLines()
                            .input(
                                    "p_0",
                                    "staticReading",
                                    Kind.PRESSURE.amount(staticPa),
                                    "",
                                    "survey.water.test.staticPressure")
                            .build())
                    .add();
        }
    }
}
