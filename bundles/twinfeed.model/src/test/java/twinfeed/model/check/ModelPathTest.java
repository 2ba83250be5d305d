// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.SurveyPackage;

class ModelPathTest {
    @Test
    void namesElseNumbers() {
        Job job = JobFile.create();
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        job.getSurvey().setElectricity(SurveyFactory.eINSTANCE.createElectricalFeed());
        job.getSurvey().getElectricity().setCircuit(SurveyFactory.eINSTANCE.createCircuit());
        CableSegment first = SurveyFactory.eINSTANCE.createCableSegment();
        CableSegment second = SurveyFactory.eINSTANCE.createCableSegment();
        second.setName("loft");
        job.getSurvey().getElectricity().getCircuit().getSegments().add(first);
        job.getSurvey().getElectricity().getCircuit().getSegments().add(second);
        assertEquals("", ModelPath.of(job));
        assertEquals("survey.electricity.circuit.segments[1]", ModelPath.of(first));
        assertEquals(
                "survey.electricity.circuit.segments[loft].method",
                ModelPath.of(second, SurveyPackage.Literals.CABLE_SEGMENT__METHOD));
        assertEquals("loft", ModelPath.name(second));
        assertEquals("", ModelPath.name(first));
    }

    @Test
    void heatersByTheirId() {
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        Heater heater = CatalogueFactory.eINSTANCE.createHeater();
        heater.setId("h95");
        assertEquals("heater.power", ModelPath.of(heater, CataloguePackage.Literals.HEATER__POWER));
        catalogue.getHeaters().add(heater);
        assertEquals("heaters[h95].power", ModelPath.of(heater, CataloguePackage.Literals.HEATER__POWER));
    }
}
