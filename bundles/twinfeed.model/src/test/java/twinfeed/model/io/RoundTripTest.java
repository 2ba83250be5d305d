// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.io;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.model.job.Job;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterTest;

/** Every class and every attribute of the model goes to a file and comes back as it was, and nothing comes with it. */
class RoundTripTest {

    static Stream<EClass> classes() {
        return Samples.classes().stream();
    }

    static Stream<EStructuralFeature> features() {
        return allFeatures().filter(feature -> !feature.isTransient());
    }

    static Stream<EStructuralFeature> transientFeatures() {
        return allFeatures().filter(EStructuralFeature::isTransient);
    }

    private static Stream<EStructuralFeature> allFeatures() {
        return Samples.classes().stream().flatMap(type -> type.getEStructuralFeatures().stream());
    }

    @Test
    void modelIsSeenWhole() {
        List<EClass> all = Samples.classes();
        assertTrue(all.size() > 40, "classes seen: " + all.size());
        assertTrue(features().count() > 300, "features seen: " + features().count());
    }

    @ParameterizedTest
    @MethodSource("classes")
    void fullObjectComesBack(EClass type) {
        EObject object = Samples.full(type);
        assertEqualsAfterTrip(object);
    }

    @ParameterizedTest
    @MethodSource("features")
    void singleFeatureComesBackAlone(EStructuralFeature feature) {
        EObject object = Samples.only(feature);
        EObject back = assertEqualsAfterTrip(object);
        for (EStructuralFeature other : back.eClass().getEAllStructuralFeatures()) {
            boolean mark = other.equals(ModelFile.versionMark(back.eClass()));
            assertEquals(other.equals(feature) || mark, back.eIsSet(other), other.getName());
        }
    }

    @ParameterizedTest
    @MethodSource("transientFeatures")
    void whatIsTransientStaysOutOfTheFile(EStructuralFeature feature) {
        ModelFile<EObject> form = ModelFile.of(feature.getEContainingClass(), EObject.class);
        assertFalse(
                form.read("first", form.bytes("first", Samples.only(feature))).eIsSet(feature));
    }

    @ParameterizedTest
    @MethodSource("classes")
    void absentStaysAbsent(EClass type) {
        EObject back = assertEqualsAfterTrip(EcoreUtil.create(type));
        back.eClass().getEAllStructuralFeatures().stream()
                .filter(feature -> !feature.equals(ModelFile.versionMark(type)))
                .forEach(feature -> assertFalse(back.eIsSet(feature), feature.getName()));
    }

    @Test
    void zeroIsNotAbsent() {
        WaterTest test = SurveyFactory.eINSTANCE.createWaterTest();
        test.setStaticPressure(twinfeed.units.Pressure.valueOf("0 bar"));
        WaterTest back = (WaterTest) assertEqualsAfterTrip(test);
        assertEquals(0, back.getStaticPressure().si());
        assertNull(back.getRunningPressure());
    }

    @Test
    void textIsReadable() {
        Job job = JobFile.create();
        job.setCatalogue("heaters.catalogue");
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        job.getSurvey().setTargetOutlet(twinfeed.units.Temperature.valueOf("40 °C ± 1 K"));
        job.getSurvey().getCandidates().add("h95");
        assertEquals(
                """
                <?xml version="1.0" encoding="UTF-8"?>
                <job:Job xmlns:job="urn:twinfeed:1:job" version="1" catalogue="heaters.catalogue">
                  <survey targetOutlet="40 °C ± 1 K">
                    <candidates>h95</candidates>
                  </survey>
                </job:Job>
                """,
                new String(JobFile.form().bytes("x.job", job), StandardCharsets.UTF_8));
    }

    @Test
    void writingLeavesTheObjectAsItIs() {
        Job job = JobFile.create();
        job.setVersion(null);
        EObject before = EcoreUtil.copy(job);
        JobFile.form().bytes("x.job", job);
        assertTrue(EcoreUtil.equals(before, job));
        assertNull(job.eResource());
    }

    private static EObject assertEqualsAfterTrip(EObject object) {
        ModelFile<EObject> form = ModelFile.of(object.eClass(), EObject.class);
        byte[] first = form.bytes("first", object);
        EObject back = form.read("first", first);
        assertArrayEquals(first, form.bytes("second", back));
        EObject expected = EcoreUtil.copy(object);
        if (ModelFile.versionMark(object.eClass()) != null) {
            expected.eSet(ModelFile.versionMark(object.eClass()), "1");
        }
        assertTrue(EcoreUtil.equals(expected, back), () -> new String(first, StandardCharsets.UTF_8));
        assertNull(back.eResource());
        return back;
    }
}
