// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static twinfeed.calculator.circuit.Surveys.finding;

import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Fixtures;
import twinfeed.calculator.MarginInterval;
import twinfeed.calculator.PassProbability;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.RcdKind;
import twinfeed.model.survey.Survey;
import twinfeed.units.Current;
import twinfeed.units.Power;
import twinfeed.units.Resistance;

/** Which devices and isolators are offered for what is there, and what becomes of it. */
class DeviceChoiceTest {
    private final Survey survey = Surveys.suitable();
    private final Circuit circuit = survey.getElectricity().getCircuit();
    private final Heater heater = Surveys.heater("9.5 kW", "240 V");

    private List<String> works(String check) {
        Finding finding = finding(survey, heater, check);
        assertEquals(Outcome.FAILS, finding.outcome());
        return Fixtures.works(finding);
    }

    /** A type B trips at half the current of a type C: it helps in place of one of the same rating, but not in place of another type B. */
    @Test
    void anotherBreakerOfTheSameRatingIsOfferedOnlyWhereItIsQuicker() {
        circuit.getRcd().setResidual(Current.valueOf("100 mA"));
        circuit.getDevice().setKind("breaker-c");
        circuit.setMeasuredLoop(Resistance.valueOf("0.6 ohm"));
        assertTrue(works("circuit.loopImpedance").contains("device-breaker-40"));
        circuit.getDevice().setKind("breaker-b");
        circuit.setMeasuredLoop(Resistance.valueOf("1.0 ohm"));
        assertFalse(works("circuit.loopImpedance").contains("device-breaker-40"));
    }

    /** An isolator of 45 A behind 50 A: a smaller breaker helps as well as a larger isolator. */
    @Test
    void aSmallerDeviceIsOfferedForAnIsolatorThatIsTooSmall() {
        circuit.getDevice().setRating(Current.valueOf("50 A"));
        List<String> works = works("circuit.isolatorRating");
        assertTrue(
                works.containsAll(List.of("isolator-50", "device-breaker-40", "device-breaker-45")), works.toString());
        assertFalse(works.contains("isolator-45"));
    }

    /** 10.8 kW at 240 V draw just 45 A. */
    @Test
    void anIsolatorOfJustTheCurrentIsOffered() {
        heater.setPower(Power.valueOf("10.8 kW"));
        circuit.getDevice().setRating(Current.valueOf("45 A"));
        circuit.getIsolator().setRating(Current.valueOf("32 A"));
        assertEquals("isolator-45", works("circuit.isolatorRating").get(0));
    }

    /** What the instructions of the old isolator say of devices does not hold for the new one. */
    @Test
    void aNewIsolatorForgetsWhatTheOldOneAllowed() {
        circuit.getIsolator().setNamedDevice(Current.valueOf("50 A"));
        circuit.getIsolator().setRating(Current.valueOf("32 A"));
        Survey changed = Fixtures.after(survey, finding(survey, heater, "circuit.isolatorRating"), "isolator-45");
        assertNull(changed.getElectricity().getCircuit().getIsolator().getNamedDevice());
        assertEquals(
                Outcome.PASSES,
                finding(changed, heater, "circuit.isolatorRating").outcome());
    }

    /** Where no device was looked at the work makes one. */
    @Test
    void aDeviceIsPutWhereNoneWasLookedAt() {
        circuit.setDevice(null);
        circuit.getRcd().setKind(RcdKind.NONE);
        Survey copy = EcoreUtil.copy(survey);
        Survey changed = Fixtures.after(copy, finding(copy, heater, "circuit.rcd"), "device-rcbo-40");
        assertEquals(
                40,
                changed.getElectricity().getCircuit().getDevice().getRating().si(),
                1e-12);
        assertEquals(Outcome.PASSES, finding(changed, heater, "circuit.rcd").outcome());
    }

    /** 10 mm² by method 100 carries just 45 A (BS 7671 table 4D5; memory): behind 45 A only the other piece, with 36 A, is lifted. */
    @Test
    void aPieceThatCarriesJustTheRatingStaysWhereItLies() {
        circuit.getDevice().setRating(Current.valueOf("45 A"));
        circuit.getSegments().get(0).setMethod("101");
        circuit.getSegments().get(1).setMethod("100");
        List<Object> lifted = finding(survey, heater, "circuit.capacity").remedies().stream()
                .filter(work -> work.id().equals("lift-out-of-insulation"))
                .map(work -> work.arguments().get("segments"))
                .toList();
        assertEquals(List.of("board to loft"), lifted);
    }

    /** 10.8 kW at 240 V draw just 45 A. */
    @Test
    void aDeviceOfJustTheCurrentIsOffered() {
        heater.setPower(Power.valueOf("10.8 kW"));
        circuit.getRcd().setKind(RcdKind.NONE);
        assertEquals("device-rcbo-45", works("circuit.rcd").get(0));
    }

    /** 10 mm² by method 100 carries 45 A (BS 7671 table 4D5; memory): too little for the 50 A that are there, enough for those that may come. */
    @Test
    void aPieceIsLiftedForTheDeviceThatIsThere() {
        circuit.getDevice().setRating(Current.valueOf("50 A"));
        circuit.getSegments().get(0).setMethod("100");
        assertTrue(works("circuit.capacity").contains("lift-out-of-insulation"));
    }

    /** Too close to call, so work is looked for; but the RCBO of 40 A that is there is no work. */
    @Test
    void theDeviceThatIsThereIsNotOfferedAgain() {
        circuit.getRcd().setKind(RcdKind.RCBO);
        Finding close = finding(survey, heater, "circuit.designCurrent")
                .withChance(new PassProbability(0.5, MarginInterval.NONE));
        assertEquals(Outcome.TOO_CLOSE, close.outcome());
        assertEquals(List.of("device-rcbo-45"), Fixtures.works(close));
        circuit.getDevice().setRating(Current.valueOf("45 A"));
        close = finding(survey, heater, "circuit.designCurrent")
                .withChance(new PassProbability(0.5, MarginInterval.NONE));
        assertEquals(List.of("device-rcbo-40"), Fixtures.works(close));
    }

    /** A new consumer unit comes with a main switch of 100 A (common practice). */
    @Test
    void aNewConsumerUnitHasANewMainSwitch() {
        survey.getElectricity().setMainSwitch(Current.valueOf("63 A"));
        circuit.getRcd().setKind(RcdKind.NONE);
        circuit.getDevice().setKind("fuse-3036");
        Survey changed = Fixtures.after(survey, finding(survey, heater, "circuit.rcd"), "consumer-unit-rcbo-40");
        assertEquals(100, changed.getElectricity().getMainSwitch().si(), 1e-12);
    }

    /** The edit holds for a copy of which nobody knows the room, too. */
    @Test
    void anIsolatorIsMovedOutOfTheZonesOfAnyRoom() {
        survey.getSite().setOutsideZones(false);
        Finding zones = finding(survey, heater, "circuit.zones");
        Survey roomless = EcoreUtil.copy(survey);
        roomless.setSite(null);
        zones.remedies().get(0).edit().accept(roomless);
        assertEquals(true, roomless.getSite().getOutsideZones());
    }
}
