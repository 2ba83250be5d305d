// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.form.SurveyPages;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Pressure;

final class SurveyEditsTest {
    private final Survey survey = SurveyFactory.eINSTANCE.createSurvey();
    private final SurveyEdits edits = new SurveyEdits(false);

    private static ReadingPath path(String text) {
        return ReadingPath.of(SurveyPackage.Literals.SURVEY, text);
    }

    private void set(String path, Object value) {
        edits.set(survey, path(path).steps(), value);
    }

    @Test
    void firstReadingMakesTheObjectsOnTheWayInOneCommand() {
        set("water.test.staticPressure", Pressure.valueOf("3 bar"));
        assertEquals(Pressure.valueOf("3 bar"), survey.getWater().getTest().getStaticPressure());
        edits.undo();
        assertNull(survey.getWater(), "one step back, and nothing is left of it");
        edits.redo();
        assertEquals(Pressure.valueOf("3 bar"), survey.getWater().getTest().getStaticPressure());
    }

    @Test
    void lastReadingTakesTheEmptyObjectsWithIt() {
        set("water.test.staticPressure", Pressure.valueOf("3 bar"));
        set("water.test.staticPressure", null);
        assertNull(survey.getWater(), "an empty test would say that one was made");
        edits.undo();
        assertEquals(Pressure.valueOf("3 bar"), survey.getWater().getTest().getStaticPressure());
    }

    @Test
    void objectThatHoldsMoreStays() {
        set("water.test.staticPressure", Pressure.valueOf("3 bar"));
        set("water.test.atPeak", true);
        set("water.test.staticPressure", null);
        assertTrue(survey.getWater().getTest().getAtPeak());
        assertNull(survey.getWater().getTest().getStaticPressure());
    }

    private PipeSegment pipe(String name) {
        PipeSegment pipe = SurveyFactory.eINSTANCE.createPipeSegment();
        pipe.setName(name);
        survey.getWater().getSegments().add(pipe);
        return pipe;
    }

    private void rename(PipeSegment pipe, String name) {
        edits.set(pipe, List.of(SurveyPackage.Literals.PIPE_SEGMENT__NAME), name);
    }

    private List<String> places() {
        return List.of(
                survey.getWater().getTest().getGaugeAfter(),
                survey.getWater().getDrawOffs().get(0).getTeeAfter());
    }

    @Test
    void gaugeAndTapsFollowAPipeThatIsRenamed() {
        set("water.test.gaugeAfter", "service");
        PipeSegment service = pipe("service");
        PipeSegment riser = pipe("rising main");
        DrawOff basin = SurveyFactory.eINSTANCE.createDrawOff();
        basin.setTeeAfter("rising main");
        PipeSegment branch = SurveyFactory.eINSTANCE.createPipeSegment();
        branch.setName("rising main");
        basin.getSegments().add(branch);
        survey.getWater().getDrawOffs().add(basin);
        rename(riser, "riser");
        assertEquals(List.of("service", "riser"), places());
        edits.undo();
        assertEquals("rising main", riser.getName());
        assertEquals(List.of("service", "rising main"), places());
        rename(service, "service pipe");
        assertEquals(List.of("service pipe", "rising main"), places());
        rename(branch, "tail");
        assertEquals(List.of("service pipe", "rising main"), places(), "a pipe of a branch is no place on the run");
    }

    @Test
    void nobodyFollowsOneOfTwoPipesOfOneName() {
        set("water.test.gaugeAfter", "copper");
        DrawOff basin = SurveyFactory.eINSTANCE.createDrawOff();
        basin.setTeeAfter("copper");
        survey.getWater().getDrawOffs().add(basin);
        PipeSegment first = pipe("copper");
        pipe("copper");
        rename(first, "riser");
        assertEquals(List.of("copper", "copper"), places());
        PipeSegment unnamed = SurveyFactory.eINSTANCE.createPipeSegment();
        survey.getWater().getSegments().add(unnamed);
        rename(unnamed, "new");
        assertEquals(List.of("copper", "copper"), places());
    }

