// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Collects the findings of one calculator about one candidate. */
public final class Findings {
    private final String calculator;
    private final Readings readings;
    private final Candidate candidate;
    private final @Nullable Set<String> asked;
    private final List<Finding> all = new ArrayList<>();

    /**
     * Made by the runner for each calculator and candidate.
     *
     * @param calculator id of the calculator
     * @param readings the readings of the survey
     * @param candidate the heater being judged
     */
    public Findings(String calculator, Readings readings, Candidate candidate) {
        this(calculator, readings, candidate, null);
    }

    private Findings(String calculator, Readings readings, Candidate candidate, @Nullable Set<String> asked) {
        this.calculator = calculator;
        this.readings = readings;
        this.candidate = candidate;
        this.asked = asked;
    }

    /**
     * Those of which nobody wants more than outcomes and figures of some checks, as where readings are moved a thousand times.
     *
     * @param asked keys of the checks
     */
    public static Findings figuresOnly(String calculator, Readings readings, Candidate candidate, Set<String> asked) {
        return new Findings(calculator, readings, candidate, asked);
    }

    /**
     * Whether anybody asks for one of these checks. A calculator may leave out the others, which saves time where readings are moved a thousand
     * times; what it gives to other calculators is a question of its own, {@link SharedQuantities#asks}.
     */
    public boolean asks(List<Check> checks) {
        Set<String> keys = asked;
        if (keys == null) {
            return true;
        }
        for (Check check : checks) {
            if (keys.contains(check.key())) {
                return true;
            }
        }
        return false;
    }

    /** Starts the finding of a check; it counts once {@link FindingBuilder#add()} is called. */
    public FindingBuilder on(Check check) {
        return new FindingBuilder(calculator, check, asked != null, all::add);
    }

    /**
     * Whether a check lacks a reading that it needs; if so, the finding "cannot tell" with those readings is added here and the
     * calculator goes on with its next check.
     */
    public boolean blocked(Check check) {
        List<String> missing = readings.missing(check.needs(), candidate.heater());
        if (missing.isEmpty()) {
            return false;
        }
        on(check).cannotTell(missing).add();
        return true;
    }

    /** Whether a quantity that another calculator should have given is absent; adds "cannot tell" with what that one lacked. */
    public boolean blocked(Check check, SharedQuantities shared, SharedQuantity key) {
        if (shared.has(key)) {
            return false;
        }
        on(check).cannotTell(shared.missing(key)).add();
        return true;
    }

    /** What was added so far, in order. */
    public List<Finding> list() {
        return List.copyOf(all);
    }
}
