// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.check;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.calculator.formula.Working;
import twinfeed.calculator.pressure.hydraulics.FeedConditions;
import twinfeed.calculator.pressure.hydraulics.SwitchOffCondition;
import twinfeed.calculator.pressure.hydraulics.UnitFlows;
import twinfeed.calculator.pressure.survey.UnitData;
import twinfeed.calculator.pressure.working.OutletWorking;
import twinfeed.calculator.pressure.working.UnitLines;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.DisplayUnit;
import twinfeed.units.Kind;

/** One heater in one house: what is known of both, and where the findings go. */
public final class HeaterCase {
    /** Loss of a clean strainer with its solenoid valve where the instructions do not say, Pa: judgement, from memory. */
    private static final double USUAL_STRAINER_PA = 5000;

    private static final double USUAL_STRAINER_FLOW = DisplayUnit.of(Kind.FLOW).toSi(12);

    private final SurveyedHouse house;
    private final Candidate candidate;
    private final SharedQuantities shared;
    private final Findings findings;
    private final UnitData unit;
    private @Nullable UnitFlows flows;

    public HeaterCase(SurveyedHouse house, Candidate candidate, SharedQuantities shared, Findings findings) {
        this.house = house;
        this.candidate = candidate;
        this.shared = shared;
        this.findings = findings;
        this.unit = new UnitData(candidate.heater());
    }

    SurveyedHouse house() {
        return house;
    }

    UnitData unit() {
        return unit;
    }

    boolean present() {
        return candidate.present();
    }

    /** What to call the heater in an assumption. */
    String title() {
        String title = candidate.heater().getTitle();
        String id = candidate.heater().getId();
        return title != null ? title : id == null ? "" : id;
    }

    /** Provides a quantity to the other calculators, in its SI unit. */
    void provide(SharedQuantity key, double value) {
        shared.put(key, value);
    }

    FindingBuilder on(Check check) {
        return findings.on(check);
    }

    void notApplicable(Check check, String variant) {
        findings.on(check).outcome(Outcome.NOT_APPLICABLE).variant(variant).add();
    }

    void cannotTell(Check check, String... missing) {
        findings.on(check).cannotTell(List.of(missing)).add();
    }

    /** Whether a reading that the check names is missing; if so, that is said. */
    boolean blocked(Check check) {
        return findings.blocked(check);
    }

    /** The two-point test, for checks that need one of its readings. */
    WaterTest test() {
        WaterFeed water = house.water();
        if (water == null) {
            throw new IllegalStateException("the check does not ask for the test");
        }
        return water.getTest();
    }

    /** The feed, or null where the check cannot be answered, which is then said. */
    @Nullable
    FeedConditions feed(Check check) {
        if (findings.blocked(check)) {
            return null;
        }
        FeedConditions feed = house.feed();
        if (feed == null) {
            findings.on(check).cannotTell(house.faults()).add();
        }
        return feed;
    }

    /** The flows through the unit, or null where the check cannot be answered, which is then said. */
    @Nullable
    UnitFlows flows(Check check) {
        FeedConditions feed = feed(check);
        if (feed == null
                || findings.blocked(check, shared, SharedQuantity.DELIVERED_POWER)
                || findings.blocked(check, shared, SharedQuantity.TARGET_FLOW)) {
            return null;
        }
        UnitFlows known = flows;
        if (known == null) {
            known = new UnitFlows(feed, shared, fullBore(), this::fullBoreWorking);
            flows = known;
        }
        return known;
    }

    /**
     * The unit fully open. A flow measured at the present unit is preferred; otherwise the least running pressure at its flow
     * stands in, which is conservative: a specification minimum and not a curve of losses.
     */
    @Nullable
    Outlet fullBore() {
        Outlet known = measuredOutlet();
        return known == null ? unit.need().orElse(null) : known;
    }

    /** How the loss of the unit fully open is known; empty where it is not. */
    Working fullBoreWorking() {
        FeedConditions surveyed = house.surveyedFeed();
        PresentUnit present = house.survey().getUnit();
        if (surveyed != null && present != null && measured()) {
            return OutletWorking.measured(surveyed, present.getMeasuredFlow().si());
        }
        return unit.need().isPresent() ? UnitLines.need(unit.heater()) : Working.none();
    }

    /** Whether the unit fully open is known from a measurement. */
    boolean measured() {
        return measuredOutlet() != null;
    }

    /** Fitted where the flow was measured: in the house as surveyed. */
    private @Nullable Outlet measuredOutlet() {
        PresentUnit present = candidate.present() ? house.survey().getUnit() : null;
        FeedConditions feed = house.surveyedFeed();
        if (present == null || feed == null || !UnitData.flow(present.getMeasuredFlow())) {
            return null;
        }
        double flow = present.getMeasuredFlow().si();
        double inletPa = feed.at(0).inletPa(flow, 0);
        return inletPa > 0 ? Outlet.ofPoint(flow, inletPa, 0) : null;
    }

    /** At what flow or pressure the heat goes off. */
    SwitchOffCondition switchOff() {
        return new SwitchOffCondition(unit, unit.pressureSwitch() == null ? 0 : strainer(), house.lowestHandsetM());
    }

    /** Loss of strainer and solenoid valve over the square of the flow; without data a clean one's, as an assumption. */
    double strainer() {
        Double known = unit.strainer();
        if (known != null || !unit.inletPossible()) {
            return known == null ? 0 : known;
        }
        house.context()
                .assume(
                        "inletLoss",
                        Map.of(
                                "heater",
                                title(),
                                "pressure",
                                Kind.PRESSURE.amount(USUAL_STRAINER_PA),
                                "flow",
                                Kind.FLOW.amount(USUAL_STRAINER_FLOW)));
        return USUAL_STRAINER_PA / (USUAL_STRAINER_FLOW * USUAL_STRAINER_FLOW);
    }

    /**
     * A unit that holds its flow by itself, with its valve fully open: the same losses as where the largest flow is asked for. Null for
     * one that does not hold it, or of which nothing is known.
     *
     * @param flow the flow that it holds, m3/s
     */
    @Nullable
    Outlet stabiliserOpen(double flow) {
        Heater data = unit.heater();
        if (!Boolean.TRUE.equals(data.getStabilised())) {
            return null;
        }
        Outlet open = fullBore();
        if (open != null || data.getStabilisedMinimum() == null) {
            return open;
        }
        Double downstream = unit.downstream();
        double behindPa = downstream == null ? 0 : downstream * flow * flow;
        double neededPa = behindPa + data.getStabilisedMinimum().si();
        return flow > 0 && neededPa > 0 ? Outlet.ofPoint(flow, neededPa, 0) : null;
    }
}
