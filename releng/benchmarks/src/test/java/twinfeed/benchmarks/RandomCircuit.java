// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Earthing;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Isolator;
import twinfeed.model.survey.IsolatorCondition;
import twinfeed.model.survey.Load;
import twinfeed.model.survey.LoadKind;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.RcdScope;
import twinfeed.model.survey.ResidualDevice;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Duration;
import twinfeed.units.Length;
import twinfeed.units.LetThrough;
import twinfeed.units.Power;
import twinfeed.units.Resistance;
import twinfeed.units.Voltage;

/** An invented electrical feed with its shower circuit, in good order and bad. */
final class RandomCircuit {
    private final Pick pick;

    private RandomCircuit(Pick pick) {
        this.pick = pick;
    }

    static ElectricalFeed of(Pick pick) {
        return new RandomCircuit(pick).feed();
    }

    private ElectricalFeed feed() {
        ElectricalFeed feed = SurveyFactory.eINSTANCE.createElectricalFeed();
        feed.setSupplyVoltage(Voltage.valueOf(pick.reading(225, 246, "V")));
        feed.setEarthing(pick.of(Earthing.TN_CS, Earthing.TN_CS, Earthing.TN_S, Earthing.TT));
        if (feed.getEarthing() == Earthing.TT) {
            feed.setElectrode(Resistance.valueOf(pick.reading(20, 260, "ohm")));
        }
        feed.setServiceFuse(Current.valueOf(pick.of("60 A", "80 A", "80 A", "100 A", "100 A")));
        feed.setServiceFuseConfirmed(pick.is(90));
        feed.setExternalLoop(Resistance.valueOf(pick.reading(0.1, 0.6, "ohm")));
        feed.setProspectiveFault(Current.valueOf(pick.reading(0.4, 2.5, "kA")));
        feed.setMainSwitch(Current.valueOf(pick.is(10) ? "63 A" : "100 A"));
        feed.setTails(Area.valueOf(pick.is(15) ? "16 mm2" : "25 mm2"));
        feed.setEarthingConductor(Area.valueOf(pick.is(15) ? "6 mm2" : "16 mm2"));
        feed.setMainBonding(Area.valueOf(pick.is(15) ? "6 mm2" : "10 mm2"));
        feed.setSupplyNeutral(Area.valueOf("25 mm2"));
        feed.setSpareWay(pick.is(90));
        feed.setDeviceApproved(pick.is(90));
        feed.setAssemblyFaultRating(Current.valueOf("16 kA"));
        feed.setCircuit(circuit());
        load(feed, "cooker", LoadKind.COOKER, "6.6 kW");
        load(feed, "socket circuit", LoadKind.SOCKETS, "4.6 kW");
        if (pick.is(10)) {
            load(feed, "second shower", LoadKind.SHOWER, "8.5 kW");
        }
        return feed;
    }

    private static void load(ElectricalFeed feed, String name, LoadKind kind, String power) {
        Load load = SurveyFactory.eINSTANCE.createLoad();
        load.setName(name);
        load.setKind(kind);
        load.setPower(Power.valueOf(power));
        load.setSocket(false);
        feed.getLoads().add(load);
    }

    private Circuit circuit() {
        Circuit circuit = SurveyFactory.eINSTANCE.createCircuit();
        circuit.setDevice(device());
        circuit.setRcd(residual());
        circuit.setIsolator(isolator());
        circuit.setInsulationResistance(Resistance.valueOf(pick.is(5) ? "0.5 Mohm" : "200 Mohm"));
        String size = pick.of("6 mm2", "6 mm2", "10 mm2", "10 mm2", "16 mm2");
        int pieces = 1 + pick.random().nextInt(3);
        for (int i = 1; i <= pieces; i++) {
            circuit.getSegments().add(segment("piece " + i, size));
        }
        return circuit;
    }

    private ProtectiveDevice device() {
        ProtectiveDevice device = SurveyFactory.eINSTANCE.createProtectiveDevice();
        device.setKind(pick.of("breaker-b", "breaker-b", "breaker-b", "breaker-c", "fuse-3036", "fuse-88-3"));
        device.setRating(Current.valueOf(
                device.getKind().startsWith("fuse")
                        ? pick.of("30 A", "45 A")
                        : pick.of("32 A", "40 A", "40 A", "45 A", "50 A")));
        device.setBreakingCapacity(Current.valueOf("6 kA"));
        device.setLetThrough(LetThrough.valueOf("54000 A²s"));
        return device;
    }

    private ResidualDevice residual() {
        ResidualDevice rcd = SurveyFactory.eINSTANCE.createResidualDevice();
        rcd.setKind(pick.of(RcdKind.NONE, RcdKind.RCCB, RcdKind.RCCB, RcdKind.RCBO));
        if (rcd.getKind() != RcdKind.NONE) {
            rcd.setType(pick.of("AC", "A"));
            rcd.setResidual(Current.valueOf(pick.is(10) ? "100 mA" : "30 mA"));
            rcd.setRating(Current.valueOf(rcd.getKind() == RcdKind.RCBO ? "40 A" : pick.of("63 A", "80 A")));
            rcd.setScope(rcd.getKind() == RcdKind.RCBO ? RcdScope.CIRCUIT : pick.of(RcdScope.SEVERAL, RcdScope.HOUSE));
            rcd.setTripTime(Duration.valueOf(pick.is(5) ? "400 ms" : "28 ms"));
            rcd.setLoad(Current.valueOf(pick.of("10 A", "22 A")));
        }
        return rcd;
    }

    private Isolator isolator() {
        Isolator isolator = SurveyFactory.eINSTANCE.createIsolator();
        isolator.setKind(pick.of("pull-cord", "wall"));
        isolator.setRating(Current.valueOf(pick.of("30 A", "45 A", "45 A", "50 A")));
        isolator.setCondition(pick.is(10) ? IsolatorCondition.SCORCHED : IsolatorCondition.SOUND);
        isolator.setMaximumConductor(Area.valueOf(pick.of("10 mm2", "16 mm2")));
        return isolator;
    }

    private CableSegment segment(String name, String size) {
        CableSegment segment = SurveyFactory.eINSTANCE.createCableSegment();
        segment.setName(name);
        segment.setSize(Area.valueOf(size));
        segment.setLength(Length.valueOf(pick.reading(2, pick.is(10) ? 30 : 9, "m")));
        segment.setMethod(pick.of("C", "C", "C", "A", "100", "101", "102", "103"));
        segment.setConfidence(pick.of(Confidence.SEEN, Confidence.SEEN, Confidence.ASSUMED, Confidence.CONCEALED));
        segment.setGrouped(pick.is(15) ? 2 : 1);
        return segment;
    }
}
