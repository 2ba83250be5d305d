// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.desktop.text.Words;
import twinfeed.model.check.JobCheck;
import twinfeed.model.io.CatalogueFile;
import twinfeed.model.io.JobFile;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyPackage;

final class JobTemplatesTest {
    @TempDir
    Path folder;

    private JobTemplates templates;

    @BeforeEach
    void demo() throws Exception {
        DemoFiles.copyInto(folder);
        templates = new JobTemplates(folder.resolve("templates"), new Words(Locale.UK));
    }

    @Test
    void typicalHousesAreRightAndHoldNoTestReading() {
        List<JobTemplate> all = templates.all();
        assertEquals(4, all.size());
        var catalogue = CatalogueFile.load(folder.resolve("heaters.catalogue"));
        for (JobTemplate house : all.subList(1, 4)) {
            Survey survey = house.survey().get();
            assertEquals(
                    List.of(),
                    JobCheck.of(survey, catalogue).stream()
                            .filter(problem -> problem.isError())
                            .map(Object::toString)
                            .toList(),
                    house.title());
            assertNull(survey.getWater().getTest(), house.title());
            assertNull(survey.getElectricity().getExternalLoop(), house.title());
            assertFalse(
                    survey.getElectricity().eIsSet(SurveyPackage.Literals.ELECTRICAL_FEED__EARTHING), house.title());
            assertNull(survey.getElectricity().getCircuit().getDevice().getRating(), house.title());
            assertNull(survey.getElectricity().getCircuit().getRcd(), house.title());
            assertTrue(survey.getNotes().contains(house.title()), "colleagues see what was not measured here");
        }
    }

    @Test
    void everyJobBegunWithATemplateIsAnother() {
        JobTemplate house = templates.all().get(1);
        house.survey().get().setTakenBy("somebody");
        assertNull(house.survey().get().getTakenBy());
    }

    @Test
    void ownTemplateKeepsTheHouseAndNothingOfTheCustomer() throws Exception {
        Survey survey = JobFile.load(folder.resolve("alder-beck.job")).getSurvey();
        Path kept = templates.keep(survey, "Quay terrace");
        assertEquals("Alder Beck 3", survey.getSite().getName(), "the job itself stays as it is");
        String text = Files.readString(kept);
        for (String secret : List.of(
                "Netherquill", "Alder", "takenBy", "takenOn", "externalLoop", "<test", "measuredLoop", "photos")) {
            assertFalse(text.contains(secret), secret);
        }
        JobTemplate own = templates.all().get(4);
        assertEquals("Quay terrace", own.title());
        assertEquals(3, own.survey().get().getWater().getSegments().size());
        assertEquals(3, own.survey().get().getElectricity().getLoads().size());
    }

    @Test
    void nameThatLeadsElsewhereIsRefused() {
        Survey survey = JobFile.load(folder.resolve("alder-beck.job")).getSurvey();
        assertThrows(IllegalArgumentException.class, () -> templates.keep(survey, "../elsewhere"));
        assertThrows(IllegalArgumentException.class, () -> templates.keep(survey, " "));
    }
}
