// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import twinfeed.diagnosis.data.FaultData;
import twinfeed.diagnosis.data.Observation;
import twinfeed.diagnosis.data.ObservationStage;

/**
 * Thousands of visits, drawn with a seed, to a technician whose view of faults stands apart from the program's data ({@link Technician}): the
 * truth of a visit is drawn from his chances, the program ranks by its own. A visit begins with one complaint of the customer.
 */
class SimulatedVisitsTest {
    private static final FaultData DATA = FaultData.own();
    private static final int VISITS = 2000;
    private static final long SEED = 20261125;
    private static final double SHIFT = 0.4;
    private static final Technician TECHNICIAN = new Technician(SHIFT, SEED);
    private static final List<Visit> GUIDED = visits(DATA, SimulatedVisitsTest::best);

    private record Visit(String fault, int rank, int steps, double minutes) {}

    private interface Choice {
        Optional<Observation> next(FaultData data, Posterior posterior, Set<String> asked, boolean open);
    }

    /** The next best step. */
    private static Optional<Observation> best(FaultData data, Posterior posterior, Set<String> asked, boolean open) {
        return NextStep.choose(data, posterior, asked, open).map(NextStep::observation);
    }

    /** The next line of a fixed checklist: the observations in the file's order, safe ones first. */
    private static Optional<Observation> checklist(
            FaultData data, Posterior posterior, Set<String> asked, boolean open) {
        return data.observations().values().stream()
                .filter(each -> each.place() != ObservationStage.FEED
                        && !asked.contains(each.key())
                        && each.arises(posterior::yes))
                .findFirst();
    }

    private static List<Visit> visits(FaultData data, Choice choice) {
        List<Visit> visits = new ArrayList<>();
        // Seeds from a generator: generators of neighbouring seeds begin with nearly the same number.
        Random seeds = new Random(SEED);
        for (int i = 0; i < VISITS; i++) {
            visits.add(visit(new Random(seeds.nextLong()), data, choice));
        }
        return visits;
    }

    private static Visit visit(Random random, FaultData data, Choice choice) {
        String fault = TECHNICIAN.fault(random);
        Map<String, Boolean> truth = new LinkedHashMap<>();
        DATA.observations()
                .keySet()
                .forEach(key -> truth.put(key, random.nextDouble() < TECHNICIAN.chance(fault, key)));
        Posterior posterior = Posterior.of(data, List.of());
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
            Optional<Observation> next = choice.next(data, posterior, asked, open);
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
    private static Optional<String> complaint(Map<String, Boolean> truth, Random random) {
        List<String> told = new ArrayList<>(DATA.observations().values().stream()
                .filter(each ->
                        each.place() == ObservationStage.TOLD && each.after().isEmpty() && truth.get(each.key()))
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

    private static String said(List<Visit> visits) {
        return "first " + share(visits, 1) + ", within two " + share(visits, 2) + ", within three " + share(visits, 3)
                + ", median " + median(visits) + ", mean " + steps(visits) + " steps, "
                + visits.stream().mapToDouble(Visit::minutes).average().orElseThrow() + " min";
    }

    @Test
    void theTechnicianKnowsEveryFaultAndEveryObservation() {
        Set<String> parts = new TreeSet<>(DATA.partKeys());
        parts.remove(FaultData.NONE);
        assertEquals(parts, new TreeSet<>(TECHNICIAN.faults()));
        Set<String> seen = new TreeSet<>(TECHNICIAN.observations());
        seen.removeAll(DATA.observations().keySet());
        assertEquals(Set.of(), seen);
    }

    @Test
    void findsTheFaultInFewSteps() {
        List<Visit> fixed = visits(DATA, SimulatedVisitsTest::checklist);
        String said = said(GUIDED) + "; checklist " + said(fixed);
        assertTrue(share(GUIDED, 1) >= 0.85, said);
        assertTrue(share(GUIDED, 2) >= 0.92, said);
        assertTrue(median(GUIDED) <= 7, said);
        assertTrue(steps(GUIDED) < steps(fixed), said);
    }

    /** The same visits with the likelihoods of each part given to the next one: what is measured hangs on the data. */
    @Test
    void likelihoodsOfTheWrongPartsFindLittle() {
        List<Visit> guided = visits(shifted(), SimulatedVisitsTest::best);
        assertTrue(share(guided, 1) < 0.3, said(guided));
    }

    private static FaultData shifted() {
        List<String> keys = DATA.partKeys();
        Map<String, Observation> observations = new LinkedHashMap<>();
        DATA.observations().forEach((key, each) -> {
            Map<String, Double> moved = new LinkedHashMap<>();
            each.likelihoods()
                    .forEach((part, chance) -> moved.put(keys.get((keys.indexOf(part) + 1) % keys.size()), chance));
            observations.put(key, each.withLikelihoods(moved));
        });
        return new FaultData(DATA.source(), DATA.status(), DATA.parts(), observations, DATA.first(), DATA.limits());
    }

    @Test
    void everyPartCanBeFound() {
        for (String part : TECHNICIAN.faults()) {
            List<Visit> of =
                    GUIDED.stream().filter(visit -> visit.fault().equals(part)).toList();
            assertTrue(of.size() > 20, part + " was drawn " + of.size() + " times");
            assertTrue(share(of, 3) >= 0.75, part + " within three: " + share(of, 3));
        }
    }

    @Test
    void theSameSeedGivesTheSameVisits() {
        assertEquals(
                visit(new Random(SEED), DATA, SimulatedVisitsTest::best),
                visit(new Random(SEED), DATA, SimulatedVisitsTest::best));
    }
}
