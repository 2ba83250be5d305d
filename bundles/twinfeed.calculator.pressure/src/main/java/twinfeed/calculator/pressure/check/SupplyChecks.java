// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.remedy.PumpRemedy;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.SupplyReading;
import twinfeed.calculator.pressure.working.FeedWorking;
import twinfeed.calculator.pressure.working.UnitLines;
import twinfeed.calculator.pressure.working.WorkingLines;
import twinfeed.engineering.network.SupplyTest;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Kind;

/** The supply itself: whether the test is usable, the static pressure neither too high nor too low. */
public final class SupplyChecks implements CheckGroup {
    /** 7 m of head in the communication pipe: Ofwat guaranteed standards. */
    private static final double GUARANTEED_PA = 0.7e5;

    /** A valve set nearer to the highest allowed pressure than this would not keep under it at night. Judgement. */
    private static final double SETTING_OVER_LIMIT = 0.8;

    @Override
    public List<Check> checks() {
        return List.of(PressureChecks.TEST, PressureChecks.STATIC_PRESSURE);
    }

    @Override
    public void answer(HeaterCase heater) {
        test(heater);
        staticPressure(heater);
    }

    private static void test(HeaterCase heater) {
        if (heater.blocked(PressureChecks.TEST)) {
            return;
        }
        WaterTest test = heater.test();
        double staticPa = test.getStaticPressure().si();
        double runningPa = test.getRunningPressure().si();
        if (staticPa <= 0 || test.getFlow().si() <= 0) {
            heater.cannotTell(
                    PressureChecks.TEST, staticPa <= 0 ? "survey.water.test.staticPressure" : "survey.water.test.flow");
            return;
        }
        FindingBuilder finding = heater.on(PressureChecks.TEST)
                .compare(1 - runningPa / staticPa, SupplyTest.SMALLEST_DROP_SHARE)
                .variant(runningPa >= staticPa + SupplyReading.spreadPa(test) ? "refused" : "")
                // At twice the test's flow the curve is off by four times what the readings are.
                .argument("spread", Kind.PRESSURE.amount(SupplyReading.spreadPa(test)))
                .argument("atDouble", Kind.PRESSURE.amount(4 * SupplyReading.spreadPa(test)))
                .source("practice of NFPA 291")
                .working(() -> drop(staticPa, runningPa));
        finding.add();
    }

    private static Working drop(double staticPa, double runningPa) {
        return new WorkingLines()
                .input("p_0", "staticReading", Kind.PRESSURE.amount(staticPa), "", "survey.water.test.staticPressure")
                .input(
                        "p_1",
                        "runningReading",
                        Kind.PRESSURE.amount(runningPa),
                        "",
                        "survey.water.test.runningPressure")
                .step("drop", "dropShare", "(1 - p_1 / p_0) * 100", "%", "")
                .build();
    }

    private static void staticPressure(HeaterCase heater) {
        if (heater.blocked(PressureChecks.STATIC_PRESSURE)) {
            return;
        }
        FeedConditions feed = heater.house().feed();
        double gaugePa = heater.test().getStaticPressure().si();
        int coldest = feed == null ? 0 : feed.coldest();
        double unitPa = feed == null ? gaugePa : feed.at(coldest).inletPa(0, 0);
        double limitPa = heater.unit().heater().getMaximumStaticPressure().si();
        FindingBuilder finding = heater.on(PressureChecks.STATIC_PRESSURE)
                .compare(unitPa, limitPa)
                .source("maker's instructions");
        finding.working(() -> feed == null
                ? atGauge(heater, gaugePa, limitPa)
                : atUnit(heater.unit().heater(), feed, coldest, limitPa));
        double setPa = Math.min(heater.house().reducedPa(), limitPa * SETTING_OVER_LIMIT);
        // A tank that is there for other reasons takes the main's pressure away too.
        WaterFeed water = heater.house().water();
        if (water != null) {
            finding.remedies(() -> List.of(WaterRemedies.reducingValve(setPa), PumpRemedy.of(water)));
        }
        finding.add();
    }

    private static Working atGauge(HeaterCase heater, double gaugePa, double limitPa) {
        WorkingLines lines = new WorkingLines();
        UnitLines.addPressure(
                lines, LimitType.SYMBOL, "mostStatic", limitPa, heater.unit().heater(), "maximumStaticPressure");
        return lines.input(
                        "p_0", "staticReading", Kind.PRESSURE.amount(gaugePa), "", "survey.water.test.staticPressure")
                .build();
    }

    private static Working atUnit(Heater heater, FeedConditions feed, int coldest, double limitPa) {
        WorkingLines lines = new WorkingLines();
        UnitLines.addPressure(lines, LimitType.SYMBOL, "mostStatic", limitPa, heater, "maximumStaticPressure");
        FeedWorking.addTest(lines, feed.feed());
        StringBuilder rises = new StringBuilder("0");
        int number = 0;
        for (NamedPipe piece : feed.feed().run()) {
            String z = "z_" + ++number;
            lines.input(z, "rise", piece.pipe().riseM(), "m", "", piece.origin().rise());
            rises.append(" + ").append(z);
        }
        FeedWorking.addDensity(lines, feed.intakeC(coldest), feed.intakeOrigin(coldest));
        return lines.step(
                        "p_u",
                        "staticAtUnit",
                        "p_0 - " + Kind.PRESSURE.inDisplayUnit("rho * 9.80665 * (" + rises + ")"),
                        "bar",
                        "")
                .build();
    }

    /** The least that a water company owes; asked last, for it is no matter of the heater. */
    static void standard(HeaterCase heater) {
        WaterSource source = heater.house().source();
        if (source != WaterSource.MAINS) {
            heater.notApplicable(PressureChecks.STANDARD, source == WaterSource.TANK ? "" : source.getLiteral());
        } else if (!heater.blocked(PressureChecks.STANDARD)) {
            heater.on(PressureChecks.STANDARD)
                    .compare(heater.test().getStaticPressure().si(), GUARANTEED_PA)
                    .source("Ofwat guaranteed standards: 7 m of head in the communication pipe")
                    .working(() -> new WorkingLines()
                            .input(
                                    "p_0",
                                    "staticReading",
                                    Kind.PRESSURE.amount(
                                            heater.test().getStaticPressure().si()),
                                    "",
                                    "survey.water.test.staticPressure")
                            .build())
                    .add();
        }
    }
}
