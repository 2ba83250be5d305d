// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.Observation;
import twinfeed.diagnosis.data.ObservationStage;

/**
 * A technician who meets thousands of faults, drawn with a seed from the prior weights, with answers drawn from the likelihoods.
 * The visit begins with one complaint of the customer. What is tested is the choice of steps and the inference, not the
 * likelihoods, which are judgement.
 */
class SimulatedVisitsTest {
    private static final FaultData DATA = FaultData.own();
    private static final int VISITS = 4000;
    private static final long SEED = 20261125;

    private record Visit(String fault, int rank, int steps, double minutes) {}

    private interface Choice {
        Optional<Observation> next(Posterior posterior, Set<String> asked, boolean open);
    }

    /** The next best step. */
    private static Optional<Observation> best(Posterior posterior, Set<String> asked, boolean open) {
        return NextStep.choose(DATA, posterior, asked, open).map(NextStep::observation);
    }

    /** The next line of a fixed checklist: the observations in the file's order, safe ones first. */
    private static Optional<Observation> checklist(Posterior posterior, Set<String> asked, boolean open) {
        return DATA.observations().values().stream()
                .filter(each -> each.place() != ObservationStage.FEED && !asked.contains(each.key()))
                .findFirst();
    }

    private static String draw(Random random) {
        double at = random.nextDouble();
        String last = "";
        double all = 1 - DATA.prior(FaultData.NONE);
        for (String part : DATA.partKeys()) {
            if (!part.equals(FaultData.NONE)) {
                last = part;
                at -= DATA.prior(part) / all;
                if (at < 0) {
                    break;
                }
            }
        }
        return last;
    }

    private static List<Visit> visits(Choice choice) {
        List<Visit> visits = new ArrayList<>();
        // Seeds from a generator: generators of neighbouring seeds begin with nearly the same number.
        Random seeds = new Random(SEED);
        for (int i = 0; i < VISITS; i++) {
            visits.add(visit(new Random(seeds.nextLong()), choice));
        }
        return visits;
    }

    private static Visit visit(Random random, Choice choice) {
        String fault = draw(random);
        java.util.Map<String, Boolean> truth = new java.util.LinkedHashMap<>();
        DATA.observations().forEach((key, each) -> truth.put(key, random.nextDouble() < each.chance(fault)));
        Posterior posterior = Posterior.of(DATA, List.of());
        Set<String> asked = new LinkedHashSet<>();
        Optional<String> complaint = complaint(truth, random);
        if (complaint.isPresent()) {
            asked.add(complaint.get());
            posterior = posterior.with(new ObservationAnswer(complaint.get(), true, ObservationAnswer.Origin.SAID));
        }
        boolean open = false;
        int steps = 0;
        double minutes = 0;
        while (!posterior.settled()) {
            Optional<Observation> next = choice.next(posterior, asked, open);
            if (next.isEmpty()) {
                break;
            }
            Observation step = next.get();
            minutes += step.minutes() + (step.place() == ObservationStage.COVER && !open ? DATA.limit("opening") : 0);
            open |= step.place() == ObservationStage.COVER;
            steps++;
            asked.add(step.key());
            posterior = posterior.with(
                    new ObservationAnswer(step.key(), truth.get(step.key()), ObservationAnswer.Origin.SAID));
        }
        return new Visit(fault, rank(posterior, fault), steps, minutes);
    }

    /** What the customer rings up about: any one of what can be told that is so. */
    private static Optional<String> complaint(java.util.Map<String, Boolean> truth, Random random) {
        List<String> told = new ArrayList<>(DATA.observations().values().stream()
                .filter(each -> each.place() == ObservationStage.TOLD && truth.get(each.key()))
                .map(Observation::key)
                .toList());
        Collections.shuffle(told, random);
        return told.stream().findFirst();
    }

    private static int rank(Posterior posterior, String fault) {
        return posterior.ranked().stream().map(RankedPart::part).toList().indexOf(fault) + 1;
    }

    private static double share(List<Visit> visits, int within) {
        return visits.stream().filter(visit -> visit.rank() <= within).count() / (double) visits.size();
    }

    private static double median(List<Visit> visits) {
        return visits.stream()
                .mapToInt(Visit::steps)
                .sorted()
                .skip(visits.size() / 2)
                .findFirst()
                .orElseThrow();
    }

    private static double steps(List<Visit> visits) {
        return visits.stream().mapToInt(Visit::steps).average().orElseThrow();
    }

    @Test
    void findsTheFaultInFewSteps() {
        List<Visit> guided = visits(SimulatedVisitsTest::best);
        List<Visit> fixed = visits(SimulatedVisitsTest::checklist);
        String said = "first " + share(guided, 1) + ", within two " + share(guided, 2) + ", median " + median(guided)
                + ", mean " + steps(guided) + " steps; checklist mean " + steps(fixed) + ", first " + share(fixed, 1);
        assertTrue(share(guided, 1) >= 0.85, said);
        assertTrue(share(guided, 2) >= 0.95, said);
        assertTrue(median(guided) <= 6, said);
        assertTrue(steps(guided) < steps(fixed), said);
    }

    @Test
    void everyPartCanBeFound() {
        List<Visit> guided = visits(SimulatedVisitsTest::best);
        for (String part : DATA.partKeys()) {
            if (!part.equals(FaultData.NONE)) {
                List<Visit> of = guided.stream()
                        .filter(visit -> visit.fault().equals(part))
                        .toList();
                assertTrue(of.size() > 20, part + " was drawn " + of.size() + " times");
                assertTrue(share(of, 2) >= 0.85, part + " within two: " + share(of, 2));
            }
        }
    }

    @Test
    void theSameSeedGivesTheSameVisits() {
        assertEquals(
                visit(new Random(SEED), SimulatedVisitsTest::best), visit(new Random(SEED), SimulatedVisitsTest::best));
    }
}
