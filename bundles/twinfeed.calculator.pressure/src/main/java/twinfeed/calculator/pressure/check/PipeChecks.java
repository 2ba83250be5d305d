// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import twinfeed.calculator.Check;
import twinfeed.calculator.Condition;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.formula.Origin;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.OperatingPoint;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.remedy.WaterRemedies;
import twinfeed.calculator.pressure.survey.Feed;
import twinfeed.calculator.pressure.survey.NamedPipe;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.calculator.pressure.working.FeedWorking;
import twinfeed.calculator.pressure.working.LossLines;
import twinfeed.calculator.pressure.working.OperatingPointWorking;
import twinfeed.calculator.pressure.working.TapAloneWorking;
import twinfeed.calculator.pressure.working.WorkingLines;
import twinfeed.engineering.network.LossShares;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/** How fast the water runs in the pipes, and where the pressure is lost, so that the work is done there. */
public final class PipeChecks implements CheckGroup {
    /** In floors and risers, m/s. */
    private static final double SHARED_LIMIT = 2.0;

    /** In a dead leg to one fitting, m/s. */
    private static final double OWN_LIMIT = 4.0;

    @Override
    public List<Check> checks() {
        return List.of(PressureChecks.VELOCITY, PressureChecks.LOSS);
    }

    @Override
    public void answer(HeaterCase heater) {
        velocity(heater);
        loss(heater);
    }

    /** A velocity in one pipe. */
    private record Speed(NamedPipe piece, double flowM3PerS, double limit) {
        double value() {
            return Pipe.velocity(flowM3PerS, piece.pipe().boreM());
        }

        double relativeMargin() {
            return (limit - value()) / limit;
        }
    }

    private static void velocity(HeaterCase heater) {
        UnitFlows flows = heater.flows(PressureChecks.VELOCITY);
        if (flows == null) {
            return;
        }
        Feed feed = flows.feed().feed();
        int warmest = flows.largestTarget();
        if (warmest < 0 || feed.run().isEmpty()) {
            heater.notApplicable(PressureChecks.VELOCITY, "");
            return;
        }
        int open = Math.min(1, flows.feed().mostOpen());
        OperatingPoint point = flows.running(warmest, flows.feed().grid().nominal(), open);
        Speed fastest = fastest(feed, point, open == 0 ? 0 : total(flows.feed(), point));
        FindingBuilder finding = heater.on(PressureChecks.VELOCITY)
                .compare(fastest.value(), fastest.limit())
                .condition(condition(flows.feed(), point, fastest))
                .argument("flow", Kind.FLOW.amount(fastest.flowM3PerS()))
                .variant(fastest.limit() == OWN_LIMIT ? "own" : "")
                .source("EN 806-3: 2.0 m/s in floors and risers, 4.0 m/s in a dead leg to one fitting")
                .working(() -> velocity(flows, point, fastest));
        if (LimitType.exceeds(fastest.value(), fastest.limit())) {
            WaterRemedies.widerPipes(heater.house().water()).forEach(finding::remedy);
        }
        finding.add();
    }

    private static double total(FeedConditions feed, OperatingPoint point) {
        double tap = feed.feed().taps().get(0).flowM3PerS();
        return point.flowM3PerS() + tap;
    }

    private static Speed fastest(Feed feed, OperatingPoint point, double sharedFlow) {
        Speed worst = null;
        int shared = feed.shared(point.open());
        for (int i = 0; i < feed.run().size(); i++) {
            Speed speed = i < shared
                    ? new Speed(feed.run().get(i), sharedFlow, SHARED_LIMIT)
                    : new Speed(feed.run().get(i), point.flowM3PerS(), OWN_LIMIT);
            worst = worst == null || speed.relativeMargin() < worst.relativeMargin() ? speed : worst;
        }
        if (worst == null) {
            throw new IllegalStateException("no pipes");
        }
        return worst;
    }

    private static Condition condition(FeedConditions feed, OperatingPoint point, Speed speed) {
        Condition condition = feed.condition(point);
        return new Condition(
                condition.intake(),
                condition.voltageV(),
                condition.drawOff(),
                speed.piece().name());
    }

    /** A pipe that the tap shares carries its flow too, as it is when the tap is open alone. */
    private static Working velocity(UnitFlows flows, OperatingPoint point, Speed speed) {
        WorkingLines lines = OperatingPointWorking.of(flows, point).addFlow().lines();
        String flow = "Q";
        if (speed.flowM3PerS() > point.flowM3PerS()) {
            Feed feed = flows.feed().feed();
            TapAloneWorking.add(lines, feed, feed.taps().get(0), "Q_t");
            flow = "(Q + Q_t)";
        }
        return lines.input(
                        "D",
                        "bore",
                        DisplayUnit.MILLIMETRE.amount(speed.piece().pipe().boreM()),
                        "",
                        speed.piece().origin().of("bore"))
                .step("v", "velocity", FeedWorking.velocity(flow, ""), "m/s", "")
                .build();
    }

    private static void loss(HeaterCase heater) {
        FeedConditions feed = heater.feed(PressureChecks.LOSS);
        if (feed == null) {
            return;
        }
        double flow = heater.unit().heater().getRunningPressureFlow().si();
        if (!UnitData.flow(heater.unit().heater().getRunningPressureFlow())) {
            heater.cannotTell(PressureChecks.LOSS, "heater.runningPressureFlow");
            return;
        }
        LossShares shares = feed.at(feed.coldest()).lossShares(flow);
        List<Share> causes = List.of(
                new Share("supply", shares.supplyPa()),
                new Share("pipe", shares.frictionPa()),
                new Share("fittings", shares.fittingPa()),
                new Share("height", Math.max(0, shares.heightPa())));
        report(heater, feed, flow, causes);
    }

    private record Share(String cause, double pascal) {}

    private static void report(HeaterCase heater, FeedConditions feed, double flow, List<Share> causes) {
        double sum = causes.stream().mapToDouble(Share::pascal).sum();
        Share most = causes.get(0);
        for (Share share : causes) {
            most = share.pascal() > most.pascal() ? share : most;
        }
        Share largest = most;
        FindingBuilder finding = heater.on(PressureChecks.LOSS)
                .report(sum > 0 ? largest.pascal() / sum : 0)
                .condition(feed.shut(feed.coldest()))
                .variant(largest.cause())
                .argument("flow", Kind.FLOW.amount(flow))
                .argument("sum", Kind.PRESSURE.amount(sum));
        causes.forEach(share -> finding.argument(share.cause(), Kind.PRESSURE.amount(share.pascal())));
        finding.working(() -> shares(heater, feed, flow, largest, sum)).add();
    }

    private static Working shares(HeaterCase heater, FeedConditions feed, double flow, Share largest, double sum) {
        int coldest = feed.coldest();
        String origin = Origin.heater(heater.unit().heater(), "runningPressureFlow");
        WorkingLines lines = new WorkingLines().include(FeedWorking.inlet(feed, coldest, flow, origin), "");
        LossLines.add(lines, feed.feed().run());
        String share = sum > 0 ? "100 * dp_" + largest.cause() + " / dp" : "0 * dp";
        return lines.step("p", "lossShare", share, "%", "").build();
    }
}
