// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.remedy;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.pressure.survey.PipeTables;
import twinfeed.engineering.pipe.Pipe;
import twinfeed.engineering.water.Fluid;
import twinfeed.model.survey.DrawOff;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.PipeMaterial;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.WaterFeed;
import twinfeed.model.survey.WaterTest;
import twinfeed.units.Length;
import twinfeed.units.Pressure;

/** What works change in a copy of the survey, and what of the survey they can change. */
public final class WaterChanges {
    static final String REDUCED_VALVE = "isolating-valve";
    static final String FULL_BORE_VALVE = "full-bore-valve";
    static final String STRAINER = "strainer";
    static final String FOULED_STRAINER = "strainer-fouled";
    static final String DOUBLE_CHECK_VALVE = "double-check-valve";
    static final String SCALE_INHIBITOR = "scale-inhibitor";

    /** Bore of 22 mm copper tube, m (EN 1057). */
    private static final double WIDE_BORE_M = 0.0202;

    /** Bore of 25 mm polyethylene pipe, m (from memory). */
    private static final double SERVICE_BORE_M = 0.0204;

    /** Name of a new own pipe. */
    private static final String OWN = "own branch";

    /** What a direct-acting reducing valve keeps of its set pressure at full flow. Judgement. */
    private static final double RUNNING_OVER_SETTING = 0.8;

    /** A service pipe that was narrow keeps the supply's running pressure at least so far under the static one. */
    private static final double LEAST_DROP_SHARE = 0.02;

    private WaterChanges() {}

    private static WaterFeed water(Survey survey) {
        return survey.getWater();
    }

    /** How many segments lie ahead of the point that a segment's name marks. */
    static int position(WaterFeed water, @Nullable String after) {
        List<PipeSegment> segments = water.getSegments();
        for (int i = 0; after != null && i < segments.size(); i++) {
            if (after.equals(segments.get(i).getName())) {
                return i + 1;
            }
        }
        return 0;
    }

    static int gauge(WaterFeed water) {
        return position(water, water.getTest().getGaugeAfter());
    }

    static List<PipeSegment> afterGauge(WaterFeed water) {
        return water.getSegments().subList(gauge(water), water.getSegments().size());
    }

    /** Pipes after the gauge that any draw-off shares with the unit. */
    static List<PipeSegment> shared(WaterFeed water) {
        int gauge = water.getTest() == null ? 0 : gauge(water);
        int last = gauge;
        for (DrawOff drawOff : water.getDrawOffs()) {
            last = Math.max(last, position(water, drawOff.getTeeAfter()));
        }
        return water.getSegments().subList(gauge, last);
    }

    /** How many fittings of a kind lie between the gauge and the unit. */
    static int count(WaterFeed water, String kind) {
        int sum = 0;
        for (PipeSegment segment : afterGauge(water)) {
            for (Fitting fitting : segment.getFittings()) {
                sum += kind.equals(fitting.getKind()) ? (fitting.getCount() == null ? 1 : fitting.getCount()) : 0;
            }
        }
        return sum;
    }

    static void replaceFittings(Survey survey, String from, String to) {
        for (PipeSegment segment : afterGauge(water(survey))) {
            for (Fitting fitting : segment.getFittings()) {
                if (from.equals(fitting.getKind())) {
                    fitting.setKind(to);
                    fitting.setK(null);
                }
            }
        }
    }

    /** Pipes of the unit's own branch, after the gauge and all tees, that are narrower than 22 mm copper. */
    static List<PipeSegment> narrowBranch(WaterFeed water) {
        int first = gauge(water) + shared(water).size();
        List<PipeSegment> narrow = new ArrayList<>();
        for (PipeSegment segment :
                water.getSegments().subList(first, water.getSegments().size())) {
            if (segment.getMaterial() != PipeMaterial.HOSE && boreM(segment) < WIDE_BORE_M) {
                narrow.add(segment);
            }
        }
        return narrow;
    }

    private static double boreM(PipeSegment segment) {
        if (segment.getBore() != null) {
            return segment.getBore().si();
        }
        return segment.getSize() == null
                ? 0
                : PipeTables.boreM(segment.getMaterial(), segment.getSize()).orElse(0.0);
    }

    /** Length of pipes, m. */
    static double lengthM(List<PipeSegment> segments) {
        return segments.stream()
                .mapToDouble(segment ->
                        segment.getLength() == null ? 0 : segment.getLength().si())
                .sum();
    }

    static double riseM(List<PipeSegment> segments) {
        return segments.stream()
                .mapToDouble(segment ->
                        segment.getRise() == null ? 0 : segment.getRise().si())
                .sum();
    }

    static void widenBranch(Survey survey) {
        narrowBranch(water(survey)).forEach(WaterChanges::widen);
    }

    static void widen(PipeSegment segment) {
        renew(segment, PipeMaterial.COPPER, "22 mm", WIDE_BORE_M);
    }

    private static void renew(PipeSegment segment, PipeMaterial material, String size, double boreM) {
        segment.setMaterial(material);
        segment.setSize(size);
        segment.setBore(Length.ofSi(boreM));
        segment.setRoughness(null);
    }

