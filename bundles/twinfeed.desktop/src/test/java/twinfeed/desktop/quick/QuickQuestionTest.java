// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.quick;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.quick.QuickReadings.Field;
import twinfeed.desktop.session.NewJob;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.JobFile;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Survey;
import twinfeed.units.Area;
import twinfeed.units.Current;
import twinfeed.usecase.TwinfeedService;

/**
 * Check values: voltage drop of twin and earth 7.3 mV/A/m at 6 mm² and 4.4 mV/A/m at 10 mm², capacity 47 A and 64 A clipped direct, 5 % of
 * 230 V as limit: BS 7671:2018 tables 4D5 and 4Ab, from memory. The rest by hand from them, as written beside each.
 */
final class QuickQuestionTest {
    private final TwinfeedService service = DemoFiles.service();
    private final QuickQuestion question = new QuickQuestion(service, new Words(Locale.UK));

    @TempDir
    Path folder;

    private static QuickReadings circuit(String rating, String size, String method, String length) {
        QuickReadings readings = new QuickReadings();
        readings.device("breaker-b");
        readings.method(method);
        readings.type(Field.RATING, rating);
        readings.type(Field.SIZE, size);
        readings.type(Field.LENGTH, length);
        readings.type(Field.INTAKE, "5");
        return readings;
    }

    private static Map<String, String> lines(QuickAnswer answer) {
        assertNull(answer.trouble());
        Map<String, String> lines = new LinkedHashMap<>();
        answer.lines().forEach(each -> lines.put(each.label(), each.text()));
        return lines;
    }

    /** 40 A x 240 V = 9.6 kW; 11.5 V / (4.4 mV/A/m x 40 A) = 65.3 m; 9.6 kW / (4.19 kJ/kg/K x 35 K) = 65.5 g/s, 3.96 L/min. */
    @Test
    void deviceSetsTheLimitOfAShortThickCable() {
        Map<String, String> lines = lines(question.strongest(circuit("40", "10", "C", "15")));
        assertEquals("9.60 kW at 240 V", lines.get("Strongest heater"));
        assertEquals("the breaker or fuse sets the limit", lines.get("What sets the limit"));
        assertEquals("64.0 A", lines.get("Capacity of the cable in place"));
        assertEquals("65.3 m (the voltage drop sets the limit)", lines.get("Longest run, by voltage drop"));
        assertTrue(lines.get("Flow in winter").matches("3\\.9[5-9] L/min at 40 °C, from 5 °C"), lines.toString());
    }

    /** 11.5 V / (7.3 mV/A/m x 45 m) = 35.0 A, x 240 V = 8.40 kW. */
    @Test
    void voltageDropSetsTheLimitOfALongThinCable() {
        Map<String, String> lines = lines(question.strongest(circuit("40 A", "6 mm²", "C", "45 m")));
        assertEquals("8.40 kW at 240 V", lines.get("Strongest heater"));
        assertEquals("the voltage drop sets the limit", lines.get("What sets the limit"));
    }

    /** 240² / 9600 = 6 ohm, with 4.4 mohm/m x 15 m in series: 230 V x 6 / 6.066 = 227.5 V without the drop at less current. */
    @Test
    void supplyVoltageLowersPowerAndFlow() {
        QuickReadings readings = circuit("40", "10", "C", "15");
        String without = lines(question.strongest(readings)).get("Flow in winter");
        readings.type(Field.SUPPLY, "230");
        Map<String, String> lines = lines(question.strongest(readings));
        assertTrue(lines.get("Power at the heater").matches("8\\.6\\d kW at 22[78] V"), lines.toString());
        assertTrue(lines.get("Flow in winter").compareTo(without) < 0, lines + " " + without);
    }

    @Test
    void knownLoopImpedanceMayBindTheRun() {
        QuickReadings readings = circuit("40", "10", "C", "15");
        readings.type(Field.LOOP, "0.8");
        Map<String, String> lines = lines(question.strongest(readings));
        assertTrue(lines.get("Longest run").contains("m ("), lines.toString());
        readings.type(Field.LOOP, "2");
        String none = lines(question.strongest(readings)).get("Longest run");
        assertTrue(none.matches("\\D+"), "no length is left: " + none);
    }

    @Test
    void cableThatItsDeviceDoesNotProtectHasNoStrongestHeater() {
        QuickAnswer answer = question.strongest(circuit("40", "6", "103", "15"));
        assertTrue(answer.lines().isEmpty());
        assertTrue(answer.trouble().contains("too large for the cable"), answer.trouble());
    }

