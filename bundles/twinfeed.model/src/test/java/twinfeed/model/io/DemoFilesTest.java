// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.check.CatalogueCheck;
import twinfeed.model.check.JobCheck;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Survey;

/** The demonstration files are read, hold nothing that cannot be right, say that they are invented, and are as we write them. */
class DemoFilesTest {
    private static final Path DEMO = Path.of(System.getProperty("twinfeed.root", "../.."), "demo");

    static Stream<Path> jobs() throws IOException {
        try (Stream<Path> files = Files.list(DEMO)) {
            return files.filter(file -> file.toString().endsWith(JobFile.ENDING)).sorted().toList().stream();
        }
    }

    @Test
    void demonstrationFilesExist() throws IOException {
        assertTrue(jobs().count() >= 4);
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void jobIsSound(Path path) throws IOException {
        Job job = JobFile.load(path);
        Catalogue catalogue = JobFile.catalogue(job, path);
        assertEquals(List.of(), JobCheck.of(job, catalogue));
        assertTrue(
                job.getSurvey().getNotes().contains("Invented"), job.getSurvey().getNotes());
        assertTrue(job.getSurvey().getCustomer().getName().contains("invented"));
        assertArrayEquals(Files.readAllBytes(path), JobFile.form().bytes(path.toString(), job));
    }

    @Test
    void catalogueIsSound() throws IOException {
        Path path = DEMO.resolve("heaters.catalogue");
        Catalogue catalogue = CatalogueFile.load(path);
        assertEquals(8, catalogue.getHeaters().size());
        assertEquals(List.of(), CatalogueCheck.of(catalogue));
        assertTrue(catalogue.getNote().contains("Invented"));
        catalogue.getHeaters().forEach(heater -> assertTrue(heater.getNote().contains("Invented"), heater.getId()));
        assertArrayEquals(Files.readAllBytes(path), CatalogueFile.form().bytes(path.toString(), catalogue));
    }

    @Test
    void catalogueHasGapsAsInstructionsDo() {
        Catalogue catalogue = CatalogueFile.load(DEMO.resolve("heaters.catalogue"));
        Heater gap = heater(catalogue, "h108");
        assertNull(gap.getMakePressure());
        assertNull(gap.getActivationFlow());
        Heater byFlow = heater(catalogue, "h95s");
        assertNull(byFlow.getMakePressure());
        assertNotNull(byFlow.getActivationFlow());
    }

    @Test
    void willowMereLacksReadings() {
        Survey survey = JobFile.load(DEMO.resolve("willow-mere.job")).getSurvey();
        assertNull(survey.getWater().getTest().getRunningPressure());
        assertNull(survey.getElectricity().getExternalLoop());
        assertNull(survey.getElectricity().getMainBonding());
        assertNull(survey.getElectricity().getCircuit().getSegments().get(0).getMethod());
    }

    private static Heater heater(Catalogue catalogue, String id) {
        return catalogue.getHeaters().stream()
                .filter(heater -> id.equals(heater.getId()))
                .findFirst()
                .orElseThrow();
    }
}
