// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.util.Comparator;
import java.util.List;
import twinfeed.calculator.Remedy;

/**
 * The order in which works are proposed: as a person would try them, the cheapest test first. What tests alone comes before cleaning,
 * small fittings before changes at the circuit's ends, those before new pipe and cable, and what others have to do, or a pump, comes last.
 * Common practice, without a source. Which works are needed is found by their cost and not by this order.
 */
public final class WorkOrder {
    /** Kinds of work, first to last. */
    private static final List<String> KINDS = List.of(
            "test-apart",
            "trace-joint",
            "strainerClean",
            "hoseRetainer",
            "checkValve",
            "fullBoreValve",
            "scaleInhibitor",
            "reducingValve",
            "lift-out-of-insulation",
            "clip-cable",
            "isolator",
            "move-isolator",
            "bonding",
            "earthing",
            "device",
            "storage-time-switch",
            "vehicle-load-management",
            "priority-unit",
            "extra-way",
            "tails",
            "electrode",
            "branch",
            "ownBranch",
            "repipeMain",
            "cable",
            "consumer-unit",
            "operator-fuse",
            "servicePipe",
            "breakTankPumpAfterValve",
            "breakTankPumpAfterMain",
            "breakTankPump");

    private static final Comparator<Remedy> ORDER =
            Comparator.<Remedy>comparingInt(work -> place(work.kind())).thenComparing(Remedy::id);

    private WorkOrder() {}

    /** Whether the order knows a kind of work; what it does not know, a third party's work for example, comes last. */
    public static boolean knows(String kind) {
        return KINDS.contains(kind);
    }

    private static int place(String kind) {
        int place = KINDS.indexOf(kind);
        return place < 0 ? KINDS.size() : place;
    }

    /** The works in the order in which they are proposed. */
    public static List<Remedy> of(List<Remedy> works) {
        return works.stream().sorted(ORDER).toList();
    }
}
