// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.calculator.circuit.Surveys.finding;

import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Remedy;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.IsolatorCondition;
import twinfeed.model.survey.OldCable;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.UpstreamRcd;
import twinfeed.model.survey.WayPosition;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Length;
import twinfeed.units.Resistance;
import twinfeed.units.text.Phrase;

/** Every work, on a survey that needs it: it is offered, and on the edited copy the check passes. */
class CircuitRemediesTest {
    private static Circuit circuit(Survey survey) {
        return survey.getElectricity().getCircuit();
    }

    private static void size(Survey survey, String size) {
        circuit(survey).getSegments().forEach(segment -> segment.setSize(Area.valueOf(size)));
    }

    /** 43.75 A and 40 A of others through 63 A: 83.75 A. */
    private static void overloaded(Survey survey) {
        circuit(survey).getRcd().setRating(Current.valueOf("63 A"));
        circuit(survey).getRcd().setLoad(Current.valueOf("40 A"));
        circuit(survey).getRcd().setScope(RcdScope.HOUSE);
    }

    /** 23.5 A for 6 mm², 32 A for 10 mm² and 42.5 A for 16 mm² (BS 7671 table 4D5; memory). */
    private static void inStudWall(Survey survey) {
        circuit(survey).getSegments().get(0).setMethod("103");
        size(survey, "6 mm2");
    }

    private record Case(String check, String work, String power, Consumer<Survey> trouble) {}

