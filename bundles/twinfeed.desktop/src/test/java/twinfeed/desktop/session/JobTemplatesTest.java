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
import twinfeed.model.survey.ElectricalFeed;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.units.Current;
import twinfeed.units.Resistance;

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

    /** What was read with an instrument in one house is not true of the next one. */
    @Test
    void ownTemplateHoldsNoReadingOfTheHouse() {
        Survey survey = JobFile.load(folder.resolve("alder-beck.job")).getSurvey();
        survey.setFaultFinding(SurveyFactory.eINSTANCE.createFaultFinding());
        survey.getWater().setMainTest(SurveyFactory.eINSTANCE.createWaterTest());
        survey.getWater().setStopValveOpen(true);
        survey.getWater().setCompanyPressureConfirmed(true);
        survey.getElectricity().setElectrode(Resistance.valueOf("20 ohm"));
        survey.getElectricity().getCircuit().setUnitDisconnected(true);
        Survey kept = JobFile.load(templates.keep(survey, "Quay terrace")).getSurvey();
        assertNull(kept.getTakenBy());
        assertNull(kept.getTakenOn());
        assertNull(kept.getNotes());
        assertNull(kept.getCustomer());
        assertNull(kept.getUnit());
        assertNull(kept.getFaultFinding());
        assertEquals(List.of(), kept.getSymptoms());
        assertEquals(List.of(), kept.getPhotos());
        assertEquals("terrace house", kept.getSite().getKind());
        assertNull(kept.getSite().getReference());
        assertNull(kept.getWater().getTest());
        assertNull(kept.getWater().getMainTest());
        assertNull(kept.getWater().getIntakeReading());
        assertNull(kept.getWater().getStopValveOpen(), "it says how the test was made");
        assertNull(kept.getWater().getCompanyPressureConfirmed());
        assertEquals("kitchen tap", kept.getWater().getDrawOffs().get(0).getName());
        assertNull(kept.getWater().getDrawOffs().get(0).getFlow());
        ElectricalFeed feed = kept.getElectricity();
        assertNull(feed.getSupplyVoltage());
        assertNull(feed.getExternalLoop());
        assertNull(feed.getProspectiveFault());
        assertNull(feed.getElectrode());
        assertFalse(feed.eIsSet(SurveyPackage.Literals.ELECTRICAL_FEED__SERVICE_FUSE_CONFIRMED));
        assertFalse(feed.eIsSet(SurveyPackage.Literals.ELECTRICAL_FEED__SPARE_WAY));
        assertFalse(feed.eIsSet(SurveyPackage.Literals.ELECTRICAL_FEED__DEVICE_APPROVED));
        assertEquals("TN-C-S", feed.getEarthing().getLiteral(), "how such houses are fed stays");
        assertNull(feed.getCircuit().getMeasuredLoop());
        assertNull(feed.getCircuit().getMeasuredLine());
        assertNull(feed.getCircuit().getInsulationResistance());
        assertNull(feed.getCircuit().getUnitDisconnected());
        assertNull(feed.getCircuit().getRcd().getTripTime());
        assertEquals("rccb", feed.getCircuit().getRcd().getKind().getLiteral());
        assertFalse(feed.getCircuit().getIsolator().eIsSet(SurveyPackage.Literals.ISOLATOR__CONDITION));
        feed.getCircuit()
                .getSegments()
                .forEach(piece -> assertFalse(piece.eIsSet(SurveyPackage.Literals.CABLE_SEGMENT__CONFIDENCE)));
    }

    @Test
    void houseOfWhichLittleIsKnownIsATemplateToo() throws Exception {
        Survey empty = SurveyFactory.eINSTANCE.createSurvey();
        assertNull(JobFile.load(templates.keep(empty, "Empty")).getSurvey().getElectricity());
        empty.setElectricity(SurveyFactory.eINSTANCE.createElectricalFeed());
        empty.getElectricity().setServiceFuse(Current.valueOf("60 A"));
        templates.keep(empty, "Fuse only");
        empty.getElectricity().setCircuit(SurveyFactory.eINSTANCE.createCircuit());
        empty.getElectricity().getCircuit().setMeasuredLine(Resistance.valueOf("0.1 ohm"));
        templates.keep(empty, " Circuit without a switch ");
        Files.writeString(folder.resolve("templates").resolve("remarks.txt"), "no job");
        assertEquals(
                List.of("Circuit without a switch", "Empty", "Fuse only"),
                templates.all().stream().skip(4).map(JobTemplate::title).toList());
        JobTemplate fuse = templates.all().get(6);
        assertEquals(
                Current.valueOf("60 A"), fuse.survey().get().getElectricity().getServiceFuse());
        assertTrue(fuse.survey().get().getNotes().contains("Fuse only"));
        assertTrue(fuse.help().contains("Fuse only.job"), fuse.help());
    }
}
