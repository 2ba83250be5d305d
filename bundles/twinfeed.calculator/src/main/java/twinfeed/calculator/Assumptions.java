// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Collects every default and guess that took part, once each, in the order of first use. */
public final class Assumptions {
    /**
     * One assumption.
     *
     * @param calculator id of the calculator that made it
     * @param key key of its text, {@code assumption.KEY}
     * @param arguments values that the text names
     * @param tabulated whether it is a usual figure of pipes, fittings, cables or the season, which matters to whoever recomputes and to
     *     nobody else
     */
    public record Assumption(String calculator, String key, Map<String, Object> arguments, boolean tabulated) {
        public Assumption {
            arguments = Map.copyOf(arguments);
        }
    }

    private final Map<Assumption, Assumption> all = new LinkedHashMap<>();
    private final boolean wanted;

    /** A record with nothing in it yet. */
    public Assumptions() {
        this(true);
    }

    private Assumptions(boolean wanted) {
        this.wanted = wanted;
    }

    /** One that stays empty, for judgements of which nobody asks what they assumed. */
    public static Assumptions unrecorded() {
        return new Assumptions(false);
    }

    /** Whether anybody asks for them. */
    boolean wanted() {
        return wanted;
    }

    /** Records a default, once; as {@link Assumption} has it. */
    public void add(String calculator, String key, Map<String, Object> arguments, boolean tabulated) {
        if (wanted) {
            Assumption assumption = new Assumption(calculator, key, arguments, tabulated);
            all.putIfAbsent(assumption, assumption);
        }
    }

    /** All, in order. */
    public List<Assumption> list() {
        return new ArrayList<>(all.values());
    }
}
