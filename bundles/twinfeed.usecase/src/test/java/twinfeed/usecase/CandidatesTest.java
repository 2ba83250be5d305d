// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Candidate;
import twinfeed.model.io.InputException;
import twinfeed.model.survey.Survey;
import twinfeed.pricing.QuoteRequest;

/** Which heaters a job asks about. */
final class CandidatesTest {
    private final OpenedJob opened = new TwinfeedService(List.of()).open(Demo.FOLDER.resolve("rowan-brook.job"), null);
    private final Survey survey = opened.job().getSurvey();
    private final Candidates candidates = new Candidates(opened);

    private static List<String> ids(List<Candidate> candidates) {
        return candidates.stream()
                .map(each -> each.heater().getId() + (each.present() ? " present" : ""))
                .toList();
    }

    @Test
    void theUnitThatIsThereComesFirst() {
        assertEquals(List.of("h75 present", "h85", "h95"), ids(candidates.all()));
        assertEquals(List.of("h75 present"), ids(candidates.present()));
        survey.setUnit(null);
        assertEquals(List.of("h85", "h95"), ids(candidates.all()));
        assertEquals(List.of(), candidates.present());
    }

    @Test
    void aSurveyThatAsksForNoneAsksForTheWholeCatalogue() {
        survey.getCandidates().clear();
        assertEquals(
                opened.catalogue().getHeaters().size() + 1, candidates.all().size());
    }

    @Test
    void aHeaterIsAskedForOnce() {
        survey.getCandidates().add("h85");
        assertEquals(List.of("h75 present", "h85", "h95"), ids(candidates.all()));
        assertEquals(
                List.of("h75 present", "h85", "h95", "h105"),
                ids(candidates.with(List.of("h95", QuoteRequest.PRESENT, "h105"))));
        assertEquals(
                List.of("h75 present", "h85", "h95", "h75"),
                ids(candidates.with(List.of("h75"))),
                "a new unit of the same kind is another matter");
    }

    @Test
    void oneHeaterIsComparedWithTheUnitThatIsThere() {
        assertEquals(List.of("h75 present", "h105"), ids(candidates.only("h105")));
        survey.setUnit(null);
        assertEquals(List.of("h105"), ids(candidates.only("h105")));
    }

    @Test
    void anUnknownHeaterIsRefusedWithTheNearest() {
        InputException asked = assertThrows(InputException.class, () -> candidates.only("h96"));
        assertEquals("--heater", asked.problems().get(0).element());
        assertTrue(asked.getMessage().contains("h95"), asked.getMessage());
        survey.getCandidates().add("h96");
        assertEquals(
                "survey.candidates",
                assertThrows(InputException.class, candidates::all)
                        .problems()
                        .get(0)
                        .element());
        survey.getUnit().setHeaterId("h96");
        assertEquals(
                "survey.unit.heaterId",
                assertThrows(InputException.class, candidates::all)
                        .problems()
                        .get(0)
                        .element());
    }

    @Test
    void aUnitWithDataOfItsOwnNeedsNoCatalogue() {
        survey.getUnit().setHeaterId(null);
        assertEquals(List.of(), candidates.present(), "nobody knows what it is");
        survey.getUnit()
                .setHeater(EcoreUtil.copy(opened.catalogue().getHeaters().get(0)));
        assertEquals(1, candidates.present().size());
    }

    @Test
    void calculatorsGetTheDataOfTheUnitAndTheSurveyStays() {
        Survey copy = Candidates.withPresentHeater(survey, candidates.all());
        assertEquals("h75", copy.getUnit().getHeater().getId());
        assertNull(survey.getUnit().getHeater());
        assertNotSame(candidates.present().get(0).heater(), copy.getUnit().getHeater());
    }

    @Test
    void companionsAreTheFilesThatAJobNames() {
        OpenedJob alder = new TwinfeedService(List.of()).open(Demo.FOLDER.resolve("alder-beck.job"), null);
        assertEquals("alder-beck", alder.name());
        assertEquals(
                List.of("heaters.catalogue", "alder-beck-loft.jpg"),
                alder.companions().stream()
                        .map(Path::getFileName)
                        .map(String::valueOf)
                        .toList());
        alder.job().setCatalogue(null);
        alder.job().getSurvey().getPhotos().get(0).setFile("no\0name.jpg");
        assertEquals(List.of(), alder.companions());
    }
}
