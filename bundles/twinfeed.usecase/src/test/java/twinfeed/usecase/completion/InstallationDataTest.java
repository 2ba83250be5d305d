// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.completion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.SampleHouse;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Area;
import twinfeed.units.Length;

/** What the certificate's page says of supply and circuit: what was seen, what is known not to be there, and a gap for the rest. */
class InstallationDataTest {
    private static final SurveyFactory MAKE = SurveyFactory.eINSTANCE;

    private final PageParts parts = new PageParts(Locale.ENGLISH);

    private Map<String, String> rows(Survey house) {
        Map<String, String> rows = new LinkedHashMap<>();
        new InstallationData(parts, RuleSets.standard()).rows(house).forEach(row -> rows.put(row.get(0), row.get(1)));
        return rows;
    }

    private String value(Survey house, String key) {
        return rows(house).getOrDefault(parts.get(key), "no such row");
    }

    @Test
    void aHouseOfWhichNothingIsKnownLeavesEverythingToThePen() {
        assertEquals(Set.of(""), said(MAKE.createSurvey()));
        Survey supplyOnly = MAKE.createSurvey();
        supplyOnly.setElectricity(MAKE.createElectricalFeed());
        assertEquals(Set.of(""), said(supplyOnly));
        assertEquals(Set.of(""), said(SampleHouse.wired()));
    }

    /** What stands behind the heads, but for the kind of fault protection, which every circuit of this trade has. */
    private Set<String> said(Survey house) {
        Set<String> said = new TreeSet<>(rows(house).values());
        said.remove(parts.get("data.disconnection"));
        return said;
    }

    @Test
    void whatIsKnownNotToBeThereIsSaid() {
        Survey house = SampleHouse.wired();
        ElectricalFeed feed = house.getElectricity();
        feed.setHasEarthingConductor(false);
        feed.setHasMainBonding(false);
        assertEquals(parts.get("data.none"), value(house, "data.earthingConductor"));
        assertEquals(parts.get("data.none"), value(house, "data.bonding"));
        feed.setMetalServices(false);
        assertEquals(parts.get("data.nothingToBond"), value(house, "data.bonding"));
        ResidualDevice none = MAKE.createResidualDevice();
        none.setKind(RcdKind.NONE);
        feed.getCircuit().setRcd(none);
        assertEquals(parts.get("data.none"), value(house, "data.residual"));
    }

    @Test
    void whatWasSeenStandsInTheUnitsAndWordsOfTheTrade() {
        Survey house = SampleHouse.wired();
        ElectricalFeed feed = house.getElectricity();
        feed.setEarthing(Earthing.TN_S);
        feed.setMainBonding(Area.valueOf("10 mm²"));
        Circuit circuit = feed.getCircuit();
        ProtectiveDevice device = SampleHouse.device("breaker-b", "40 A");
        circuit.setDevice(device);
        ResidualDevice rcd = MAKE.createResidualDevice();
        rcd.setType("A");
        circuit.setRcd(rcd);
        CableSegment first = MAKE.createCableSegment();
        first.setSize(Area.valueOf("10 mm²"));
        first.setCpc(Area.valueOf("4 mm²"));
        first.setLength(Length.valueOf("8 m"));
        first.setMethod("one-of-their-own");
        CableSegment second = MAKE.createCableSegment();
        second.setSize(Area.valueOf("10 mm²"));
        circuit.getSegments().addAll(List.of(first, second));
        assertEquals("10 mm²", value(house, "data.bonding"));
        assertEquals("circuit-breaker, type B, 40 A", value(house, "data.device"));
        assertEquals("", value(house, "data.breaking"));
        assertEquals(parts.get("data.type") + " A", value(house, "data.residual"));
        assertEquals("10 mm² / 4 mm²; 10 mm²", value(house, "data.cable"));
        assertEquals("8.0 m", value(house, "data.length"));
        assertEquals("one-of-their-own", value(house, "data.methods"));
        rcd.setKind(RcdKind.RCBO);
        device.setKind("one-of-their-own");
        assertEquals("one-of-their-own, 40 A", value(house, "data.device"));
        assertEquals(
                parts.get("data.residual.rcbo") + ", " + parts.get("data.type") + " A", value(house, "data.residual"));
    }
}