    private static List<Case> cases() {
        return List.of(
                new Case("circuit.designCurrent", "device-breaker-45", "10.5 kW", survey -> {}),
                new Case("circuit.designCurrent", "device-rcbo-50", "11.5 kW", survey -> {}),
                new Case("circuit.capacity", "cable-10", "9.5 kW", survey -> {
                    circuit(survey).getSegments().get(0).setMethod("100");
                    size(survey, "6 mm2");
                }),
                new Case("circuit.capacity", "cable-elsewhere-6", "9.5 kW", CircuitRemediesTest::inStudWall),
                new Case("circuit.capacity", "cable-elsewhere-10", "9.5 kW", CircuitRemediesTest::inStudWall),
                new Case("circuit.capacity", "lift-out-of-insulation", "9.5 kW", survey -> circuit(survey)
                        .getSegments()
                        .get(0)
                        .setMethod("101")),
                new Case("circuit.capacity", "clip-cable", "9.5 kW", survey -> circuit(survey)
                        .getSegments()
                        .get(0)
                        .setInsulated(Length.valueOf("400 mm"))),
                new Case("circuit.capacity", "device-breaker-32", "7.2 kW", survey -> {
                    size(survey, "6 mm2");
                    circuit(survey).getSegments().get(0).setMethod("100");
                }),
                new Case("circuit.voltageDrop", "cable-16", "9.5 kW", survey -> circuit(survey)
                        .getSegments()
                        .get(0)
                        .setLength(Length.valueOf("70 m"))),
                new Case("circuit.loopImpedance", "device-rcbo-40", "9.5 kW", survey -> {
                    circuit(survey).getRcd().setKind(RcdKind.NONE);
                    circuit(survey).setMeasuredLoop(Resistance.valueOf("1.0 ohm"));
                }),
                new Case("circuit.rcd", "device-rcbo-40", "9.5 kW", survey -> circuit(survey)
                        .getRcd()
                        .setKind(RcdKind.NONE)),
                new Case("circuit.rcd", "consumer-unit-rcbo-40", "9.5 kW", survey -> {
                    circuit(survey).getRcd().setKind(RcdKind.NONE);
                    circuit(survey).getDevice().setKind("fuse-3036");
                }),
                new Case("circuit.rcdRating", "enclosure-rcbo-45", "10.5 kW", CircuitRemediesTest::overloaded),
                new Case("circuit.rcdRating", "consumer-unit-rcbo-45", "10.5 kW", CircuitRemediesTest::overloaded),
                new Case("circuit.rcdRating", "own-way-rcbo-45", "10.5 kW", survey -> {
                    overloaded(survey);
                    survey.getElectricity().setSpareWayBehind(WayPosition.MAIN_SWITCH);
                }),
                new Case("circuit.rcdRating", "delayed-main-rcbo-45", "10.5 kW", survey -> {
                    overloaded(survey);
                    survey.getElectricity().setEarthing(Earthing.TT);
                    circuit(survey).getRcd().setResidual(Current.valueOf("100 mA"));
                }),
                new Case("circuit.rcdRating", "device-rcbo-45", "10.5 kW", survey -> {
                    circuit(survey).getRcd().setRating(Current.valueOf("40 A"));
                    circuit(survey).getRcd().setScope(RcdScope.CIRCUIT);
                }),
                new Case("circuit.protectiveConductor", "cable-10", "9.5 kW", survey -> circuit(survey)
                        .getSegments()
                        .get(0)
                        .setHasCpc(false)),
                new Case("circuit.earthPath", "task-trace-joint", "9.5 kW", survey -> circuit(survey)
                        .setMeasuredLoop(Resistance.valueOf("0.9 ohm"))),
                new Case("circuit.insulationResistance", "task-test-apart", "9.5 kW", survey -> circuit(survey)
                        .setInsulationResistance(Resistance.valueOf("0.1 Mohm"))),
                new Case("circuit.insulationResistance", "cable-10", "9.5 kW", survey -> {
                    circuit(survey).setInsulationResistance(Resistance.valueOf("0.1 Mohm"));
                    circuit(survey).setUnitDisconnected(true);
                }),
                new Case("circuit.zones", "task-move-isolator", "9.5 kW", survey -> survey.getSite()
                        .setOutsideZones(false)),
                new Case("circuit.oldCable", "cable-10", "9.5 kW", survey -> circuit(survey)
                        .getSegments()
                        .get(0)
                        .setOldCable(OldCable.RUBBER)),
                new Case("circuit.isolatorRating", "isolator-45", "9.5 kW", survey -> {
                    circuit(survey).setIsolator(SurveyFactory.eINSTANCE.createIsolator());
                    circuit(survey).getIsolator().setKind("none");
                }),
                new Case("circuit.earthingConductor", "earthing-16", "9.5 kW", survey -> {
                    survey.getElectricity().setEarthingConductor(null);
                    survey.getElectricity().setHasEarthingConductor(false);
                }),
                new Case("circuit.mainBonding", "bonding-10", "9.5 kW", survey -> {
                    survey.getElectricity().setMainBonding(null);
                    survey.getElectricity().setHasMainBonding(false);
                }),
                new Case("circuit.rcd", "enclosure-rcbo-40", "9.5 kW", survey -> {
                    circuit(survey).getRcd().setKind(RcdKind.NONE);
                    circuit(survey).getDevice().setKind("fuse-3036");
                }),
                new Case("circuit.electrode", "electrode", "9.5 kW", survey -> {
                    survey.getElectricity().setEarthing(Earthing.TT);
                    survey.getElectricity().setElectrode(Resistance.valueOf("2 kohm"));
                }),
                new Case("circuit.isolatorRating", "isolator-50", "9.5 kW", survey -> circuit(survey)
                        .getDevice()
                        .setRating(Current.valueOf("50 A"))),
                new Case("circuit.isolatorCondition", "isolator-45", "9.5 kW", survey -> circuit(survey)
                        .getIsolator()
                        .setCondition(IsolatorCondition.SCORCHED)),
                new Case("circuit.isolatorWear", "isolator-45", "9.5 kW", survey -> circuit(survey)
                        .getIsolator()
                        .setCondition(IsolatorCondition.WORN)),
                new Case("circuit.supplyEarth", "operator-earth", "9.5 kW", survey -> survey.getElectricity()
                        .setExternalLoop(Resistance.valueOf("0.9 ohm"))),
                new Case("circuit.faultLevel", "consumer-unit-rcbo-40", "9.5 kW", survey -> {
                    survey.getElectricity().setProspectiveFault(Current.valueOf("6.5 kA"));
                    survey.getElectricity().setAssemblyFaultRating(Current.valueOf("6 kA"));
                }),
                new Case("circuit.instructedDevice", "device-breaker-45", "9.5 kW", survey -> circuit(survey)
                        .getDevice()
                        .setRating(Current.valueOf("50 A"))),
                new Case("circuit.tails", "tails-25", "9.5 kW", survey -> {
                    survey.getElectricity().setServiceFuse(Current.valueOf("100 A"));
                    survey.getElectricity().setTails(Area.valueOf("16 mm2"));
                }),
                new Case("circuit.earthingConductor", "earthing-16", "9.5 kW", survey -> survey.getElectricity()
                        .setEarthingConductor(Area.valueOf("6 mm2"))),
                new Case("circuit.bondingSize", "bonding-10", "9.5 kW", survey -> survey.getElectricity()
                        .setMainBonding(Area.valueOf("6 mm2"))),
                new Case("circuit.deviceApproved", "device-breaker-40", "9.5 kW", survey -> survey.getElectricity()
                        .setDeviceApproved(false)),
                new Case("circuit.spareWay", "extra-way", "9.5 kW", survey -> {
                    circuit(survey).setDevice(null);
                    survey.getElectricity().setSpareWay(false);
                }),
                new Case("circuit.supplementaryBonding", "device-rcbo-40", "9.5 kW", survey -> {
                    circuit(survey).getRcd().setKind(RcdKind.NONE);
                    survey.getSite().setSupplementaryBonding(false);
                }));
    }

