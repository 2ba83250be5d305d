// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.OldCable;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Area;
import twinfeed.units.Concentration;
import twinfeed.units.Current;
import twinfeed.units.Resistance;
import twinfeed.units.Temperature;

/**
 * Ordinary houses through the whole assessment with the demonstration's prices: the verdict, what rules the heater out as the house is,
 * and the least costly work, as the trade would judge them (common practice). In each, one thing is other than it should be.
 */
class ElectricalHousesTest {
    /**
     * A house.
     *
     * @param name what is other in it
     * @param heater candidate
     * @param change makes it so
     * @param verdict right verdict
     * @param ruledOutBy checks that rule the heater out as the house is
     * @param works least costly work
     */
    private record Row(
            String name,
            String heater,
            Consumer<House> change,
            Verdict verdict,
            List<String> ruledOutBy,
            List<String> works) {}

    private static List<Row> rows() {
        return List.of(
                new Row("a house in order", "h85", house -> {}, Verdict.SUITS, List.of(), List.of()),
                new Row(
                        "two rings on 100 A, like for like",
                        "h85",
                        house -> house.feed().getLoads().get(1).setCount(2),
                        Verdict.SUITS,
                        List.of(),
                        List.of()),
                new Row(
                        "a service fuse of 80 A, like for like",
                        "h85",
                        house -> fuse(house, "80 A"),
                        Verdict.SUITS,
                        List.of(),
                        List.of()),
                new Row(
                        "a service fuse of 60 A, less power than before",
                        "h75",
                        house -> fuse(house, "60 A"),
                        Verdict.SUITS,
                        List.of(),
                        List.of()),
                new Row(
                        "a service fuse of 80 A, more power than before",
                        "h95",
                        house -> fuse(house, "80 A"),
                        Verdict.SUITS_WITH_WORK,
                        List.of("demand.serviceFuse"),
                        List.of("operator-fuse-100")),
                new Row(
                        "6 mm² out of sight in masonry, 10.5 kW",
                        "h105",
                        house -> cable(house, "C"),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.designCurrent", "circuit.smallestConductor"),
                        List.of("cable-10", "device-rcbo-45")),
                new Row(
                        "6 mm² inside an insulated wall, 10.5 kW",
                        "h105",
                        house -> cable(house, "103"),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.designCurrent", "circuit.capacity", "circuit.smallestConductor"),
                        List.of("cable-elsewhere-10", "device-rcbo-45")),
                new Row(
                        "a house-wide RCCB of 63 A with 83.8 A",
                        "h105",
                        ElectricalHousesTest::sharedRccb,
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.rcdRating"),
                        List.of("enclosure-rcbo-45")),
                new Row(
                        "the same with an own electrode",
                        "h105",
                        ElectricalHousesTest::sharedRccbAtAnElectrode,
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.rcd", "circuit.rcdRating"),
                        List.of("delayed-main-rcbo-45")),
                new Row(
                        "half an ohm of the earth path unexplained",
                        "h85",
                        ElectricalHousesTest::badJoint,
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.earthPath"),
                        List.of("task-trace-joint")),
                new Row(
                        "Ze of 0.5 ohm on TN-C-S",
                        "h85",
                        ElectricalHousesTest::highExternalLoop,
                        Verdict.SUITS,
                        List.of(),
                        List.of()),
                new Row(
                        "a rewirable fuse and no RCD",
                        "h75",
                        ElectricalHousesTest::rewirable,
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.designCurrent", "circuit.rcd"),
                        List.of("enclosure-rcbo-32")),
                new Row(
                        "a cable in rubber",
                        "h85",
                        house -> old(house, OldCable.RUBBER),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.oldCable"),
                        List.of("cable-10")),
                new Row(
                        "a cable in lead",
                        "h85",
                        house -> old(house, OldCable.LEAD),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.oldCable"),
                        List.of("cable-10")),
                new Row(
                        "a cable of aluminium",
                        "h85",
                        house -> old(house, OldCable.ALUMINIUM),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.oldCable"),
                        List.of("cable-10")),
                new Row(
                        "a cable of an imperial size",
                        "h85",
                        house -> old(house, OldCable.IMPERIAL),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.oldCable"),
                        List.of("cable-10")),
                new Row(
                        "insulation of 0.02 Mohm, unit connected",
                        "h85",
                        house -> house.circuit().setInsulationResistance(Resistance.valueOf("0.02 Mohm")),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.insulationResistance"),
                        List.of("task-test-apart")),
                new Row(
                        "no main bonding",
                        "h85",
                        house -> bonding(house, null),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.mainBonding"),
                        List.of("bonding-10")),
                new Row(
                        "all services of plastic",
                        "h85",
                        house -> bonding(house, false),
                        Verdict.SUITS,
                        List.of(),
                        List.of()),
                new Row(
                        "an isolator within reach of the water",
                        "h85",
                        house -> house.survey().getSite().setOutsideZones(false),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.zones"),
                        List.of("task-move-isolator")),
                new Row(
                        "no isolator",
                        "h85",
                        ElectricalHousesTest::noIsolator,
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.isolatorRating"),
                        List.of("isolator-45")),
                new Row(
                        "no protective conductor",
                        "h85",
                        house -> house.circuit().getSegments().get(0).setHasCpc(false),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.protectiveConductor"),
                        List.of("cable-10")),
                new Row(
                        "instructions that ask for 16 mm²",
                        "h85",
                        house -> house.heater().setMinimumConductor(Area.valueOf("16 mm2")),
                        Verdict.SUITS_WITH_WORK,
                        List.of("circuit.smallestConductor"),
                        List.of("cable-16")),
                new Row(
                        "a hose that reaches the WC",
                        "h85",
                        house -> house.survey().getWater().setHandsetReachesWc(true),
                        Verdict.SUITS_WITH_WORK,
                        List.of("pressure.backflow"),
                        List.of("hose-retainer")),
                new Row(
                        "water of 420 mg/L",
                        "h85",
                        house -> house.survey().getWater().setHardness(Concentration.valueOf("420 mg/L")),
                        Verdict.SUITS_WITH_WORK,
                        List.of("pressure.hardness"),
                        List.of("scale-inhibitor")),
                new Row(
                        "a vulnerable user and a heater that holds its temperature",
                        "h95s",
                        house -> house.survey().getCustomer().setVulnerable(true),
                        Verdict.SUITS,
                        List.of(),
                        List.of()),
                new Row(
                        "a vulnerable user who asks for 48 °C",
                        "h85",
                        ElectricalHousesTest::scalding,
                        Verdict.DOES_NOT_SUIT,
                        List.of("pressure.tapOpens"),
                        List.of()));
    }

