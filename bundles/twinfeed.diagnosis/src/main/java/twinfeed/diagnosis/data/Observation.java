// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.data;

import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * A plain question with its likelihoods; "yes" is the abnormal answer.
 *
 * @param key its key, as {@code Symptom.key} names it
 * @param place where it is made
 * @param after observations of which one was answered with yes before this one is asked; empty: it is always asked. Its chances hold
 *     for that case alone
 * @param powered whether the unit has to run for it: never while it is isolated, nor while it may leak to earth
 * @param minutes how long it takes, 0 or more
 * @param otherwise chance of "yes" for a part without a likelihood of its own, between 0 and 1
 * @param reason why that chance
 * @param likelihoods chance of "yes" by part, between 0 and 1
 */
public record Observation(
        String key,
        ObservationStage place,
        Set<String> after,
        boolean powered,
        double minutes,
        double otherwise,
        String reason,
        Map<String, Double> likelihoods) {
    public Observation {
        after = Set.copyOf(after);
        likelihoods = Map.copyOf(likelihoods);
    }

    /** The same question with other chances of "yes" by part. */
    public Observation withLikelihoods(Map<String, Double> others) {
        return new Observation(key, place, after, powered, minutes, otherwise, reason, others);
    }

    /**
     * Whether it is a question at all.
     *
     * @param yes whether an observation was answered with yes
     */
    public boolean arises(Predicate<String> yes) {
        return after.isEmpty() || after.stream().anyMatch(yes);
    }

    /** Chance of "yes" if a part has failed. */
    public double chance(String part) {
        return likelihoods.getOrDefault(part, otherwise);
    }

    /** Chance of an answer if a part has failed. */
    public double chance(String part, boolean yes) {
        return yes ? chance(part) : 1 - chance(part);
    }
}