    @Test
    void settingWhatIsThereIsNoEdit() {
        AtomicInteger told = new AtomicInteger();
        set("takenBy", "An engineer");
        edits.saved();
        edits.changed().listen(told::incrementAndGet);
        set("takenBy", "An engineer");
        set("customer.name", null);
        assertFalse(edits.dirty());
        assertEquals(0, told.get());
    }

    @Test
    void undoingBackToWhatWasSavedIsClean() {
        set("takenBy", "An engineer");
        edits.saved();
        set("takenBy", "Another");
        assertTrue(edits.dirty());
        edits.undo();
        assertFalse(edits.dirty());
    }

    @Test
    void elementsAreAddedMovedAndRemovedWithUndo() {
        PipeSegment first = SurveyFactory.eINSTANCE.createPipeSegment();
        PipeSegment second = SurveyFactory.eINSTANCE.createPipeSegment();
        edits.add(survey, path("water.segments").steps(), first);
        edits.add(survey, path("water.segments").steps(), second);
        edits.move(second, 0);
        assertEquals(List.of(second, first), survey.getWater().getSegments());
        edits.move(second, 7);
        assertEquals(List.of(second, first), survey.getWater().getSegments(), "there is no such place");
        edits.remove(second);
        assertEquals(List.of(first), survey.getWater().getSegments());
        edits.undo();
        edits.undo();
        assertEquals(List.of(first, second), survey.getWater().getSegments());
    }

    @Test
    void whatWasUndoneAndRedoneIsTheSame() {
        set("water.test.staticPressure", Pressure.valueOf("3 bar ± 2 %"));
        set("electricity.circuit.device.rating", twinfeed.units.Current.valueOf("40 A"));
        Survey before = EcoreUtil.copy(survey);
        edits.undo();
        edits.undo();
        assertTrue(EcoreUtil.equals(SurveyFactory.eINSTANCE.createSurvey(), survey));
        edits.redo();
        edits.redo();
        assertTrue(EcoreUtil.equals(before, survey));
    }

    @Test
    void elementTakesThePlaceOfAnother() {
        PipeSegment first = SurveyFactory.eINSTANCE.createPipeSegment();
        PipeSegment second = SurveyFactory.eINSTANCE.createPipeSegment();
        PipeSegment third = SurveyFactory.eINSTANCE.createPipeSegment();
        survey.setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        edits.put(survey.getWater(), SurveyPackage.Literals.WATER_FEED__SEGMENTS, first, null);
        edits.put(survey.getWater(), SurveyPackage.Literals.WATER_FEED__SEGMENTS, second, null);
        assertEquals(List.of(first, second), survey.getWater().getSegments());
        edits.put(survey.getWater(), SurveyPackage.Literals.WATER_FEED__SEGMENTS, third, first);
        assertEquals(List.of(third, second), survey.getWater().getSegments());
        edits.undo();
        assertEquals(List.of(first, second), survey.getWater().getSegments());
    }

    @Test
    void wholeSurveyIsReplacedInOneStep() {
        set("takenBy", "An engineer");
        set("notes", "The cellar is damp.");
        set("winterIntake", twinfeed.units.Temperature.valueOf("4 °C"));
        Survey other = SurveyFactory.eINSTANCE.createSurvey();
        other.setTakenBy("Another");
        other.getCandidates().add("h95");
        other.setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        edits.replace(survey, other);
        assertEquals("Another", survey.getTakenBy());
        assertNull(survey.getNotes());
        assertNull(survey.getWinterIntake());
        assertEquals(List.of("h95"), survey.getCandidates());
        assertTrue(survey.getWater() != null && other.getWater() == null, "an object is in one survey only");
        edits.undo();
        assertEquals("An engineer", survey.getTakenBy());
        assertEquals("The cellar is damp.", survey.getNotes());
        assertEquals(List.of(), survey.getCandidates());
        assertNull(survey.getWater());
    }

