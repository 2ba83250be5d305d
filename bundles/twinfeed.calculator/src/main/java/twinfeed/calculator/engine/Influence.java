// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;

/**
 * Whose works can change whose answers: a thicker cable gives the heater more power, more power wants more water, and more water is
 * more pressure behind the throttle. Follows from what calculators give to one another.
 */
public final class Influence {
    /** Where nothing is known of the calculators, each may change the answers of every other. */
    public static final Influence UNKNOWN = new Influence(null);

    private final @Nullable Map<String, Set<String>> changedBy;

    private Influence(@Nullable Map<String, Set<String>> changedBy) {
        this.changedBy = changedBy;
    }

    /** The influence among some calculators, over others too. */
    static Influence among(List<Calculator> calculators) {
        Map<String, Set<String>> changedBy = new HashMap<>();
        for (Calculator taker : calculators) {
            Set<String> givers = new HashSet<>();
            Deque<Calculator> waiting = new ArrayDeque<>(List.of(taker));
            while (!waiting.isEmpty()) {
                Calculator next = waiting.remove();
                for (Calculator other : calculators) {
                    if (gives(other, next) && givers.add(other.descriptor().id())) {
                        waiting.add(other);
                    }
                }
            }
            changedBy.put(taker.descriptor().id(), givers);
        }
        return new Influence(changedBy);
    }

    private static boolean gives(Calculator giver, Calculator taker) {
        return giver.descriptor().provides().stream()
                .anyMatch(taker.descriptor().consumes()::contains);
    }

    /** Whether a work that one calculator offers can change the answers of another through what it gives. */
    public boolean reaches(String giver, String taker) {
        return changedBy == null || changedBy.getOrDefault(taker, Set.of()).contains(giver);
    }
}