    /** The unit gets its own 22 mm pipe beside the shared one; the taps keep the old pipe as part of their branches. */
    static void giveOwnBranch(Survey survey) {
        WaterFeed water = water(survey);
        List<PipeSegment> old = new ArrayList<>(shared(water));
        int gauge = gauge(water);
        for (DrawOff drawOff : water.getDrawOffs()) {
            int tee = position(water, drawOff.getTeeAfter());
            if (tee > gauge) {
                lengthenBranch(drawOff, old.subList(0, tee - gauge));
                drawOff.setTeeAfter(water.getTest().getGaugeAfter());
            }
        }
        PipeSegment own = SurveyFactory.eINSTANCE.createPipeSegment();
        own.setName(OWN);
        own.setLength(Length.ofSi(lengthM(old)));
        own.setRise(Length.ofSi(riseM(old)));
        widen(own);
        own.getFittings().add(fitting(FULL_BORE_VALVE, 1));
        own.getFittings().add(fitting("bend", 4));
        water.getSegments().removeAll(old);
        water.getSegments().add(gauge, own);
    }

    static void lengthenBranch(DrawOff drawOff, List<PipeSegment> old) {
        drawOff.getSegments().addAll(0, EcoreUtil.copyAll(old));
        if (drawOff.getHeight() != null) {
            drawOff.setHeight(drawOff.getHeight().withSi(drawOff.getHeight().si() + riseM(old)));
        }
    }

    static Fitting fitting(String kind, int count) {
        Fitting fitting = SurveyFactory.eINSTANCE.createFitting();
        fitting.setKind(kind);
        fitting.setCount(count);
        return fitting;
    }

    /** The first pipe, where it is a service pipe by its material. */
    private static @Nullable PipeSegment service(WaterFeed water) {
        if (water.getSegments().isEmpty()) {
            return null;
        }
        PipeSegment first = water.getSegments().get(0);
        return switch (first.getMaterial()) {
            case PE, LEAD, GALVANISED -> first;
            case COPPER, PLASTIC, HOSE -> null;
        };
    }

    /** Whether a new service pipe would change anything that the survey knows of. */
    static boolean renewableService(WaterFeed water) {
        PipeSegment service = service(water);
        return Boolean.TRUE.equals(water.getSharedServicePipe())
                || (service != null && (unfit(service) || boreM(service) < SERVICE_BORE_M));
    }

    static boolean unfit(PipeSegment segment) {
        return segment.getMaterial() == PipeMaterial.LEAD || segment.getMaterial() == PipeMaterial.GALVANISED;
    }

    /** A new pipe of 25 mm polyethylene; where the old one lies ahead of the gauge, the running pressure gains what it lost. */
    public static void renewService(Survey survey) {
        WaterFeed water = water(survey);
        water.setSharedServicePipe(false);
        PipeSegment service = service(water);
        if (service == null) {
            return;
        }
        double before = frictionPa(service, water.getTest());
        renew(service, PipeMaterial.PE, "25 mm", SERVICE_BORE_M);
        if (gauge(water) > 0) {
            raiseRunning(water.getTest(), before - frictionPa(service, water.getTest()));
        }
    }

    private static double frictionPa(PipeSegment segment, WaterTest test) {
        double boreM = boreM(segment);
        if (boreM <= 0 || segment.getLength() == null) {
            return 0;
        }
        double roughnessM = segment.getRoughness() == null
                ? PipeTables.roughnessM(segment.getMaterial())
                : segment.getRoughness().si();
        double limitM = boreM * Pipe.LARGEST_RELATIVE_ROUGHNESS;
        return Pipe.frictionLossPa(
                new twinfeed.engineering.pipe.PipeSegment(
                        Math.max(0, segment.getLength().si()), boreM, Math.min(Math.max(0, roughnessM), limitM), 0, 0),
                Fluid.waterAt(10),
                test.getFlow().si());
    }

    private static void raiseRunning(WaterTest test, double gainPa) {
        double most = test.getStaticPressure().si() * (1 - LEAST_DROP_SHARE);
        double raised = Math.min(test.getRunningPressure().si() + Math.max(0, gainPa), most);
        if (raised > test.getRunningPressure().si()) {
            test.setRunningPressure(test.getRunningPressure().withSi(raised));
        }
    }

    /** A reducing valve at the gauge's place. */
    static void reduce(Survey survey, double setPa) {
        WaterTest test = water(survey).getTest();
        if (test.getStaticPressure().si() > setPa) {
            test.setStaticPressure(Pressure.ofSi(setPa));
            double running = test.getRunningPressure().si();
            test.setRunningPressure(test.getRunningPressure().withSi(Math.min(running, setPa * RUNNING_OVER_SETTING)));
        }
    }

    /** A double check valve in the last pipe ahead of the unit; its loss counts. */
    static void addCheckValve(Survey survey) {
        water(survey).setBackflowProtection(DOUBLE_CHECK_VALVE);
        addLast(water(survey), DOUBLE_CHECK_VALVE);
    }

    /** A scale inhibitor in the last pipe ahead of the unit; its loss counts. */
    static void addScaleInhibitor(Survey survey) {
        addLast(water(survey), SCALE_INHIBITOR);
    }

    private static void addLast(WaterFeed water, String kind) {
        if (!water.getSegments().isEmpty()) {
            PipeSegment last = water.getSegments().get(water.getSegments().size() - 1);
            last.getFittings().add(fitting(kind, 1));
        }
    }

    /** The hose ends above the spill-over level of everything; a protection that suffices for that stays. */
    static void retainHose(Survey survey) {
        WaterFeed water = water(survey);
        water.setHandsetReachesWc(false);
        if (!DOUBLE_CHECK_VALVE.equals(water.getBackflowProtection())) {
            water.setBackflowProtection("retaining-ring");
        }
    }
}