    private static Heater heater(String power) {
        Heater heater = Surveys.heater(power, "240 V");
        heater.setMaximumDevice(Current.valueOf(power.equals("11.5 kW") ? "50 A" : "45 A"));
        return heater;
    }

    private static Remedy offered(Finding finding, String id) {
        return finding.remedies().stream()
                .filter(remedy -> remedy.id().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("not offered among "
                        + finding.remedies().stream().map(Remedy::id).toList()));
    }

    @TestFactory
    Stream<DynamicTest> eachWorkMendsItsCheck() {
        return cases().stream()
                .map(each -> DynamicTest.dynamicTest(each.work + " for " + each.check, () -> mends(each)));
    }

    private static void mends(Case each) {
        Survey survey = Surveys.suitable();
        each.trouble.accept(survey);
        Heater heater = heater(each.power);
        Finding failing = finding(survey, heater, each.check);
        assertEquals(Outcome.FAILS, failing.outcome());
        Remedy work = offered(failing, each.work);
        assertTrue(!work.items().isEmpty());
        Survey copy = EcoreUtil.copy(survey);
        work.edit().accept(copy);
        Outcome after = finding(copy, heater, each.check).outcome();
        assertTrue(after == Outcome.PASSES || after == Outcome.NOT_APPLICABLE, "after the work: " + after);
        assertEquals(Outcome.FAILS, finding(survey, heater, each.check).outcome(), "the survey itself is not touched");
    }

    private static Survey after(String work) {
        Case each = cases().stream()
                .filter(one -> one.work.equals(work))
                .findFirst()
                .orElseThrow();
        Survey survey = Surveys.suitable();
        each.trouble.accept(survey);
        offered(finding(survey, heater(each.power), each.check), work).edit().accept(survey);
        return survey;
    }

    private static Remedy work(String id) {
        Case each =
                cases().stream().filter(one -> one.work.equals(id)).findFirst().orElseThrow();
        Survey survey = Surveys.suitable();
        each.trouble.accept(survey);
        return offered(finding(survey, heater(each.power), each.check), id);
    }

    /** What is charged besides the device itself is named to the customer, in words that no electrician needs to explain. */
    @Test
    void theCustomerReadsOfAllThatIsChargedWithADevice() {
        Map<String, List<String>> named = Map.of(
                "device-rcbo-50", List.of("in place of the present one", "anstelle der jetzigen Absicherung"),
                "own-way-rcbo-45", List.of("a free place in the fuse box", "einem freien Platz im Sicherungskasten"),
                "enclosure-rcbo-45", List.of("a new small box", "einem neuen kleinen Kasten"),
                "delayed-main-rcbo-45", List.of("a new main safety switch", "ein neuer FI-Schutzschalter"),
                "consumer-unit-rcbo-45", List.of("a new fuse box", "einem neuen Sicherungskasten"),
                "cable-10", List.of("laid where it can be reached", "wo sie zugänglich bleibt"));
        named.forEach((id, words) -> {
            Remedy work = work(id);
            for (Locale locale : List.of(Locale.UK, Locale.GERMAN)) {
                String text = new CircuitCalculator()
                        .descriptor()
                        .texts()
                        .format(locale, "customer.remedy." + work.kind(), work.arguments());
                assertTrue(text.contains(words.get(locale == Locale.UK ? 0 : 1)), text);
            }
        });
    }

