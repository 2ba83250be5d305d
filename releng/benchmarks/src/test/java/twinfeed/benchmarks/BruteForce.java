// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.search.RemedySearch;
import twinfeed.calculator.search.WorkCost;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.survey.Survey;

/**
 * Judges every set of works that can come about in a house: the works that any failing check offers, as the house is or with others done
 * first. Keeps the least costly set with which the heater suits. Knows neither order nor short cut.
 */
final class BruteForce {
    private final RandomHouse house;
    private final RemedySearch.Judge judge;
    private final WorkCost.Source costs;
    private final Set<Set<String>> seen = new HashSet<>();
    private final Deque<List<Remedy>> waiting = new ArrayDeque<>();
    private final Set<Offer> offers = new LinkedHashSet<>();
    private final OptionResult before;
    private final Map<String, Outcome> outcomesBefore;
    private Least least = new Least(Optional.empty(), List.of());

    /** The least costly set so far. */
    private record Least(Optional<WorkCost> cost, List<Remedy> works) {
        Least or(WorkCost other, List<Remedy> more) {
            return cost.isEmpty() || other.compareTo(cost.get()) < 0 ? new Least(Optional.of(other), more) : this;
        }
    }

    /** A work that was offered with some others done; the same by what it is, for its edit is made anew each time. */
    private record Offer(Set<String> under, String whole, Remedy remedy) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Offer that && under.equals(that.under) && whole.equals(that.whole);
        }

        @Override
        public int hashCode() {
            return 31 * under.hashCode() + whole.hashCode();
        }
    }

    BruteForce(RandomHouse house, RemedySearch.Judge judge, WorkCost.Source costs) {
        this.house = house;
        this.judge = judge;
        this.costs = costs;
        this.before = judge.judge(house.survey(), house.survey(), house.candidate());
        this.outcomesBefore = before.findings().stream()
                .collect(Collectors.toMap(finding -> finding.check().key(), Finding::outcome));
    }

    /** The house as it is. */
    OptionResult before() {
        return before;
    }

    /** Judges all sets; false if there are more than that. */
    boolean ran(int mostSets) {
        grow(List.of(), before);
        while (!waiting.isEmpty() && seen.size() <= mostSets) {
            judge(waiting.remove());
        }
        return waiting.isEmpty();
    }

    /** Cost of the least costly set with which the heater suits. */
    Optional<WorkCost> least() {
        return least.cost();
    }

    /** The works of that set. */
    List<String> leastWorks() {
        return least.works().stream().map(Remedy::id).toList();
    }

    private void judge(List<Remedy> works) {
        Survey edited = EcoreUtil.copy(house.survey());
        works.forEach(work -> work.edit().accept(edited));
        OptionResult result = judge.judge(house.survey(), edited, house.candidate());
        if (suits(result)) {
            least = least.or(costs.of(works), works);
        }
        grow(works, result);
    }

    private void grow(List<Remedy> works, OptionResult result) {
        Set<String> done = works.stream().map(BruteForce::whole).collect(Collectors.toSet());
        for (Finding finding : result.findings()) {
            finding.remedies().forEach(remedy -> offers.add(new Offer(done, whole(remedy), remedy)));
        }
        for (Offer offer : offers) {
            if (done.containsAll(offer.under)
                    && works.stream().noneMatch(work -> work.kind().equals(offer.remedy.kind()))) {
                List<Remedy> more = new ArrayList<>(works);
                more.add(offer.remedy);
                more.sort(Comparator.comparing(Remedy::id));
                if (seen.add(more.stream().map(BruteForce::whole).collect(Collectors.toSet()))) {
                    waiting.add(more);
                }
            }
        }
    }

    /** The same work in other amounts is another work here. */
    private static String whole(Remedy remedy) {
        return remedy.id() + new TreeMap<>(remedy.arguments()) + remedy.items();
    }

    /** What the program promises of a set of works: nothing decisive fails, or is open that was not open. */
    boolean suits(OptionResult result) {
        for (Finding finding : result.findings()) {
            boolean deciding = finding.check().deciding();
            Outcome was = outcomesBefore.get(finding.check().key());
            boolean fails = finding.outcome() == Outcome.FAILS && deciding;
            boolean open = finding.outcome() == Outcome.CANNOT_TELL && deciding && was != Outcome.CANNOT_TELL;
            if (fails || open) {
                return false;
            }
        }
        return true;
    }
}
