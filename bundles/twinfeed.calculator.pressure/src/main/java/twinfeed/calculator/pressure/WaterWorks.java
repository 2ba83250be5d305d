// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import twinfeed.calculator.Remedy;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.WaterFeed;

/**
 * Works on the water feed. Each is offered only where the survey shows what it would change; whether it suffices is found by
 * judging the edited survey. The edits look at the survey that they are given, so that works can follow one another.
 */
final class WaterWorks {
    /** Judgement: the water undertaker has to agree and connect. */
    private static final int SERVICE_PIPE_DAYS = 30;

    private static final int PUMP_DAYS = 10;
    private static final int VALVE_DAYS = 2;

    private WaterWorks() {}

    /** Works that lessen the losses between the gauge and the unit, or strengthen the supply ahead of it. */
    static List<Remedy> morePressure(House house) {
        List<Remedy> works = new ArrayList<>();
        WaterFeed water = house.water();
        if (water == null || water.getTest() == null) {
            return works;
        }
        fullBoreValve(water).ifPresent(works::add);
        strainer(water).ifPresent(works::add);
        branch(water).ifPresent(works::add);
        servicePipe(water).ifPresent(works::add);
        works.add(pump());
        return works;
    }

    /** The same, and the unit's own pipe, for what an open tap takes away. */
    static List<Remedy> lessDisturbance(House house) {
        List<Remedy> works = new ArrayList<>(morePressure(house));
        WaterFeed water = house.water();
        if (water != null) {
            ownBranch(water).ifPresent(works::add);
        }
        return works;
    }

    /** Works in which the water runs slower. */
    static List<Remedy> widerPipes(House house) {
        List<Remedy> works = new ArrayList<>();
        WaterFeed water = house.water();
        if (water != null && water.getTest() != null) {
            branch(water).ifPresent(works::add);
            ownBranch(water).ifPresent(works::add);
        }
        return works;
    }

    private static Optional<Remedy> fullBoreValve(WaterFeed water) {
        int count = WaterEdit.count(water, WaterEdit.REDUCED_VALVE);
        return count == 0
                ? Optional.empty()
                : Optional.of(work(
                        "full-bore-valve",
                        "fullBoreValve",
                        Map.of("count", count),
                        0,
                        survey -> WaterEdit.replaceFittings(survey, WaterEdit.REDUCED_VALVE, WaterEdit.FULL_BORE_VALVE),
                        Remedy.Item.of("full-bore-valve", count)));
    }

    private static Optional<Remedy> strainer(WaterFeed water) {
        int count = WaterEdit.count(water, WaterEdit.FOULED_STRAINER);
        return count == 0
                ? Optional.empty()
                : Optional.of(work(
                        "strainer-clean",
                        "strainerClean",
                        Map.of("count", count),
                        0,
                        survey -> WaterEdit.replaceFittings(survey, WaterEdit.FOULED_STRAINER, WaterEdit.STRAINER),
                        Remedy.Item.of("strainer-clean", count)));
    }

    private static Optional<Remedy> branch(WaterFeed water) {
        List<PipeSegment> narrow = WaterEdit.narrowBranch(water);
        double lengthM = WaterEdit.lengthM(narrow);
        return lengthM <= 0
                ? Optional.empty()
                : Optional.of(work(
                        "branch-22",
                        "branch",
                        Map.of("length", lengthM),
                        0,
                        WaterEdit::widenBranch,
                        metres("pipe-22", lengthM),
                        Remedy.Item.of("pipe-fittings", 1),
                        Remedy.Item.of("task-pipework", 1),
                        Remedy.Item.of("making-good", 1)));
    }

    private static Optional<Remedy> ownBranch(WaterFeed water) {
        double lengthM = WaterEdit.lengthM(WaterEdit.shared(water));
        return lengthM <= 0
                ? Optional.empty()
                : Optional.of(work(
                        "own-branch",
                        "ownBranch",
                        Map.of("length", lengthM),
                        0,
                        WaterEdit::giveOwnBranch,
                        Remedy.Item.of("own-branch", 1),
                        metres("pipe-22", lengthM),
                        Remedy.Item.of("pipe-fittings", 1),
                        Remedy.Item.of("making-good", 1)));
    }

    /** A new service pipe, where the survey has a narrow or an unfit one ahead of the gauge, or one that is shared. */
    static Optional<Remedy> servicePipe(WaterFeed water) {
        return WaterEdit.renewableService(water)
                ? Optional.of(new Remedy(
                        "service-pipe",
                        "servicePipe",
                        Map.of(),
                        List.of(Remedy.Item.of("service-pipe", 1)),
                        true,
                        SERVICE_PIPE_DAYS,
                        WaterEdit::renewService))
                : Optional.empty();
    }

    /** A break tank with a pump. */
    static Remedy pump() {
        return work(
                "break-tank-pump",
                "breakTankPump",
                Map.of(),
                PUMP_DAYS,
                WaterEdit::addPump,
                Remedy.Item.of("break-tank-pump", 1));
    }

    /**
     * A pressure-reducing valve.
     *
     * @param setPa pressure to which it is set, Pa
     */
    static Remedy reducingValve(double setPa) {
        return work(
                "reducing-valve",
                "reducingValve",
                Map.of("pressure", setPa / FeedWorking.BAR),
                VALVE_DAYS,
                survey -> WaterEdit.reduce(survey, setPa),
                Remedy.Item.of("pressure-reducing-valve", 1));
    }

    /** A double check valve ahead of the unit. */
    static Remedy checkValve() {
        return work(
                "check-valve", "checkValve", Map.of(), 0, WaterEdit::addCheckValve, Remedy.Item.of("check-valve", 1));
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

    private static Remedy.Item metres(String code, double lengthM) {
        return new Remedy.Item(code, BigDecimal.valueOf(lengthM).setScale(1, RoundingMode.UP));
    }
}
