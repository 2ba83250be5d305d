// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.formula.Step;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.units.Current;
import twinfeed.units.Length;

/** A device of the demonstration's house, its breaker of 40 A, that work puts in the place of another. */
class RenewedReadingsTest {
    private static final String RATING = "survey.electricity.circuit.device.rating";
    private static final String LENGTH = "survey.electricity.circuit.segments[surface run].length";

    private final Survey survey = new TwinfeedService(List.of())
            .open(Demo.FOLDER.resolve("rowan-brook.job"), null)
            .job()
            .getSurvey();

    private String origin(String path, List<Consumer<Survey>> edits) {
        List<Remedy> works = edits.stream()
                .map(edit -> new Remedy("w", "w", Map.of(), List.of(), false, 0, edit))
                .toList();
        return new RenewedReadings(survey, works).origin(new Step("In", "rating", 40, "A", null, "", path));
    }

    private static void newDevice(Survey edited, String rating) {
        ProtectiveDevice device = SurveyFactory.eINSTANCE.createProtectiveDevice();
        device.setRating(Current.valueOf(rating));
        edited.getElectricity().getCircuit().setDevice(device);
    }

    private static void newCable(Survey edited, String length) {
        CableSegment segment = EcoreUtil.copy(
                edited.getElectricity().getCircuit().getSegments().get(0));
        segment.setLength(Length.valueOf(length));
        edited.getElectricity().getCircuit().getSegments().set(0, segment);
    }

    @Test
    void theSameFigureOfANewThingIsRenewed() {
        assertEquals("done." + RATING, origin(RATING, List.of(edited -> newDevice(edited, "40 A"))));
        assertEquals("done." + LENGTH, origin(LENGTH, List.of(edited -> newCable(edited, "6.5 m"))));
    }

    @Test
    void whatTheWorkLeavesOrGivesAnotherFigureIsNot() {
        assertEquals(RATING, origin(RATING, List.of()));
        assertEquals(RATING, origin(RATING, List.of(edited -> newDevice(edited, "50 A"))), "the figure itself differs");
        assertEquals(RATING, origin(RATING, List.of(edited -> newCable(edited, "6.5 m"))));
        assertEquals(LENGTH, origin(LENGTH, List.of(edited -> newDevice(edited, "40 A"))));
        survey.getElectricity().getCircuit().setDevice(null);
        assertEquals(RATING, origin(RATING, List.of(edited -> newDevice(edited, "40 A"))), "there was none before");
    }

    @Test
    void theLastOfSeveralWorksCounts() {
        assertEquals(
                "done." + RATING,
                origin(RATING, List.of(edited -> newDevice(edited, "50 A"), edited -> newDevice(edited, "40 A"))));
    }
}