    /**
     * Tails of 25 mm² for 100 A and 16 mm² of earthing for them: BS 7671 tables 4D1 and 54.7 (memory); 10 mm² of main bonding: table 54.8
     * (memory). A main switch and a residual-current device ahead of all circuits are of 100 A, the latter of 100 mA, delayed (common
     * practice).
     */
    @Test
    void worksAtTheOriginLeaveTheSizesThatTheyAreNamedFor() {
        assertEquals(25e-6, after("tails-25").getElectricity().getTails().si(), 1e-12);
        assertEquals(
                16e-6,
                after("earthing-16").getElectricity().getEarthingConductor().si(),
                1e-12);
        assertEquals(
                10e-6, after("bonding-10").getElectricity().getMainBonding().si(), 1e-12);
        assertEquals(
                100,
                after("consumer-unit-rcbo-45").getElectricity().getMainSwitch().si());
        UpstreamRcd upstream = circuit(after("delayed-main-rcbo-45")).getUpstreamRcd();
        assertEquals(100, upstream.getRating().si());
        assertEquals(0.1, upstream.getResidual().si());
    }

    /** A house that needs a larger device and, by that, a thicker cable and another isolator: together they suit. */
    @Test
    void worksTogetherMakeItSuit() {
        Survey survey = Surveys.suitable();
        size(survey, "6 mm2");
        circuit(survey).getSegments().get(0).setMethod("100");
        Heater strong = heater("11.5 kW");
        for (String[] step : new String[][] {
            {"circuit.designCurrent", "device-rcbo-50"},
            {"circuit.capacity", "cable-16"},
            {"circuit.isolatorRating", "isolator-50"}
        }) {
            offered(finding(survey, strong, step[0]), step[1]).edit().accept(survey);
        }
        assertEquals(
                Verdict.SUITS,
                Surveys.assess(survey, strong).options().get(0).verdict(),
                () -> Surveys.findings(survey, strong).stream()
                        .filter(each -> each.outcome() != Outcome.PASSES)
                        .map(Surveys::sentence)
                        .toList()
                        .toString());
    }

    @Test
    void aCableIsPricedByItsLengthRoundedUp() {
        Survey survey = Surveys.suitable();
        size(survey, "6 mm2");
        circuit(survey).getSegments().get(0).setMethod("100");
        circuit(survey).getSegments().get(0).setLength(Length.valueOf("4.12 m"));
        Remedy cable = offered(finding(survey, heater("9.5 kW"), "circuit.capacity"), "cable-10");
        assertEquals(
                new Remedy.Item("cable-10", new BigDecimal("10.7")),
                cable.items().get(0));
    }

    /** Until the way is known it is taken a quarter longer: 4 m of 10.5 m become 5 m. */
    @Test
    void aCableByAnotherWayIsTakenAQuarterLonger() {
        Survey survey = Surveys.suitable();
        inStudWall(survey);
        circuit(survey).getSegments().get(0).setLength(Length.valueOf("4 m"));
        double othersM = circuit(survey).getSegments().stream()
                .skip(1)
                .mapToDouble(piece -> piece.getLength().si())
                .sum();
        Remedy cable = offered(finding(survey, heater("9.5 kW"), "circuit.capacity"), "cable-elsewhere-10");
        assertEquals(5 + othersM, cable.items().get(0).quantity().doubleValue(), 1e-9);
        cable.edit().accept(survey);
        CableSegment moved = circuit(survey).getSegments().get(0);
        assertEquals(5, moved.getLength().si(), 1e-9);
        assertEquals("C", moved.getMethod());
        assertEquals("10 mm²", circuit(survey).getSegments().get(1).getSize().toString());
    }