    private static void fuse(House house, String rating) {
        house.feed().setServiceFuse(Current.valueOf(rating));
    }

    private static void bonding(House house, @Nullable Boolean metalServices) {
        house.feed().setMainBonding(null);
        house.feed().setHasMainBonding(metalServices == null ? false : null);
        house.feed().setMetalServices(metalServices);
    }

    private static void noIsolator(House house) {
        house.circuit().setIsolator(SurveyFactory.eINSTANCE.createIsolator());
        house.circuit().getIsolator().setKind("none");
    }

    private static void sharedRccbAtAnElectrode(House house) {
        sharedRccb(house);
        house.feed().setEarthing(Earthing.TT);
        house.feed().setElectrode(Resistance.valueOf("60 ohm"));
        house.circuit().setMeasuredLoop(Resistance.valueOf("62 ohm"));
        house.circuit().getRcd().setResidual(Current.valueOf("100 mA"));
    }

    private static void badJoint(House house) {
        house.feed().setEarthing(Earthing.TN_S);
        house.feed().setExternalLoop(Resistance.valueOf("0.7 ohm"));
        house.circuit().setMeasuredLine(Resistance.valueOf("0.09 ohm"));
        house.circuit().setMeasuredLoop(Resistance.valueOf("1.30 ohm"));
    }

    private static void highExternalLoop(House house) {
        house.feed().setExternalLoop(Resistance.valueOf("0.5 ohm"));
        house.circuit().setMeasuredLoop(Resistance.valueOf("0.56 ohm"));
    }

    private static void scalding(House house) {
        house.survey().getCustomer().setVulnerable(true);
        house.survey().setTargetOutlet(Temperature.valueOf("48 °C"));
    }

    private static void cable(House house, String method) {
        house.circuit().getSegments().forEach(piece -> {
            piece.setSize(Area.valueOf("6 mm2"));
            piece.setCpc(Area.valueOf("2.5 mm2"));
            piece.setMethod(method);
            piece.setConfidence(Confidence.CONCEALED);
        });
    }

    /** 10.5 kW at 240 V draws 43.75 A; with 40 A of others 83.75 A through 63 A. */
    private static void sharedRccb(House house) {
        house.circuit().getDevice().setRating(Current.valueOf("45 A"));
        house.circuit().getRcd().setKind(RcdKind.RCCB);
        house.circuit().getRcd().setRating(Current.valueOf("63 A"));
        house.circuit().getRcd().setLoad(Current.valueOf("40 A"));
        house.circuit().getRcd().setScope(RcdScope.HOUSE);
        house.feed().setSpareWay(false);
    }

    private static void rewirable(House house) {
        house.circuit().getDevice().setKind("fuse-3036");
        house.circuit().getDevice().setRating(Current.valueOf("30 A"));
        house.circuit().getDevice().setLetThrough(null);
        house.circuit().getRcd().setKind(RcdKind.NONE);
    }

    private static void old(House house, OldCable construction) {
        house.circuit().getSegments().forEach(piece -> {
            piece.setOldCable(construction);
            piece.setSize(null);
            piece.setCpc(null);
            piece.setMethod(null);
        });
    }

    @TestFactory
    Stream<DynamicTest> houses() {
        return rows().stream().map(row -> DynamicTest.dynamicTest(row.name, () -> judge(row)));
    }

    private static void judge(Row row) {
        House house = new House(row.heater);
        row.change.accept(house);
        WorkPlan plan = house.plan();
        assertEquals(row.ruledOutBy, House.ruledOutBy(plan));
        House.assertPlan(plan, row.verdict, row.works.toArray(String[]::new));
    }
}