    @Test
    void factCannotBeUndoneAndWaitsToBeSaved() {
        set("takenBy", "An engineer");
        assertTrue(edits.canUndo());
        assertFalse(edits.canRedo());
        edits.undo();
        assertFalse(edits.canUndo());
        assertTrue(edits.canRedo());
        edits.saved();
        AtomicInteger told = new AtomicInteger();
        edits.changed().listen(told::incrementAndGet);
        edits.keep(() -> survey.setTakenBy("Another"));
        assertEquals("Another", survey.getTakenBy());
        assertFalse(edits.canUndo());
        assertFalse(edits.canRedo());
        assertTrue(edits.dirty());
        assertEquals(1, told.get());
        edits.saved();
        assertFalse(edits.dirty());
    }

    @Test
    void elementsMoveWithinTheirListOnly() {
        PipeSegment first = SurveyFactory.eINSTANCE.createPipeSegment();
        PipeSegment second = SurveyFactory.eINSTANCE.createPipeSegment();
        edits.add(survey, path("water.segments").steps(), first);
        edits.add(survey, path("water.segments").steps(), second);
        edits.saved();
        edits.move(first, -1);
        edits.move(first, 2);
        assertFalse(edits.dirty(), "there are no such places");
        edits.move(first, 1);
        assertEquals(List.of(second, first), survey.getWater().getSegments());
        edits.move(first, 0);
        assertEquals(List.of(first, second), survey.getWater().getSegments());
    }

    private FieldLocation undone() {
        return FieldLocation.of(edits.undo().orElseThrow());
    }

    private FieldLocation redone() {
        return FieldLocation.of(edits.redo().orElseThrow());
    }

    private boolean asked(FieldLocation place) {
        return SurveyPages.all().stream()
                .filter(page -> page.owner().isInstance(survey))
                .anyMatch(page -> page.asks(survey, place));
    }

    @Test
    void undoAndRedoSayWhichValueHasChanged() {
        FieldLocation pressure = new FieldLocation(survey, "water.test.staticPressure");
        set("water.test.staticPressure", Pressure.valueOf("3 bar"));
        assertEquals(pressure, undone(), "the objects on the way went with it");
        assertEquals(pressure, redone());
        set("water.test.staticPressure", Pressure.valueOf("4 bar"));
        assertEquals(pressure, undone());
        PipeSegment pipe = pipe("riser");
        rename(pipe, "rising main");
        assertEquals(new FieldLocation(pipe, "name"), undone());
        assertTrue(asked(pressure) && asked(new FieldLocation(pipe, "name")));
    }

    @Test
    void undoAndRedoSayWhichRowIsThereAgain() {
        set("water.test.staticPressure", Pressure.valueOf("3 bar"));
        PipeSegment first = pipe("service");
        PipeSegment second = SurveyFactory.eINSTANCE.createPipeSegment();
        edits.add(survey, path("water.segments").steps(), second);
        FieldLocation list = new FieldLocation(survey, "water.segments");
        assertEquals(list, undone(), "the row that went cannot be shown");
        assertEquals(new FieldLocation(second, ""), redone());
        edits.remove(first);
        assertEquals(new FieldLocation(first, ""), undone());
        assertTrue(asked(new FieldLocation(first, "")) && asked(list));
        assertEquals(list, redone());
        assertFalse(asked(new FieldLocation(first, "")), "a row that is gone stands on no page");
        edits.undo();
        edits.move(second, 0);
        assertEquals(new FieldLocation(second, ""), undone());
    }

    @Test
    void firstRowOfAListThatWasNotThereIsFoundAgain() {
        PipeSegment only = SurveyFactory.eINSTANCE.createPipeSegment();
        edits.add(survey, path("water.segments").steps(), only);
        assertEquals(new FieldLocation(survey, "water.segments"), undone());
        assertEquals(new FieldLocation(only, ""), redone());
    }

    @Test
    void ofARenamedPipeTheNameIsShownAndNotWhatFollowsIt() {
        set("water.test.gaugeAfter", "service");
        PipeSegment pipe = pipe("service");
        rename(pipe, "main");
        FieldLocation name = new FieldLocation(pipe, "name");
        assertEquals(name, undone());
        assertEquals(name, redone());
        assertTrue(edits.redo().isEmpty(), "nothing was left to make again");
    }
}