    /** In binary 3.6 + 4.2 + 2.4 is a little more than 10.2, which is no reason to charge 10.3 m. */
    @Test
    void aSumOfLengthsIsThatOfTheirDecimals() {
        Survey survey = Surveys.suitable();
        size(survey, "6 mm2");
        circuit(survey).getSegments().get(0).setMethod("100");
        circuit(survey)
                .getSegments()
                .add(EcoreUtil.copy(circuit(survey).getSegments().get(0)));
        List<String> lengths = List.of("3.6 m", "4.2 m", "2.4 m");
        for (int at = 0; at < lengths.size(); at++) {
            circuit(survey).getSegments().get(at).setLength(Length.valueOf(lengths.get(at)));
        }
        assertEquals(3, circuit(survey).getSegments().size());
        Remedy cable = offered(finding(survey, heater("9.5 kW"), "circuit.capacity"), "cable-10");
        assertEquals(
                new Remedy.Item("cable-10", new BigDecimal("10.2")),
                cable.items().get(0));
    }

    @Test
    void aCableThatDoesNotFitTheHeaterIsNotOffered() {
        Survey survey = Surveys.suitable();
        circuit(survey).getSegments().get(0).setLength(Length.valueOf("70 m"));
        Heater heater = heater("9.5 kW");
        heater.setMaximumConductor(Area.valueOf("10 mm2"));
        assertTrue(finding(survey, heater, "circuit.voltageDrop").remedies().isEmpty());
    }

    /** The isolator that does not take the cable can be changed, even for one of its own rating. */
    @Test
    void aCableThatDoesNotFitTheIsolatorBringsAnother() {
        Survey survey = Surveys.suitable();
        circuit(survey).getSegments().get(0).setLength(Length.valueOf("70 m"));
        circuit(survey).getIsolator().setMaximumConductor(Area.valueOf("10 mm2"));
        Heater heater = heater("9.5 kW");
        offered(finding(survey, heater, "circuit.voltageDrop"), "cable-16")
                .edit()
                .accept(survey);
        Finding terminals = finding(survey, heater, "circuit.terminals");
        assertEquals(Outcome.FAILS, terminals.outcome());
        offered(terminals, "isolator-45").edit().accept(survey);
        assertEquals(
                Outcome.PASSES, finding(survey, heater, "circuit.terminals").outcome());
    }

    /** A rewirable fuse lets the cable carry less than a breaker of its rating. */
    @Test
    void aFuseIsReplacedByABreakerOfItsRatingForTheCablesSake() {
        Survey survey = Surveys.suitable();
        circuit(survey).getDevice().setKind("fuse-3036");
        circuit(survey).getDevice().setRating(Current.valueOf("45 A"));
        circuit(survey).getSegments().get(0).setMethod("102");
        Finding capacity = finding(survey, heater("10.5 kW"), "circuit.capacity");
        assertEquals(Outcome.FAILS, capacity.outcome());
        offered(capacity, "consumer-unit-rcbo-45");
    }

    /** The piece that is good enough for the present device may not be for the one that the heater needs. */
    @Test
    void liftingIsOfferedForTheDevicesThatMayCome() {
        Survey survey = Surveys.suitable();
        size(survey, "6 mm2");
        circuit(survey).getDevice().setRating(Current.valueOf("32 A"));
        circuit(survey).getSegments().get(0).setMethod("101");
        circuit(survey).getSegments().get(1).setMethod("100");
        List<String> lifted = finding(survey, heater("7.5 kW"), "circuit.capacity").remedies().stream()
                .filter(remedy -> remedy.id().equals("lift-out-of-insulation"))
                .map(remedy -> String.valueOf(remedy.arguments().get("segments")))
                .toList();
        assertEquals(List.of("board to loft", "board to loft, drop to the shower"), lifted);
    }

    @Test
    void noLargerDeviceIsOfferedForACableThatIsTooThin() {
        Survey survey = Surveys.suitable();
        size(survey, "6 mm2");
        circuit(survey).getSegments().get(0).setMethod("100");
        assertTrue(finding(survey, heater("9.5 kW"), "circuit.capacity").remedies().stream()
                .noneMatch(remedy -> remedy.kind().equals("device")));
    }

