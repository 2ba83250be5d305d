// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.Observation;

/**
 * What the answers say, by Bayes' rule: the chance of each single fault and of "none of these", answers taken as independent
 * given the fault; beside it the chance that two things have failed at once. Two faults together make an answer as likely as
 * the likelier of them makes it. Immutable.
 */
public final class Posterior {
    private final FaultData data;
    private final List<ObservationAnswer> answers;
    private final Map<String, Double> chances;
    private final double singles;

    /** Two parts that may have failed together. */
    public record Pair(String first, String second) {}

    private Posterior(FaultData data, List<ObservationAnswer> answers) {
        this.data = data;
        this.answers = List.copyOf(answers);
        Map<String, Double> weights = new LinkedHashMap<>();
        data.parts().keySet().forEach(part -> weights.put(part, data.prior(part) * likelihood(part, part)));
        double sum = weights.values().stream().mapToDouble(Double::doubleValue).sum();
        weights.replaceAll((part, weight) -> weight / sum);
        this.singles = sum;
        this.chances = weights;
    }

    /** After some answers; answers to observations that the data do not know, or that are no question here, say nothing. */
    public static Posterior of(FaultData data, List<ObservationAnswer> answers) {
        return new Posterior(
                data,
                answers.stream()
                        .filter(each -> data.observation(each.key())
                                .filter(known -> known.arises(key -> yes(answers, key)))
                                .isPresent())
                        .toList());
    }

    private static boolean yes(List<ObservationAnswer> answers, String key) {
        return answers.stream().anyMatch(each -> each.yes() && each.key().equals(key));
    }

    /** With one answer more. */
    public Posterior with(ObservationAnswer answer) {
        List<ObservationAnswer> all = new ArrayList<>(answers);
        all.add(answer);
        return of(data, all);
    }

    private double likelihood(String first, String second) {
        double product = 1;
        for (ObservationAnswer answer : answers) {
            double yes = chance(answer.key(), first, second);
            product *= answer.yes() ? yes : 1 - yes;
        }
        return product;
    }

    private double chance(String key, String first, String second) {
        Observation observation = data.observations().get(key);
        return observation == null ? 0.5 : Math.max(observation.chance(first), observation.chance(second));
    }

    /** Weights of pairs of different faults; their priors are products of the single ones and add up to 1. */
    private Map<Pair, Double> pairs() {
        List<String> keys = new ArrayList<>(data.parts().keySet());
        keys.remove(FaultData.NONE);
        Map<Pair, Double> weights = new LinkedHashMap<>();
        double priors = 0;
        for (int i = 0; i < keys.size(); i++) {
            for (int j = i + 1; j < keys.size(); j++) {
                double prior = data.prior(keys.get(i)) * data.prior(keys.get(j));
                priors += prior;
                weights.put(new Pair(keys.get(i), keys.get(j)), prior * likelihood(keys.get(i), keys.get(j)));
            }
        }
        double sum = priors;
        weights.replaceAll((pair, weight) -> weight / sum);
        return weights;
    }

    private Pair likeliest(Map<Pair, Double> pairs) {
        Pair best = new Pair(FaultData.NONE, FaultData.NONE);
        double most = -1;
        for (Map.Entry<Pair, Double> each : pairs.entrySet()) {
            if (each.getValue() > most) {
                most = each.getValue();
                best = each.getKey();
            }
        }
        return chance(best.first()) >= chance(best.second()) ? best : new Pair(best.second(), best.first());
    }

    /** The answers, in order. */
    public List<ObservationAnswer> answers() {
        return answers;
    }

    /** Whether an observation was answered. */
    public boolean answered(String key) {
        return answers.stream().anyMatch(answer -> answer.key().equals(key));
    }

    /** Whether an observation was answered with yes. */
    public boolean yes(String key) {
        return yes(answers, key);
    }

    /** Chance of a part, 0..1, if one thing has failed. */
    public double chance(String part) {
        return chances.getOrDefault(part, 0.0);
    }

    /** All parts, likeliest first; ties in the order of the data. */
    public List<RankedPart> ranked() {
        return chances.entrySet().stream()
                .map(each -> new RankedPart(each.getKey(), data.prior(each.getKey()), each.getValue()))
                .sorted(Comparator.comparingDouble(RankedPart::chance).reversed())
                .toList();
    }

    /** The likeliest part. */
    public RankedPart first() {
        return ranked().get(0);
    }

    /** Chance that two things have failed at once, 0..1. */
    public double several() {
        double doubles =
                pairs().values().stream().mapToDouble(Double::doubleValue).sum() * data.limit("doubles");
        return doubles / (doubles + singles * (1 - data.limit("doubles")));
    }

    /** The likeliest two that have failed at once. */
    public Pair pair() {
        return likeliest(pairs());
    }

    /** Whether more than one cause is likely. */
    public boolean severalLikely() {
        return several() >= data.limit("several");
    }

    /** Whether no further step is worth its while: one part stands out far enough. */
    public boolean settled() {
        return first().chance() >= data.limit("settled");
    }

    /** Information, bit, that an observation is expected to give about the single faults; 0 or more. */
    public double expectedInformation(Observation observation) {
        double yes = 0;
        double within = 0;
        for (Map.Entry<String, Double> each : chances.entrySet()) {
            double chance = observation.chance(each.getKey());
            yes += each.getValue() * chance;
            within += each.getValue() * (entropy(chance) + entropy(1 - chance));
        }
        // Mutual information by the answer: its entropy less its mean entropy given the fault. The same as the expected
        // fall
        // of the entropy of the faults, without two posteriors.
        return Math.max(0, entropy(yes) + entropy(1 - yes) - within);
    }

    private static double entropy(double chance) {
        return chance <= 0 ? 0 : -chance * Math.log(chance) / Math.log(2);
    }
}
