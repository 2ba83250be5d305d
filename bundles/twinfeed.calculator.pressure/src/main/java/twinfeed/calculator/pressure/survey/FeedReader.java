// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Context;
import twinfeed.engineering.network.SupplyCurve;
import twinfeed.engineering.network.SupplyTest;
import twinfeed.engineering.water.Fluid;
import twinfeed.engineering.water.Water;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Quantity;

/**
 * Maps the survey's water feed to a {@link Feed}, once for all heaters. Defaults are recorded as assumptions; what cannot be
 * used is named in {@link #faults} by the path of the reading.
 */
public final class FeedReader {
    /** More than any supply has, Pa. */
    private static final double MOST_PA = 100e5;

    /** A fall of nothing, as a share of the static pressure: the curve needs one to go through. */
    private static final double LEAST_FALL_SHARE = 1e-6;

    private final Context context;
    private final @Nullable WaterFeed water;
    private final List<String> faults = new ArrayList<>();
    private final @Nullable Feed fitted;
    private final @Nullable Feed feed;

    private FeedReader(Context context, @Nullable WaterFeed water, @Nullable Feed fitted) {
        this.context = context;
        this.water = water;
        this.fitted = fitted;
        this.feed = water == null || water.getTest() == null ? null : read(water, water.getTest());
    }

    /** Reads the feed of the house as surveyed: outlets of taps are fitted to the flows that were read there. */
    public static FeedReader ofSurveyed(Context context) {
        return new FeedReader(context, context.surveyed().getWater(), null);
    }

    /**
     * Reads the feed of the house with the works done.
     *
     * @param fitted the feed of the house as surveyed, whose taps are in the changed house too
     */
    public static FeedReader ofChanged(Context context, @Nullable Feed fitted) {
        return new FeedReader(context, context.survey().getWater(), fitted);
    }

    /** The feed, or empty where a reading is missing or cannot be used. */
    public Optional<Feed> feed() {
        return Optional.ofNullable(feed);
    }

    /** Paths of the readings that are missing or cannot be used. */
    public List<String> faults() {
        return List.copyOf(faults);
    }

    private @Nullable Feed read(WaterFeed feedWater, WaterTest test) {
        SupplyCurve curve = curve(test);
        int gauge = position(feedWater, test.getGaugeAfter(), "survey.water.test.gaugeAfter");
        if (context.grid().intakes().stream().anyMatch(intake -> !liquid(intake.temperatureC()))) {
            faults.add("survey.winterIntake");
        }
        PipeReader pieces = new PipeReader(context, faults);
        List<PipeSegment> after =
                feedWater.getSegments().subList(gauge, feedWater.getSegments().size());
        List<NamedPipe> run = pieces.read(after, "survey.water.segments");
        if (curve == null || !faults.isEmpty()) {
            return null;
        }
        List<SurveyedTap> taps = new ArrayList<>();
        int number = 0;
        Feed tapless = new Feed(curve, run, List.of(), origin(test));
        TapReader tapReader = new TapReader(context, tapless, testFluid(), pieces);
        for (DrawOff drawOff : feedWater.getDrawOffs()) {
            String name = drawOff.getName() == null ? String.valueOf(number + 1) : drawOff.getName();
            int tee = position(feedWater, drawOff.getTeeAfter(), "survey.water.drawOffs[" + name + "].teeAfter");
            // A tap ahead of the gauge draws on the supply that the gauge saw, so it is taken at the gauge.
            SurveyedTap known = fitted == null ? null : fitted.taps().get(number);
            number++;
            tapReader.read(drawOff, name, Math.max(0, tee - gauge), known).ifPresent(taps::add);
        }
        return faults.isEmpty() ? new Feed(curve, run, taps, tapless.test()) : null;
    }

    private static boolean liquid(double temperatureC) {
        return temperatureC >= Water.LOWEST_C && temperatureC <= Water.HIGHEST_C;
    }

    /** Water at the time of the test; it only turns heights into pressures and fixes the taps' outlets. */
    private Fluid testFluid() {
        return Fluid.waterAt(testC());
    }

    private double testC() {
        double temperatureC = context.grid().intakes().get(0).temperatureC();
        if (water != null && water.getIntakeReading() != null) {
            temperatureC = water.getIntakeReading().si();
        }
        return Math.min(Math.max(temperatureC, Water.LOWEST_C), Water.HIGHEST_C);
    }

    private TestOrigin origin(WaterTest test) {
        boolean read = water != null && water.getIntakeReading() != null;
        return new TestOrigin(
                test.getStaticPressure().si(),
                test.getRunningPressure().si(),
                test.getGaugeHeight() == null ? 0 : test.getGaugeHeight().si(),
                testC(),
                read
                        ? "survey.water.intakeReading"
                        : context.grid().intakes().get(0).origin());
    }

    private @Nullable SupplyCurve curve(WaterTest test) {
        Quantity staticPressure = test.getStaticPressure();
        Quantity running = test.getRunningPressure();
        Quantity flow = test.getFlow();
        if (staticPressure == null || running == null || flow == null) {
            return null;
        }
        if (!plausible(test)) {
            return null;
        }
        double heightPa = test.getGaugeHeight() == null
                ? 0
                : testFluid().pressureOfHead(test.getGaugeHeight().si());
        double staticPa = staticPressure.si() + heightPa;
        double runningPa = running.si() + heightPa;
        // A fall smaller than the gauge can tell is a fall of nothing: a stiff supply, which is good news.
        double stiffPa = staticPa * (1 - LEAST_FALL_SHARE);
        if (runningPa < 0 || runningPa >= staticPa + SupplyReading.spreadPa(test)) {
            faults.add("survey.water.test.runningPressure");
        } else if (runningPa > stiffPa && flow.si() > 0) {
            return new SupplyCurve(staticPa, stiffPa, flow.si());
        } else if (!SupplyTest.of(staticPa, runningPa, flow.si()).isAccepted()) {
            faults.add("survey.water.test.flow");
        } else {
            return new SupplyCurve(staticPa, runningPa, flow.si());
        }
        return null;
    }

    /** A slip of the pen is named rather than worked with. */
    private boolean plausible(WaterTest test) {
        if (water != null && Boolean.FALSE.equals(water.getStopValveOpen())) {
            // Behind a throttled valve the test shows the valve and not the supply.
            faults.add("survey.water.stopValveOpen");
        }
        if (!(test.getStaticPressure().si() > 0 && test.getStaticPressure().si() <= MOST_PA)) {
            faults.add("survey.water.test.staticPressure");
        }
        if (!(test.getRunningPressure().si() >= 0)) {
            faults.add("survey.water.test.runningPressure");
        }
        if (!(test.getFlow().si() > 0 && test.getFlow().si() <= ReadingLimits.MAX_FLOW_M3_PER_S)) {
            faults.add("survey.water.test.flow");
        }
        if (test.getGaugeHeight() != null && Math.abs(test.getGaugeHeight().si()) > ReadingLimits.MAX_LENGTH_M) {
            faults.add("survey.water.test.gaugeHeight");
        }
        return faults.isEmpty();
    }

    /** How many of the feed's segments lie ahead of a point that is named by the segment before it. */
    private int position(WaterFeed feedWater, @Nullable String after, String path) {
        if (after == null) {
            return 0;
        }
        List<PipeSegment> segments = feedWater.getSegments();
        for (int i = 0; i < segments.size(); i++) {
            if (after.equals(segments.get(i).getName())) {
                return i + 1;
            }
        }
        faults.add(path);
        return 0;
    }
}
