// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Check;
import twinfeed.calculator.FindingBuilder;
import twinfeed.calculator.Findings;
import twinfeed.calculator.Outcome;
import twinfeed.calculator.SharedQuantities;
import twinfeed.calculator.SharedQuantity;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.model.survey.PresentUnit;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterTest;

/** One heater in one house: what is known of both, and where the findings go. */
final class HeaterCase {
    private final House house;
    private final Candidate candidate;
    private final SharedQuantities exchange;
    private final Findings findings;
    private final UnitData unit;
    private @Nullable UnitFlows flows;

    HeaterCase(House house, Candidate candidate, SharedQuantities exchange, Findings findings) {
        this.house = house;
        this.candidate = candidate;
        this.exchange = exchange;
        this.findings = findings;
        this.unit = new UnitData(candidate.heater());
    }

    House house() {
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

    /** Hands a quantity to the other calculators. */
    void give(SharedQuantity key, double value) {
        exchange.give(key, value);
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
                || findings.blocked(check, exchange, SharedQuantity.DELIVERED_POWER)
                || findings.blocked(check, exchange, SharedQuantity.WISHED_FLOW)) {
            return null;
        }
        UnitFlows known = flows;
        if (known == null) {
            known = new UnitFlows(feed, exchange, fullBore(feed));
            flows = known;
        }
        return known;
    }

    /**
     * The unit fully open. A flow measured at the present unit is preferred; otherwise the least running pressure at its flow
     * stands in, which is conservative: a specification minimum and not a curve of losses.
     */
    @Nullable
    Outlet fullBore(FeedConditions feed) {
        Outlet known = measuredOutlet(feed);
        return known == null ? unit.need().orElse(null) : known;
    }

    /** Whether the unit fully open is known from a measurement. */
    boolean measured(FeedConditions feed) {
        return measuredOutlet(feed) != null;
    }

    private @Nullable Outlet measuredOutlet(FeedConditions feed) {
        PresentUnit present = candidate.present() ? house.survey().getUnit() : null;
        if (present == null || !UnitData.flow(present.getMeasuredFlow())) {
            return null;
        }
        double flow = present.getMeasuredFlow().si();
        double inletPa = feed.at(0).inletPa(flow, 0);
        return inletPa > 0 ? Outlet.ofPoint(flow, inletPa, 0) : null;
    }
}
