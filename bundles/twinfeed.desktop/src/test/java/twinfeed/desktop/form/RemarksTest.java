// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.model.check.ModelPath;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.units.Pressure;

/** What the pages say beside the readings of Alder Beck once some of them are missing or cannot be right. */
final class RemarksTest {
    @TempDir
    Path folder;

    private final Words words = new Words(Locale.UK);
    private JobSession session;
    private Survey survey;

    @BeforeEach
    void open() throws Exception {
        session = OpenHouse.alderBeck(folder);
        survey = session.survey();
    }

    private Remarks remarks() {
        return Remarks.of(session, words);
    }

    private static Page page(String key) {
        return SurveyPages.all().stream()
                .filter(page -> page.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private static Page.Section section(String page, String key) {
        return page(page).sections().stream()
                .filter(section -> section.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private int count(String page, Remark.Level level) {
        return remarks().count(page(page), survey, level);
    }

    private List<String> needed() {
        NeededReadings needed = NeededReadings.of(SurveyPages.all(), survey, remarks());
        List<String> found = new ArrayList<>();
        String at = "";
        for (int i = 0; i < needed.size(); i++) {
            FieldLocation place = needed.next(at).orElseThrow();
            at = ModelPath.of(place.root()) + "." + place.path();
            found.add(at);
        }
        return found;
    }

    private PipeSegment kitchenBranch() {
        return survey.getWater().getDrawOffs().get(0).getSegments().get(0);
    }

    @Test
    void wholeSurveyHasNoRemarks() {
        session.recalculate();
        for (Page page : SurveyPages.all()) {
            for (Remark.Level level : Remark.Level.values()) {
                assertEquals(0, remarks().count(page, page.root(survey), level), page.key() + " " + level);
            }
        }
        assertEquals(List.of(), needed());
    }

    @Test
    void impossibleAndUnusualReadingsAreSaidBeforeAnythingIsComputed() {
        survey.getUnit().setAge(90);
        survey.getWater().getTest().setStaticPressure(Pressure.valueOf("1 bar"));
        assertEquals(1, count("unit", Remark.Level.ODD));
        assertEquals(0, count("unit", Remark.Level.WRONG));
        assertEquals(1, count("waterTest", Remark.Level.WRONG), "the running pressure is 1.8 bar");
        assertEquals(0, count("waterTest", Remark.Level.ODD));
        List<Remark> age = remarks().on(survey, ReadingPath.of(survey.eClass(), "unit.age"));
        assertEquals(1, age.size());
        assertTrue(age.get(0).text().startsWith("This is unusual; look at the number"), age.toString());
        assertEquals("", Remarks.waiting(age), "no check waits for it");
        assertEquals(List.of(), needed(), "to be looked at again, but not missing");
    }

    @Test
    void missingLengthsAreNeededByTheChecksThatUseThem() {
        kitchenBranch().setLength(null);
        survey.getElectricity().getCircuit().getSegments().get(0).setLength(null);
        session.recalculate();
        assertEquals(1, count("pipes", Remark.Level.WANTED), "three lists deep");
        assertEquals(1, count("circuit", Remark.Level.WANTED));
        assertEquals(0, count("supply", Remark.Level.WANTED));
        List<Remark> length =
                remarks().on(kitchenBranch(), ReadingPath.of(kitchenBranch().eClass(), "length"));
        String waiting = Remarks.waiting(length);
        assertTrue(waiting.startsWith("Wanted for: "), waiting);
        assertEquals(
                1, waiting.split("Running pressure,", -1).length - 1, "each check once, not once a heater: " + waiting);
        assertEquals(
                List.of(
                        "survey.water.drawOffs[kitchen tap].segments[kitchen branch].length",
                        "survey.electricity.circuit.segments[board to loft].length"),
                needed());
    }

    @Test
    void worstRemarkOnAReadingComesFirst() {
        survey.getElectricity().getCircuit().getSegments().get(0).setLength(null);
        session.recalculate();
        // What is wanted was found with the old survey; what is unusual is looked for at once.
        survey.getElectricity().getCircuit().getSegments().get(0).setLength(twinfeed.units.Length.valueOf("900 m"));
        List<Remark.Level> levels = remarks().at("survey.electricity.circuit.segments[board to loft].length").stream()
                .map(Remark::level)
                .toList();
        assertEquals(List.of(Remark.Level.ODD, Remark.Level.WANTED), levels);
    }

    @Test
    void objectThatWasNeverRecordedIsSaidAboveItsSection() {
        survey.getWater().setTest(null);
        session.recalculate();
        assertEquals("survey.water.test", remarks().lacking(survey, section("waterTest", "test")));
        assertEquals("", remarks().lacking(survey, section("waterTest", "source")));
        assertEquals(1, remarks().on(survey, section("waterTest", "test")).size());
        assertEquals(List.of(), remarks().on(survey, section("waterTest", "source")));
        assertEquals(1, count("waterTest", Remark.Level.WANTED));
        survey.setWater(null);
        assertEquals("survey.water", remarks().lacking(survey, section("waterTest", "test")), "the outermost");
    }

    /** Of a circuit of which nothing is known its first reading is needed, not one for each section; nor is what is folded away. */
    @Test
    void missingCircuitIsNeededOnce() {
        survey.getElectricity().setCircuit(null);
        session.recalculate();
        assertEquals(
                List.of(
                        "survey.electricity.circuit.device.kind",
                        "survey.electricity.circuit.rcd.kind",
                        "survey.electricity.circuit.rcd.residual",
                        "survey.electricity.circuit.segments",
                        "survey.electricity.circuit.isolator.condition"),
                needed());
    }

    @Test
    void nextNeededReadingIsLookedForFromThePageOn() {
        kitchenBranch().setLength(null);
        survey.getElectricity().getCircuit().getSegments().get(0).setLength(null);
        session.recalculate();
        NeededReadings needed = NeededReadings.of(SurveyPages.all(), survey, remarks());
        assertEquals(
                kitchenBranch(),
                needed.nextFrom(page("house"), survey).orElseThrow().root());
        assertEquals(
                kitchenBranch(),
                needed.nextFrom(page("pipes"), survey).orElseThrow().root());
        assertEquals(
                survey.getElectricity().getCircuit().getSegments().get(0),
                needed.nextFrom(page("supply"), survey).orElseThrow().root());
        assertEquals(
                kitchenBranch(),
                needed.nextFrom(page("loads"), survey).orElseThrow().root(),
                "from the top again");
        assertTrue(NeededReadings.of(List.of(), survey, remarks()).next("").isEmpty());
    }

    @Test
    void pageThatBeginsWithTheNeededReadingLeadsToThatReading() {
        survey.setWater(null);
        survey.getElectricity().getCircuit().getSegments().get(0).setLength(null);
        session.recalculate();
        FieldLocation place = NeededReadings.of(SurveyPages.all(), survey, remarks())
                .nextFrom(page("waterTest"), survey)
                .orElseThrow();
        assertEquals("water.source", place.path());
    }

    @Test
    void pagesKnowWhichReadingsTheyAskFor() {
        Page pipes = page("pipes");
        assertTrue(pipes.asks(survey, new FieldLocation(kitchenBranch(), "length")));
        assertTrue(pipes.asks(survey, new FieldLocation(survey, "water.segments")));
        assertTrue(page("waterTest").asks(survey, new FieldLocation(survey, "water.hardness")));
        assertEquals(false, page("waterTest").asks(survey, new FieldLocation(kitchenBranch(), "length")));
        assertEquals(false, page("circuit").asks(survey, new FieldLocation(kitchenBranch(), "length")));
        assertEquals(false, pipes.asks(survey, new FieldLocation(kitchenBranch(), "water.hardness")));
        assertEquals(false, pipes.asks(survey, new FieldLocation(survey, "water.hardness")));
        assertEquals(false, pipes.asks(survey, new FieldLocation(survey, "length")));
    }

    @Test
    void readingsAfterTheWorkBelongToTheJobAndTheRestToTheSurvey() {
        assertEquals(survey, page("house").root(survey));
        assertEquals(session.job(), page(SurveyPages.COMPLETION).root(survey));
        List<String> underCover = SurveyPages.all().stream()
                .flatMap(page -> page.sections().stream())
                .filter(Page.Section::underCover)
                .map(Page.Section::key)
                .toList();
        assertEquals(List.of("elements", "deadTests"), underCover);
    }

    @Test
    void readingThatWasNotTakenIsNotTheModelsDefault() {
        ReadingPath age = ReadingPath.of(survey.eClass(), "unit.age");
        assertEquals(11, age.value(survey));
        survey.getUnit().setAge(null);
        assertEquals(null, age.value(survey));
        ReadingPath material = ReadingPath.of(kitchenBranch().eClass(), "material");
        kitchenBranch().unsetMaterial();
        assertEquals(null, material.value(kitchenBranch()), "copper is what holds then, not what was read");
        assertEquals(survey.getUnit(), age.owner(survey).orElseThrow());
        survey.setUnit(null);
        assertTrue(age.owner(survey).isEmpty());
        assertEquals(null, age.value(survey));
        ReadingPath taps = ReadingPath.of(survey.eClass(), "water.drawOffs");
        assertEquals(2, taps.elements(survey).size());
        survey.getWater().getDrawOffs().clear();
        assertEquals(List.of(), taps.value(survey), "an empty list is a list");
    }
}