    /** 9.5 kW / 240 V = 39.6 A: 40 A, 6 mm² by capacity; over 45 m 39.6 A x 7.3 mV x 45 = 13.0 V is over 11.5 V, so 10 mm². */
    @Test
    void heaterNeedsDeviceAndCable() {
        QuickReadings readings = new QuickReadings();
        readings.device("breaker-b");
        readings.method("C");
        readings.type(Field.POWER, "9.5");
        readings.type(Field.LENGTH, "15");
        readings.type(Field.INTAKE, "5 °C");
        Map<String, String> near = lines(question.needed(readings));
        assertEquals("39.6 A", near.get("Design current"));
        assertEquals("40.0 A", near.get("Smallest rating that carries it"));
        assertEquals("6.00 mm²", near.get("Smallest cable that carries it"));
        assertEquals("the capacity of the cable in place", near.get("What sets the limit"));
        readings.type(Field.LENGTH, "45");
        Map<String, String> far = lines(question.needed(readings));
        assertEquals("10.0 mm²", far.get("Smallest cable that carries it"));
        assertEquals("the voltage drop", far.get("What sets the limit"));
        assertTrue(far.get("Flow in winter").startsWith("3.9"), far.toString());
    }

    @Test
    void whatIsNotMadeIsSaid() {
        QuickReadings readings = new QuickReadings();
        readings.device("rcbo-b");
        readings.method("C");
        readings.type(Field.POWER, "15");
        readings.type(Field.LENGTH, "15");
        assertTrue(question.needed(readings).trouble().contains("another kind"));
        readings.device("breaker-b");
        readings.type(Field.LENGTH, "500");
        assertTrue(question.needed(readings).trouble().contains("No cable"));
    }

    @Test
    void missingAndUnreadableReadingsAreNamed() {
        QuickReadings readings = circuit("40", "", "", "15");
        assertEquals(
                "Still needed: Cable size, How the cable runs.",
                question.strongest(readings).trouble());
        assertTrue(
                question.strongest(circuit("forty", "10", "C", "15")).trouble().contains("forty"));
        assertTrue(question.strongest(circuit("40", "9", "C", "15")).trouble().contains("9 mm²"));
        assertTrue(question.strongest(circuit("42", "10", "C", "15"))
                .trouble()
                .contains("Enter one of 6, 10, 16, 20, 25, 32, 40, 45, 50, 63 A"));
    }

    @Test
    void readingsBecomeAJob() {
        QuickReadings readings = circuit("40", "10", "C", "15 ± 1");
        readings.type(Field.SUPPLY, "238 V");
        Path file = folder.resolve("quick.job");
        Path catalogue = Path.of(System.getProperty("twinfeed.root"), "demo", "heaters.catalogue");
        NewJob.write(file, catalogue, readings.survey(Locale.UK));
        Survey survey = JobFile.load(file).getSurvey();
        assertEquals(
                Current.valueOf("40 A"),
                survey.getElectricity().getCircuit().getDevice().getRating());
        CableSegment cable = survey.getElectricity().getCircuit().getSegments().get(0);
        assertEquals(Area.valueOf("10 mm²"), cable.getSize());
        assertEquals("15 m ± 1 m", cable.getLength().toString());
        assertEquals("C", cable.getMethod());
        assertEquals("5 °C", survey.getWinterIntake().toString());
        assertNull(survey.getRequestedPower());
        assertNull(survey.getElectricity().getExternalLoop(), "what was not typed is not there");
    }

    @Test
    void readingBeyondWhatIsAcceptedIsNamedByItsFieldInTheLanguageOfTheProgram() {
        assertEquals(
                "Length of the cable: 5 km is out of range; give 0 m to 1000 m",
                question.strongest(circuit("40", "10", "C", "5 km")).trouble());
        Locale before = Locale.getDefault(Locale.Category.DISPLAY);
        try {
            Locale.setDefault(Locale.Category.DISPLAY, Locale.GERMANY);
            QuickQuestion german = new QuickQuestion(service, new Words(Locale.GERMANY));
            assertEquals(
                    "Länge der Leitung: 5 km liegt außerhalb des zulässigen Bereichs; 0 m bis 1000 m angeben",
                    german.strongest(circuit("40", "10", "C", "5 km")).trouble());
        } finally {
            Locale.setDefault(Locale.Category.DISPLAY, before);
        }
    }
}
