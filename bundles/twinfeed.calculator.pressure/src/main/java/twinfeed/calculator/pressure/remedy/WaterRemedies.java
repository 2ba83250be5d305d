// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.remedy;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Remedy;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.Kind;

/**
 * Works on the water feed. Each is offered only where the survey shows what it would change; whether it suffices is found by
 * judging the edited survey. The edits look at the survey that they are given, so that works can follow one another.
 */
public final class WaterRemedies {
    /** Judgement: the water undertaker has to agree and connect. */
    private static final int SERVICE_PIPE_DAYS = 30;

    private static final int VALVE_DAYS = 2;

    private WaterRemedies() {}

    /** Works that lessen the losses between the gauge and the unit, or strengthen the supply ahead of it. */
    public static List<Remedy> morePressure(@Nullable WaterFeed water) {
        List<Remedy> works = new ArrayList<>();
        if (water == null || water.getTest() == null) {
            return works;
        }
        fullBoreValve(water).ifPresent(works::add);
        strainer(water).ifPresent(works::add);
        branch(water).ifPresent(works::add);
        servicePipe(water).ifPresent(works::add);
        MainRemedy.of(water).ifPresent(works::add);
        works.add(PumpRemedy.of(water));
        return works;
    }

    /** The same, and the unit's own pipe, for what an open tap takes away. */
    public static List<Remedy> lessDisturbance(@Nullable WaterFeed water) {
        List<Remedy> works = new ArrayList<>(morePressure(water));
        if (water != null) {
            ownBranch(water).ifPresent(works::add);
        }
        return works;
    }

    /** Works in which the water runs slower. */
    public static List<Remedy> widerPipes(@Nullable WaterFeed water) {
        List<Remedy> works = new ArrayList<>();
        if (water != null && water.getTest() != null) {
            branch(water).ifPresent(works::add);
            ownBranch(water).ifPresent(works::add);
        }
        return works;
    }

    private static Optional<Remedy> fullBoreValve(WaterFeed water) {
        int count = WaterChanges.count(water, WaterChanges.REDUCED_VALVE);
        return count == 0
                ? Optional.empty()
                : Optional.of(work(
                        "full-bore-valve",
                        "fullBoreValve",
                        Map.of("count", count),
                        0,
                        survey -> WaterChanges.replaceFittings(
                                survey, WaterChanges.REDUCED_VALVE, WaterChanges.FULL_BORE_VALVE),
                        Remedy.Item.of("full-bore-valve", count)));
    }

    private static Optional<Remedy> strainer(WaterFeed water) {
        int count = WaterChanges.count(water, WaterChanges.FOULED_STRAINER);
        return count == 0
                ? Optional.empty()
                : Optional.of(work(
                        "strainer-clean",
                        "strainerClean",
                        Map.of("count", count),
                        0,
                        survey -> WaterChanges.replaceFittings(
                                survey, WaterChanges.FOULED_STRAINER, WaterChanges.STRAINER),
                        Remedy.Item.of("strainer-clean", count)));
    }

    private static Optional<Remedy> branch(WaterFeed water) {
        List<PipeSegment> narrow = WaterChanges.narrowBranch(water);
        double lengthM = WaterChanges.lengthM(narrow);
        return lengthM <= 0
                ? Optional.empty()
                : Optional.of(work(
                        "branch-22",
                        "branch",
                        Map.of("length", lengthM),
                        0,
                        WaterChanges::widenBranch,
                        metres("pipe-22", lengthM),
                        Remedy.Item.of("pipe-fittings", 1),
                        Remedy.Item.of("task-pipework", 1),
                        Remedy.Item.of("making-good", 1)));
    }

    private static Optional<Remedy> ownBranch(WaterFeed water) {
        double lengthM = WaterChanges.lengthM(WaterChanges.shared(water));
        return lengthM <= 0
                ? Optional.empty()
                : Optional.of(work(
                        "own-branch",
                        "ownBranch",
                        Map.of("length", lengthM),
                        0,
                        WaterChanges::giveOwnBranch,
                        Remedy.Item.of("own-branch", 1),
                        metres("pipe-22", lengthM),
                        Remedy.Item.of("pipe-fittings", 1),
                        Remedy.Item.of("making-good", 1)));
    }

    /** A new service pipe, where the survey has a narrow or an unfit one ahead of the gauge, or one that is shared. */
    public static Optional<Remedy> servicePipe(WaterFeed water) {
        return WaterChanges.renewableService(water)
                ? Optional.of(new Remedy(
                        "service-pipe",
                        "servicePipe",
                        Map.of(),
                        List.of(Remedy.Item.of("service-pipe", 1)),
                        true,
                        SERVICE_PIPE_DAYS,
                        WaterChanges::renewService))
                : Optional.empty();
    }

    /**
     * A pressure-reducing valve.
     *
     * @param setPa pressure to which it is set, Pa
     */
    public static Remedy reducingValve(double setPa) {
        return work(
                "reducing-valve",
                "reducingValve",
                Map.of("pressure", Kind.PRESSURE.amount(setPa)),
                VALVE_DAYS,
                survey -> WaterChanges.reduce(survey, setPa),
                Remedy.Item.of("pressure-reducing-valve", 1));
    }

    /** A double check valve ahead of the unit. */
    public static Remedy checkValve() {
        return work(
                "check-valve",
                "checkValve",
                Map.of(),
                0,
                WaterChanges::addCheckValve,
                Remedy.Item.of("check-valve", 1));
    }

    /** A ring that holds the hose back from a WC pan; it keeps the hose out of a bath or tray as well. */
    public static Remedy hoseRetainer() {
        return work(
                "hose-retainer",
                "hoseRetainer",
                Map.of(),
                0,
                WaterChanges::retainHose,
                Remedy.Item.of("hose-retainer", 1));
    }

    /** A dosing or inline scale inhibitor ahead of the unit. */
    public static Remedy scaleInhibitor() {
        return work(
                "scale-inhibitor",
                "scaleInhibitor",
                Map.of(),
                0,
                WaterChanges::addScaleInhibitor,
                Remedy.Item.of("scale-inhibitor", 1));
    }

    /** Whether a scale inhibitor sits in the pipes to the unit. */
    public static boolean hasScaleInhibitor(@Nullable WaterFeed water) {
        return water != null
                && water.getSegments().stream()
                        .flatMap(segment -> segment.getFittings().stream())
                        .anyMatch(fitting -> WaterChanges.SCALE_INHIBITOR.equals(fitting.getKind()));
    }

    private static Remedy work(
            String id,
            String kind,
            Map<String, Object> arguments,
            int leadDays,
            Consumer<Survey> edit,
            Remedy.Item... items) {
        return new Remedy(id, kind, arguments, List.of(items), false, leadDays, edit);
    }

    static Remedy.Item metres(String code, double lengthM) {
        return new Remedy.Item(
                code,
                BigDecimal.valueOf(lengthM).setScale(6, RoundingMode.HALF_UP).setScale(1, RoundingMode.UP));
    }
}