    /** Under 100 mm of insulation 10 mm² carries 36 A, clipped 64 A (BS 7671 table 4D5; memory): run anew it lies clear of it and of others. */
    @Test
    void aNewCableIsLaidClearOfInsulationAndOfOtherCables() {
        Survey survey = Surveys.suitable();
        size(survey, "6 mm2");
        CableSegment loft = circuit(survey).getSegments().get(0);
        loft.setMethod("101");
        CableSegment clipped = circuit(survey).getSegments().get(1);
        clipped.setMethod("C");
        clipped.setConfidence(Confidence.SEEN);
        clipped.setGrouped(3);
        Finding capacity = finding(survey, heater("9.5 kW"), "circuit.capacity");
        Remedy cable = offered(capacity, "cable-10");
        assertEquals(Phrase.of("route.clear"), cable.arguments().get("route"));
        cable.edit().accept(survey);
        assertEquals("C", loft.getMethod());
        assertEquals(1, clipped.getGrouped());
        Finding after = finding(survey, heater("9.5 kW"), "circuit.capacity");
        assertEquals(Outcome.PASSES, after.outcome());
        assertEquals(64, after.figures().value(), 1e-9);
        loft.setLength(Length.valueOf("70 m"));
        assertEquals(
                Phrase.of("route.same"),
                offered(finding(survey, heater("9.5 kW"), "circuit.voltageDrop"), "cable-16")
                        .arguments()
                        .get("route"));
    }

    /** Readings of the old cable say nothing about the new one. */
    @Test
    void aNewCableForgetsOldReadings() {
        Survey survey = Surveys.suitable();
        circuit(survey).setMeasuredLoop(Resistance.valueOf("0.9 ohm"));
        circuit(survey).getSegments().get(0).setLength(Length.valueOf("70 m"));
        offered(finding(survey, heater("9.5 kW"), "circuit.voltageDrop"), "cable-16")
                .edit()
                .accept(survey);
        assertEquals(null, circuit(survey).getMeasuredLoop());
        assertEquals(
                "calculated",
                finding(survey, heater("9.5 kW"), "circuit.loopImpedance").variant());
    }

    private static List<String> works(Survey survey, String power, String check) {
        return finding(survey, heater(power), check).remedies().stream()
                .map(Remedy::id)
                .toList();
    }

    /** In a stud wall 10 mm² carries 32 A and 16 mm² 42.5 A (BS 7671 table 4D5; memory); 9.5 kW draw 39.6 A. */
    @Test
    void aCableThatCannotCarryTheHeaterWhereItHasToLieIsNotOffered() {
        Survey survey = Surveys.suitable();
        size(survey, "6 mm2");
        circuit(survey).getSegments().forEach(segment -> segment.setMethod("103"));
        List<String> works = works(survey, "9.5 kW", "circuit.capacity");
        assertTrue(works.contains("cable-16"), works.toString());
        assertTrue(!works.contains("cable-10"), works.toString());
        // 36 A in deep insulation, but 64 A clear of it, where it is laid.
        circuit(survey).getSegments().forEach(segment -> segment.setMethod("101"));
        assertTrue(works(survey, "9.5 kW", "circuit.capacity").contains("cable-10"));
    }

    /** The rating that is there may stay where it carries the heater and is still made: 50 A, but neither 32 A nor 60 A. */
    @Test
    void theRatingThatIsThereMayStay() {
        Survey survey = Surveys.suitable();
        circuit(survey).getRcd().setKind(RcdKind.NONE);
        circuit(survey).getDevice().setRating(Current.valueOf("50 A"));
        List<String> smaller = List.of("device-rcbo-40", "device-rcbo-45");
        assertEquals(
                List.of("device-rcbo-50", "device-rcbo-40", "device-rcbo-45"), works(survey, "9.5 kW", "circuit.rcd"));
        for (String rating : List.of("32 A", "40 A", "60 A")) {
            circuit(survey).getDevice().setRating(Current.valueOf(rating));
            assertEquals(smaller, works(survey, "9.5 kW", "circuit.rcd"), rating);
        }
    }

    /** The heater's instructions may end at the very rating that it needs. */
    @Test
    void noRatingOverTheInstructionsIsOffered() {
        Survey survey = Surveys.suitable();
        circuit(survey).getRcd().setKind(RcdKind.NONE);
        Heater heater = heater("9.5 kW");
        heater.setMaximumDevice(Current.valueOf("40 A"));
        assertEquals(
                List.of("device-rcbo-40"),
                finding(survey, heater, "circuit.rcd").remedies().stream()
                        .map(Remedy::id)
                        .toList());
    }
}
