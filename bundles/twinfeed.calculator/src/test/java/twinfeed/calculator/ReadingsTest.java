// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Length;
import twinfeed.units.Power;

class ReadingsTest {
    private final Survey survey = SampleHouse.wired();
    private final Heater heater = CatalogueFactory.eINSTANCE.createHeater();

    private List<String> missing(String... needs) {
        return new Readings(survey).missing(List.of(needs), heater);
    }

    private void cable(@Nullable String name, @Nullable String method) {
        CableSegment cable = SurveyFactory.eINSTANCE.createCableSegment();
        cable.setName(name);
        cable.setMethod(method);
        cable.setLength(Length.valueOf("4 m"));
        survey.getElectricity().getCircuit().getSegments().add(cable);
    }

    @Test
    void whatNobodyEnteredIsMissingUpToWhereThePathBreaksOff() {
        assertEquals(List.of("survey.notes"), missing("survey.notes"));
        survey.setNotes("quiet street");
        assertEquals(List.of(), missing("survey.notes"));
        assertEquals(List.of("survey.electricity.supplyVoltage"), missing("survey.electricity.supplyVoltage"));
        assertEquals(
                List.of("survey.water", "survey.electricity.externalLoop"),
                missing("survey.water.test.flow", "survey.electricity.externalLoop", "survey.water.source"),
                "the water supply is asked for once");
    }

    @Test
    void aPathThroughAListAsksForEveryElementAndForAtLeastOne() {
        String method = "survey.electricity.circuit.segments.method";
        String length = "survey.electricity.circuit.segments.length";
        assertEquals(List.of("survey.electricity.circuit.segments"), missing(method, length));
        cable("loft", "100");
        cable(null, null);
        cable("wall", null);
        assertEquals(
                List.of(
                        "survey.electricity.circuit.segments[2].method",
                        "survey.electricity.circuit.segments[wall].method"),
                missing(method, length));
    }

    @Test
    void eachHeaterIsAskedForItsOwnData() {
        Readings readings = new Readings(survey);
        List<String> power = List.of("heater.power");
        List<String> others = List.of("heater.power", "survey.notes");
        assertEquals(power, readings.missing(power, heater));
        Heater known = CatalogueFactory.eINSTANCE.createHeater();
        known.setPower(Power.valueOf("9.5 kW"));
        assertEquals(List.of(), readings.missing(power, known));
        assertEquals(List.of("survey.notes"), readings.missing(others, known));
        assertEquals(power, readings.missing(power, heater));
        assertEquals(List.of("heater.elements"), readings.missing(List.of("heater.elements.power"), heater));
    }

    @Test
    void aPathThatTheModelDoesNotHaveIsRefused() {
        assertEquals(
                "a path begins with survey. or heater.: house.notes",
                assertThrows(IllegalArgumentException.class, () -> missing("house.notes"))
                        .getMessage());
        assertEquals(
                "Survey has no colour",
                assertThrows(IllegalArgumentException.class, () -> missing("survey.colour"))
                        .getMessage());
    }
}
