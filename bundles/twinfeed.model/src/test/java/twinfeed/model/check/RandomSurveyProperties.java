// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Pressure;

/** The two-pressure rule for any two pressures, and that a check changes nothing. */
class RandomSurveyProperties {
    private static final double LEAST_DROP = 0.10;

    @Property(seed = "2")
    void pressuresAreJudgedByTheirDrop(
            @ForAll @DoubleRange(min = 10_000, max = 1_600_000) double stillPa,
            @ForAll @DoubleRange(min = 0, max = 1_600_000) double runningPa) {
        Job job = JobFile.create();
        job.setSurvey(SurveyFactory.eINSTANCE.createSurvey());
        job.getSurvey().setWater(SurveyFactory.eINSTANCE.createWaterFeed());
        WaterTest test = SurveyFactory.eINSTANCE.createWaterTest();
        test.setStaticPressure(Pressure.ofSi(stillPa));
        test.setRunningPressure(Pressure.ofSi(runningPa));
        job.getSurvey().getWater().setTest(test);
        EObject before = EcoreUtil.copy(job);

        List<String> keys = JobCheck.of(job, null).stream().map(Problem::key).toList();

        assertEquals(expected(stillPa, runningPa), keys);
        assertTrue(EcoreUtil.equals(before, job));
    }

    private static List<String> expected(double stillPa, double runningPa) {
        if (runningPa >= stillPa) {
            return List.of("running.notBelow");
        }
        return (stillPa - runningPa) / stillPa < LEAST_DROP - 1e-9 ? List.of("running.smallDrop") : List.of();
    }
}
