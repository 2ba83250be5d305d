// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static twinfeed.calculator.Fixtures.value;
import static twinfeed.calculator.circuit.Surveys.finding;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.Circuit;
import twinfeed.model.survey.Survey;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.units.Length;
import twinfeed.units.LetThrough;
import twinfeed.units.Power;
import twinfeed.units.Resistance;
import twinfeed.units.Voltage;

/** A reading of nothing is no reading: each check that needs it says so, by its name, and no check passes by it. */
class MissingRatingsTest {
    private static final String VOLTAGE = "heater.voltage";
    private static final String DEVICE = "survey.electricity.circuit.device.rating";

    private final Survey survey = Surveys.suitable();
    private final Circuit circuit = survey.getElectricity().getCircuit();
    private final Heater heater = Surveys.heater("9.5 kW", "240 V");

    private List<String> missing(String check) {
        return finding(survey, heater, "circuit." + check).missing();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "designCurrent",
                "highVoltageCurrent",
                "longestRun",
                "voltageDrop",
                "highestPower",
                "isolatorRating"
            })
    void aHeaterOfNoVoltageHasNoRating(String check) {
        heater.setVoltage(Voltage.valueOf("0 V"));
        assertEquals(List.of(VOLTAGE), missing(check));
    }

    @Test
    void aHeaterOfNoPowerHasNoRating() {
        heater.setPower(Power.valueOf("0 kW"));
        assertEquals(List.of("heater.power"), missing("designCurrent"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"designCurrent", "highVoltageCurrent", "capacity", "highestPower", "isolatorRating"})
    void aDeviceOfNoCurrentHasNoRating(String check) {
        circuit.getDevice().setRating(Current.valueOf("0 A"));
        assertEquals(List.of(DEVICE), missing(check));
    }

    @Test
    void bothAreNamedWhereBothAreMissing() {
        heater.setVoltage(Voltage.valueOf("0 V"));
        circuit.getDevice().setRating(Current.valueOf("0 A"));
        assertEquals(List.of(VOLTAGE, DEVICE), missing("designCurrent"));
        assertEquals(List.of(VOLTAGE, DEVICE), missing("highVoltageCurrent"));
        assertEquals(List.of(DEVICE, VOLTAGE), missing("highestPower"));
    }

    /** By a let-through of 0 A²s any conductor would do: the time decides in its place, 1.81 mm² as in 543.1.3 (closed form). */
    @Test
    void aDeviceThatLetsNothingThroughWasNotLookedUp() {
        circuit.setMeasuredLoop(Resistance.valueOf("0.35 ohm"));
        circuit.getDevice().setLetThrough(LetThrough.valueOf("0 A²s"));
        assertNotEquals(
                "byEnergy",
                finding(survey, heater, "circuit.protectiveConductor").variant());
        assertEquals(
                230 / 0.35 * Math.sqrt(0.1) / 115, value(finding(survey, heater, "circuit.protectiveConductor")), 1e-9);
    }

    /** A measured loop of nothing is worked out in its place; where that is nothing too, a fault current cannot be. */
    @Test
    void aLoopOfNothingWasNotMeasured() {
        circuit.getDevice().setLetThrough(null);
        double calculated = value(finding(survey, heater, "circuit.protectiveConductor"));
        circuit.setMeasuredLoop(Resistance.valueOf("0 ohm"));
        assertEquals(calculated, value(finding(survey, heater, "circuit.protectiveConductor")), 1e-12);
        survey.getElectricity().setExternalLoop(Resistance.valueOf("0 ohm"));
        circuit.getSegments().forEach(piece -> piece.setLength(Length.valueOf("0 m")));
        assertEquals(List.of("survey.electricity.externalLoop"), missing("protectiveConductor"));
    }

    /** Pieces without a name are named by their numbers. */
    @Test
    void piecesWithoutANameAreNamedByTheirNumbers() {
        circuit.getSegments().forEach(piece -> {
            piece.setName(null);
            piece.setLength(null);
        });
        String piece = "survey.electricity.circuit.segments";
        assertEquals(List.of(piece + "[1].length", piece + "[2].length"), missing("deliveredPower"));
        circuit.getSegments().get(0).setLength(Length.valueOf("4 m"));
        assertEquals(List.of(piece + "[2].length"), missing("deliveredPower"));
    }

    /** Also in what a check says of the piece that governs, and in its working. */
    @Test
    void thePieceThatGovernsIsNamedByItsNumber() {
        circuit.getSegments().forEach(piece -> piece.setName(null));
        circuit.getSegments().get(1).setSize(Area.valueOf("6 mm2"));
        assertEquals(
                "2", finding(survey, heater, "circuit.capacity").condition().subject());
        List<String> sources = finding(survey, heater, "circuit.voltageDrop").working().steps().stream()
                .filter(step -> step.meaning().equals("dropGradient"))
                .map(step -> step.source().substring(0, 3))
                .toList();
        assertEquals(List.of("1; ", "2; "), sources);
    }
}
