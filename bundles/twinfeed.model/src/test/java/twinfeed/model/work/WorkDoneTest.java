// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.work;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.units.Current;
import twinfeed.units.Length;

/** What work renews is known beside the supplies, a thing of the same kind and size too. */
class WorkDoneTest {
    private final Survey house = SurveyFactory.eINSTANCE.createSurvey();

    @BeforeEach
    void build() {
        ElectricalFeed power = SurveyFactory.eINSTANCE.createElectricalFeed();
        power.setServiceFuse(Current.valueOf("80 A"));
        Circuit circuit = SurveyFactory.eINSTANCE.createCircuit();
        ProtectiveDevice device = SurveyFactory.eINSTANCE.createProtectiveDevice();
        device.setKind("breaker-b");
        device.setRating(Current.valueOf("40 A"));
        circuit.setDevice(device);
        power.setCircuit(circuit);
        house.setElectricity(power);
        WaterFeed water = SurveyFactory.eINSTANCE.createWaterFeed();
        for (String name : List.of("service pipe", "riser")) {
            PipeSegment pipe = SurveyFactory.eINSTANCE.createPipeSegment();
            pipe.setName(name);
            pipe.setLength(Length.valueOf("4 m"));
            water.getSegments().add(pipe);
        }
        house.setWater(water);
    }

    private static WorkDone read(WorkDone written) {
        Survey read = EcoreUtil.copy(written.supplies());
        read.getElectricity().getCircuit().getDevice().setRating(Current.valueOf("40 A"));
        return new WorkDone(read, written.renewed());
    }

    @Test
    void aThingOfTheSameKindAndSizeIsNew() {
        Survey changed = EcoreUtil.copy(house);
        changed.getElectricity().getCircuit().getDevice().setRating(Current.valueOf("40 A"));
        changed.getWater().getSegments().get(1).setLength(Length.valueOf("4 m"));
        WorkDone done = read(WorkDone.of(house, changed));
        assertEquals(List.of("@electricity/@circuit/@device", "@water/@segments.1"), done.renewed());
        RenewedPieces pieces = done.pieces(house);
        assertTrue(pieces.contains(done.supplies().getElectricity().getCircuit().getDevice()));
        assertTrue(pieces.contains(done.supplies().getWater().getSegments().get(1)));
        assertFalse(pieces.contains(done.supplies().getWater().getSegments().get(0)));
        assertFalse(pieces.main() || pieces.fuse());
    }

    @Test
    void endsOfTheSuppliesAreKnown() {
        Survey changed = EcoreUtil.copy(house);
        changed.getElectricity().setServiceFuse(Current.valueOf("80 A"));
        changed.getWater().setSource(WaterSource.PUMPED);
        RenewedPieces pieces = read(WorkDone.of(house, changed)).pieces(house);
        assertTrue(pieces.main() && pieces.fuse());
    }

    @Test
    void aCableThatIsMovedAndAPipeWithAnotherValveAreTheSameButAltered() {
        CableSegment loft = SurveyFactory.eINSTANCE.createCableSegment();
        loft.setName("loft");
        loft.setMethod("101");
        house.getElectricity().getCircuit().getSegments().add(loft);
        Fitting valve = SurveyFactory.eINSTANCE.createFitting();
        valve.setKind("valve-reduced-bore");
        house.getWater().getSegments().get(0).getFittings().add(valve);
        Survey changed = EcoreUtil.copy(house);
        changed.getElectricity().getCircuit().getSegments().get(0).setMethod("C");
        changed.getWater().getSegments().get(0).getFittings().get(0).setKind("valve-full-bore");
        WorkDone done = read(WorkDone.of(house, changed));
        RenewedPieces pieces = done.pieces(house);
        EObject cable =
                done.supplies().getElectricity().getCircuit().getSegments().get(0);
        EObject pipe = done.supplies().getWater().getSegments().get(0);
        assertTrue(pieces.altered(cable) && pieces.altered(pipe));
        assertFalse(pieces.contains(cable) || pieces.contains(pipe));
        assertFalse(pieces.altered(done.supplies().getWater().getSegments().get(1)));
    }

    /** A quote that an earlier program froze does not say what is new: its readings tell. */
    @Test
    void withoutPathsReadingsTell() {
        Survey changed = EcoreUtil.copy(house);
        changed.getElectricity().getCircuit().getDevice().setRating(Current.valueOf("50 A"));
        changed.getWater().getSegments().get(1).setLength(Length.valueOf("4 m"));
        WorkDone done = new WorkDone(WorkDone.of(house, changed).supplies(), List.of());
        RenewedPieces pieces = done.pieces(house);
        assertTrue(pieces.contains(done.supplies().getElectricity().getCircuit().getDevice()));
        assertFalse(pieces.contains(done.supplies().getWater().getSegments().get(1)), "4 m as before");
    }

    /** A damaged path names nothing, and stops nothing. */
    @Test
    void aPathThatLeadsNowhereIsPassedOver() {
        WorkDone done =
                new WorkDone(EcoreUtil.copy(house), List.of("@water/@segments.9", "nonsense", "@water/@nothing"));
        assertFalse(done.pieces(house).contains(done.supplies().getWater()));
    }
}
