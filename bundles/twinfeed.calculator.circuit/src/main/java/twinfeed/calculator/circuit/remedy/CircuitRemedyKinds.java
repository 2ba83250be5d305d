// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.circuit.remedy;

import java.util.List;
import twinfeed.calculator.RemedyKind;
import twinfeed.calculator.RemedyKind.Stage;

/** The kinds of work on the circuit, in the order in which they are proposed, with the price-book codes that they need. */
public final class CircuitRemedyKinds {
    /** Ratings that the circuit of a shower has, A; the ratings of the rule sets are among them as far as showers need them. */
    private static final List<String> RATINGS = List.of("32", "40", "45", "50", "63");

    /** Sizes of cable that carry a shower, mm². */
    private static final List<String> SIZES = List.of("6", "10", "16");

    public static final List<RemedyKind> ALL = List.of(
            RemedyKind.of("test-apart", Stage.TEST, "task-test-apart"),
            RemedyKind.of("trace-joint", Stage.TEST, "task-trace-joint"),
            RemedyKind.of("lift-out-of-insulation", Stage.CIRCUIT_PART, "lift-out-of-insulation"),
            RemedyKind.of("clip-cable", Stage.CIRCUIT_PART, "clip-cable"),
            RemedyKind.of("isolator", Stage.CIRCUIT_PART, "isolator-45", "isolator-50", "task-change-isolator"),
            RemedyKind.of("move-isolator", Stage.CIRCUIT_PART, "task-move-isolator"),
            RemedyKind.of("bonding", Stage.CIRCUIT_PART, "bonding-10"),
            RemedyKind.of("earthing", Stage.CIRCUIT_PART, "earthing-16"),
            RemedyKind.of(
                            "device",
                            Stage.CIRCUIT_PART,
                            "task-change-device",
                            "tails-enclosure",
                            "rccb-delayed-100",
                            "consumer-unit",
                            "notification")
                    .and(codes("breaker-", RATINGS))
                    .and(codes("rcbo-", RATINGS)),
            RemedyKind.of("extra-way", Stage.ORIGIN, "extra-way"),
            RemedyKind.of("tails", Stage.ORIGIN, "tails-25"),
            RemedyKind.of("electrode", Stage.ORIGIN, "electrode"),
            RemedyKind.of("cable", Stage.CABLE, "task-run-cable", "making-good").and(codes("cable-", SIZES)),
            RemedyKind.of("cable-elsewhere", Stage.CABLE, "task-run-cable", "making-good")
                    .and(codes("cable-", SIZES)),
            RemedyKind.of("operator-earth", Stage.OUTSIDE_PARTY, "operator-earth"));

    private CircuitRemedyKinds() {}

    private static List<String> codes(String prefix, List<String> numbers) {
        return numbers.stream().map(number -> prefix + number).toList();
    }
}
