// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.Demo;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;

/** Of the houses of a list that have the same readings, the third and those after it are not judged again. */
final class AlikeHousesTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();
    private static final OpenedJob JOB = SERVICE.open(Demo.FOLDER.resolve("rowan-brook.job"), null);

    private final List<Survey> judged = new ArrayList<>();
    private final AlikeHouses houses = new AlikeHouses(house -> {
        judged.add(house.job().getSurvey());
        return SERVICE.quickAssess(house, Locale.UK);
    });

    private static OpenedJob house(Consumer<Survey> change) {
        Job job = EcoreUtil.copy(JOB.job());
        change.accept(job.getSurvey());
        return new OpenedJob(JOB.file(), job, JOB.catalogue(), JOB.warnings());
    }

    private static OpenedJob named(String name) {
        return house(survey -> {
            survey.setCustomer(SurveyFactory.eINSTANCE.createCustomer());
            survey.getCustomer().setName(name);
            survey.getCustomer().setAddress("Office of " + name);
            survey.getCustomer().setPhone("1" + name);
            survey.getCustomer().setEmail("2" + name);
            survey.setSite(SurveyFactory.eINSTANCE.createSite());
            survey.getSite().setName(name);
            survey.getSite().setAddress(name + "; Westermere");
            survey.getSite().setReference("3" + name);
            survey.getSite().setNote("4" + name);
            survey.getUnit().setNote("5" + name);
            survey.setTakenBy("6" + name);
            survey.setNotes("7" + name);
            survey.setPublicNotes("8" + name);
        });
    }

    /** Judges a house often enough to be remembered. */
    private void remember(OpenedJob house) {
        houses.judged(house);
        houses.judged(house);
        judged.clear();
    }

    @Test
    void theThirdHouseIsNotJudgedWhateverItIsCalled() {
        List<AssessedJob> all = IntStream.rangeClosed(1, 4)
                .mapToObj(number -> houses.judged(named("Sedge Row " + number)))
                .toList();
        assertEquals(2, judged.size());
        assertSame(all.get(1).record(), all.get(3).record());
        assertSame(all.get(1).assessed(), all.get(3).assessed());
        assertEquals(
                "Sedge Row 4", all.get(3).opened().job().getSurvey().getSite().getName());
    }

    @Test
    void calculatorsDoNotSeeTheWordsThatTellHousesApart() {
        OpenedJob house = named("Sedge Row 1");
        houses.judged(house);
        EcoreUtil.getAllContents(judged).forEachRemaining(part -> {
            for (EAttribute attribute : ((EObject) part).eClass().getEAllAttributes()) {
                String text = String.valueOf(((EObject) part).eGet(attribute));
                assertFalse(text.contains("Sedge"), text);
            }
        });
        assertEquals("Sedge Row 1", house.job().getSurvey().getSite().getName());
        assertEquals("5Sedge Row 1", house.job().getSurvey().getUnit().getNote());
    }

    @Test
    void aHouseOfWhichOneReadingDiffersIsJudgedForItself() {
        remember(house(survey -> {}));
        int readings = 0;
        for (EObject feed :
                List.of(JOB.job().getSurvey().getWater(), JOB.job().getSurvey().getElectricity())) {
            for (Iterator<EObject> all = EcoreUtil.getAllContents(List.of(feed)); all.hasNext(); ) {
                EObject object = all.next();
                for (EAttribute reading : object.eClass().getEAllAttributes()) {
                    if (object.eIsSet(reading)) {
                        judged.clear();
                        houses.judged(without(object, reading));
                        assertEquals(1, judged.size(), reading.getName());
                        readings++;
                    }
                }
            }
        }
        assertTrue(readings > 50, "readings: " + readings);
    }

    private static OpenedJob without(EObject object, EAttribute reading) {
        EcoreUtil.Copier copier = new EcoreUtil.Copier();
        Job job = (Job) copier.copy(JOB.job());
        Objects.requireNonNull(copier.get(object)).eUnset(reading);
        return new OpenedJob(JOB.file(), job, JOB.catalogue(), JOB.warnings());
    }

    @Test
    void aHouseThatWasNotAskedForInALongTimeIsForgotten() {
        OpenedJob first = house(survey -> survey.getUnit().setAge(1));
        remember(first);
        for (int age = 2; age < 200; age++) {
            int years = age;
            remember(house(survey -> survey.getUnit().setAge(years)));
        }
        houses.judged(house(survey -> survey.getUnit().setAge(199)));
        assertEquals(0, judged.size());
        houses.judged(first);
        assertEquals(1, judged.size());
    }

    @Test
    void anotherThreadRemembersItsOwnHouses() {
        remember(named("Sedge Row 1"));
        CompletableFuture.runAsync(() -> houses.judged(named("Sedge Row 2")), command -> {
                    Thread other = new Thread(command, "other");
                    other.start();
                })
                .join();
        assertEquals(1, judged.size());
    }
}
