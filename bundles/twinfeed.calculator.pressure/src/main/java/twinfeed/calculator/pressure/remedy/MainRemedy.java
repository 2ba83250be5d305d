// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.remedy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Remedy;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterSource;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Length;

/**
 * A pipe from the cold main to a unit that is fed from elsewhere. What the main gives is known by a test of its own; where hot water
 * comes from the main through a boiler or cylinder, the main gives at least what was measured there.
 */
public final class MainRemedy {
    private static final String NAME = "pipe from the main";
    private static final int BENDS = 4;

    private MainRemedy() {}

    /** The work, where the unit is not fed from the main and the survey tells what the main gives and how far it is. */
    public static Optional<Remedy> of(@Nullable WaterFeed water) {
        if (water == null || water.getSource() == WaterSource.MAINS || water.getTest() == null) {
            return Optional.empty();
        }
        double lengthM = lengthM(water);
        if (lengthM <= 0 || (water.getSource() != WaterSource.HOT && !measured(water))) {
            return Optional.empty();
        }
        return Optional.of(new Remedy(
                "repipe-main",
                "repipeMain",
                Map.of("length", lengthM),
                List.of(
                        Remedy.Item.of("main-branch", 1),
                        WaterRemedies.metres("pipe-22", lengthM),
                        Remedy.Item.of("pipe-fittings", 1),
                        Remedy.Item.of("making-good", 1)),
                false,
                0,
                MainRemedy::repipe));
    }

    /** Whether the cold main was tested at the point from which the pipe would run. */
    public static boolean measured(WaterFeed water) {
        WaterTest test = water.getMainTest();
        return test != null
                && test.getStaticPressure() != null
                && test.getRunningPressure() != null
                && test.getFlow() != null;
    }

    /** As far as the survey says; a hot feed runs about as far as the cold main would. */
    private static double lengthM(WaterFeed water) {
        PipeSegment pipe = water.getMainPipe();
        if (pipe != null && pipe.getLength() != null) {
            return pipe.getLength().si();
        }
        return water.getSource() == WaterSource.HOT ? WaterChanges.lengthM(WaterChanges.afterGauge(water)) : 0;
    }

    private static void repipe(Survey survey) {
        WaterFeed water = survey.getWater();
        if (water.getSource() == WaterSource.MAINS) {
            return;
        }
        List<PipeSegment> old = new ArrayList<>(WaterChanges.afterGauge(water));
        PipeSegment pipe = pipe(water, old);
        int gauge = WaterChanges.gauge(water);
        // Taps stay where they draw and keep the old pipe: that they draw on the main too is the careful assumption.
        for (DrawOff drawOff : water.getDrawOffs()) {
            int tee = WaterChanges.position(water, drawOff.getTeeAfter());
            if (tee > gauge) {
                WaterChanges.lengthenBranch(drawOff, old.subList(0, tee - gauge));
            }
        }
        if (measured(water)) {
            water.setTest(EcoreUtil.copy(water.getMainTest()));
            water.getTest().setGaugeAfter(null);
            water.getSegments().clear();
        } else {
            water.getSegments().removeAll(old);
        }
        water.getSegments().add(pipe);
        water.getDrawOffs()
                .forEach(drawOff -> drawOff.setTeeAfter(water.getTest().getGaugeAfter()));
        water.setSource(WaterSource.MAINS);
        water.setMainTest(null);
        water.setMainPipe(null);
        water.setHottestFeed(null);
        water.setIntakeReading(null);
    }

    private static PipeSegment pipe(WaterFeed water, List<PipeSegment> old) {
        PipeSegment planned = water.getMainPipe();
        PipeSegment pipe = SurveyFactory.eINSTANCE.createPipeSegment();
        pipe.setName(NAME);
        pipe.setLength(Length.ofSi(lengthM(water)));
        if (planned != null && planned.getRise() != null) {
            pipe.setRise(planned.getRise());
        } else if (planned == null) {
            pipe.setRise(Length.ofSi(WaterChanges.riseM(old)));
        }
        WaterChanges.widen(pipe);
        pipe.getFittings().add(WaterChanges.fitting(WaterChanges.FULL_BORE_VALVE, 1));
        pipe.getFittings().add(WaterChanges.fitting("bend", BENDS));
        if (WaterChanges.DOUBLE_CHECK_VALVE.equals(water.getBackflowProtection())) {
            pipe.getFittings().add(WaterChanges.fitting(WaterChanges.DOUBLE_CHECK_VALVE, 1));
        }
        return pipe;
    }
}
