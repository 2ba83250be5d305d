// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;
import java.util.stream.Stream;

/**
 * A kind of work that a calculator may offer. Declared, so that a firm learns which codes its price list lacks before a quote
 * needs them, and so that works are proposed in a sensible order.
 *
 * @param key key of the kind, {@link Remedy#kind()}; the text is {@code remedy.KEY}
 * @param stage when it is proposed beside other work; kinds of one stage follow one another as their calculator declares them
 * @param codes price-book codes of everything that work of this kind may need; the codes that one work needs are among them
 */
public record RemedyKind(String key, Stage stage, List<String> codes) {
    /**
     * The order in which works are proposed: as a person would try them, the cheapest test first, and what others have to do last.
     * Common practice, without a source. Which works are needed is found by their cost and not by this order.
     */
    public enum Stage {
        /** Another test or measurement. */
        TEST,
        /** Cleaning, and small fittings in the pipe. */
        FITTING,
        /** Parts of the shower's circuit moved or changed, but for the cable. */
        CIRCUIT_PART,
        /** Other loads kept off while the shower runs. */
        LOAD,
        /** The origin of the installation: tails, electrode, a further way. */
        ORIGIN,
        /** New pipe. */
        PIPE,
        /** New cable. */
        CABLE,
        /** A new consumer unit. */
        CONSUMER_UNIT,
        /** What a network operator or a water company has to do. */
        OUTSIDE_PARTY,
        /** A pump with its tank. */
        PUMP
    }

    public RemedyKind {
        codes = List.copyOf(codes);
    }

    /** A kind of work with the codes that it may need. */
    public static RemedyKind of(String key, Stage stage, String... codes) {
        return new RemedyKind(key, stage, List.of(codes));
    }

    /** The same with further codes, for those that go by size. */
    public RemedyKind and(List<String> more) {
        return new RemedyKind(
                key, stage, Stream.concat(codes.stream(), more.stream()).toList());
    }

    /** Whether a work is of this kind and needs nothing but what the kind declares. */
    public boolean declares(Remedy work) {
        return key.equals(work.kind()) && work.items().stream().allMatch(item -> codes.contains(item.code()));
    }
}
