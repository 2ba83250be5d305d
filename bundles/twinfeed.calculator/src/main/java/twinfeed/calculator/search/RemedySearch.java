// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.util.EcoreUtil;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.engine.Influence;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.Survey;

/**
 * Finds the least costly set of works with which no deciding check fails. Exact, not greedy: sets are judged in the order of
 * their cost, each by running every calculator on the edited survey, and the first that passes wins.
 *
 * <p>A set grows only by works that can fix one check that fails under it: those that the check itself offers, for a calculator
 * offers every work of its own that can fix its check, and those of calculators that change its answer through what they give. That
 * loses nothing, for a set that passes must fix that check too. At most one work of a kind is in a set.
 *
 * <p>Advice decides neither the verdict nor the price: a set that makes advice fail that neither failed before nor was too close to call
 * stands behind another that costs as much and does not, and before every dearer one. Were advice to forbid sets, one that fails already
 * would admit works that one that passes forbids, and a worse reading would give a better verdict.
 */
public final class RemedySearch {
    /** So many sets are judged before the search gives up, and says so. */
    public static final int MOST_SETS = 4000;

    private final Judge judge;
    private final WorkCost.Source costs;
    private final Influence influence;
    private final int mostSets;

    /** Judges a candidate in a survey with every calculator; with the tolerances of its readings, if they are to count. */
    @FunctionalInterface
    public interface Judge {
        /**
         * The result.
         *
         * @param surveyed the house in which the readings were taken
         * @param changed a copy of it with works done; may be the same
         */
        OptionResult judge(Survey surveyed, Survey changed, Candidate candidate);

        /**
         * The same for a set of works, whose chances may stay rough where it is not the answer.
         *
         * @param promising whether it may be, by outcomes that are sure
         */
        default OptionResult judge(
                Survey surveyed, Survey changed, Candidate candidate, Predicate<OptionResult> promising) {
            return judge(surveyed, changed, candidate);
        }
    }

    /** A search with the usual limit that takes each calculator's works to change the answers of all. */
    public RemedySearch(Judge judge, WorkCost.Source costs) {
        this(judge, costs, Influence.UNKNOWN, MOST_SETS);
    }

    /** A search with the usual limit. */
    public RemedySearch(Judge judge, WorkCost.Source costs, Influence influence) {
        this(judge, costs, influence, MOST_SETS);
    }

    /**
     * A search.
     *
     * @param judge judges the edited surveys
     * @param costs prices sets of works
     * @param influence whose works can change whose answers; knowing it saves sets
     * @param mostSets how many sets are judged at most
     */
    RemedySearch(Judge judge, WorkCost.Source costs, Influence influence, int mostSets) {
        this.judge = judge;
        this.costs = costs;
        this.influence = influence;
        this.mostSets = mostSets;
    }

    /**
     * Searches for one candidate.
     *
     * @param survey the survey as it is; not changed
     * @param candidate the heater
     * @param before the result for the survey as it is
     */
    public WorkPlan plan(Survey survey, Candidate candidate, OptionResult before) {
        Search search = new Search(survey, candidate, before);
        if (before.findings().stream().noneMatch(Finding::stands)) {
            return search.unchanged(before.verdict(), List.of(), false);
        }
        return search.run();
    }

    /** What can be said where it stays open whether works help: a known failure outranks what is unknown. */
    private static Verdict open(OptionResult before) {
        return before.verdict() == Verdict.DOES_NOT_SUIT ? Verdict.NOT_AS_IT_IS : Verdict.CANNOT_TELL;
    }

    /**
     * A work.
     *
     * @param whole what it is, in full: works of one id differ where they are offered for different pieces or amounts
     */
    private record Work(Remedy remedy, String whole) {
        static Work of(Remedy remedy) {
            return new Work(remedy, remedy.id() + new TreeMap<>(remedy.arguments()) + remedy.items());
        }
    }

    private record WorkSet(List<Work> works, WorkCost cost, String whole) {
        static final Comparator<WorkSet> ORDER = Comparator.comparing(WorkSet::cost)
                .thenComparingInt(set -> set.works.size())
                .thenComparingInt(WorkSet::items)
                .thenComparing(WorkSet::whole);

        static final WorkSet NONE = new WorkSet(List.of(), WorkCost.BY_COUNT.of(List.of()), "");

        /** How many parts and tasks it takes: of as many works the plainer ones, where no prices tell them apart. */
        int items() {
            return works.stream().mapToInt(work -> work.remedy().items().size()).sum();
        }

        List<Remedy> remedies() {
            return works.stream().map(Work::remedy).toList();
        }

        Set<String> each() {
            return works.stream().map(Work::whole).collect(Collectors.toSet());
        }
    }

    /** A set with which no deciding check fails, and the house with its works done. */
    private record Passing(WorkSet set, OptionResult after) {}

    /** A work that a calculator offered under some others. */
    private record Offer(String calculator, Work work, Set<String> under) {}

    /** One search. */
    private final class Search {
        private final Survey survey;
        private final Candidate candidate;
        private final OptionResult before;
        private final WorkCost.Source prices;
        private final Set<String> failedBefore = new HashSet<>();
        private final Set<String> unknownBefore = new HashSet<>();
        private final Set<String> doubtWithoutWork = new HashSet<>();
        private final PriorityQueue<WorkSet> waiting = new PriorityQueue<>(WorkSet.ORDER);
        private final Set<String> seen = new HashSet<>();
        private final Map<String, Offer> offers = new LinkedHashMap<>();
        private final Set<String> mendable = new LinkedHashSet<>();

        Search(Survey survey, Candidate candidate, OptionResult before) {
            this.survey = survey;
            this.candidate = candidate;
            this.before = before;
            this.prices = costs.with(candidate);
            for (Finding finding : before.findings()) {
                switch (finding.outcome()) {
                    case FAILS -> failedBefore.add(finding.check().key());
                    case CANNOT_TELL, NOT_CHECKED ->
                        unknownBefore.add(finding.check().key());
                    case TOO_CLOSE -> {
                        // Works that leave its readings alone may turn it to a failure in a house that is no worse.
                        failedBefore.add(finding.check().key());
                        unknownBefore.add(finding.check().key());
                    }
                    default -> {}
                }
                if (finding.outcome() == Outcome.TOO_CLOSE && finding.remedies().isEmpty()) {
                    doubtWithoutWork.add(finding.check().key());
                }
            }
        }

        WorkPlan run() {
            grow(WorkSet.NONE, before);
            Passing found = null;
            for (int judged = 0; !waiting.isEmpty(); judged++) {
                WorkSet set = waiting.remove();
                if (found != null && (judged == mostSets || set.cost.compareTo(found.set.cost) > 0)) {
                    break;
                }
                if (judged == mostSets) {
                    return unchanged(open(before), failing(), true);
                }
                Predicate<OptionResult> better = found == null ? this::mends : this::mendsAndSparesAdvice;
                OptionResult after = judge(set.remedies(), better);
                if (mendsAndSparesAdvice(after)) {
                    return planned(new Passing(set, after));
                }
                if (!mends(after)) {
                    grow(set, after);
                } else if (found == null) {
                    found = new Passing(set, after);
                }
            }
            return found == null ? unchanged(before.verdict(), unmended(), false) : planned(found);
        }

        private WorkPlan planned(Passing found) {
            OptionResult after = found.after;
            Verdict verdict = after.verdict() == Verdict.SUITS ? Verdict.SUITS_WITH_WORK : open(before);
            return new WorkPlan(
                    found.set.remedies(), before, after, verdict, List.of(), found.set.cost, false, offered());
        }

        private WorkPlan unchanged(Verdict verdict, List<String> unmended, boolean exhausted) {
            return new WorkPlan(
                    List.of(), before, before, verdict, unmended, prices.of(List.of()), exhausted, offered());
        }

        private List<Remedy> offered() {
            Map<String, Remedy> each = new LinkedHashMap<>();
            offers.values().forEach(offer -> each.putIfAbsent(offer.work.whole, offer.work.remedy));
            return List.copyOf(each.values());
        }

        private OptionResult judge(List<Remedy> works, Predicate<OptionResult> better) {
            Survey edited = EcoreUtil.copy(survey);
            works.forEach(work -> work.edit().accept(edited));
            OptionResult after = judge.judge(survey, edited, candidate, better);
            after.findings().stream()
                    .filter(finding -> !finding.stands())
                    .forEach(finding -> mendable.add(finding.check().key()));
            return after;
        }

        private boolean mendsAndSparesAdvice(OptionResult after) {
            return mends(after) && after.findings().stream().noneMatch(this::failsAnew);
        }

        /**
         * Nothing decisive fails, and no doubt is new. A check that is too close to call and for which there is no work, a reading to be
         * taken again for example, stays so: works fix the rest, and the verdict stays open.
         */
        private boolean mends(OptionResult after) {
            return after.findings().stream().allMatch(finding -> {
                String key = finding.check().key();
                return switch (finding.outcome()) {
                    case FAILS -> !finding.check().deciding();
                    case TOO_CLOSE -> !finding.check().deciding() || doubtWithoutWork.contains(key);
                    case CANNOT_TELL, NOT_CHECKED -> !opensDoubt(finding);
                    default -> true;
                };
            });
        }

        /**
         * Puts sets with one work more in the queue, for the works that can fix one open check: the one with the fewest. A set that
         * passes has to fix that check too, so none is lost; and where nothing can fix a check, no larger set passes.
         */
        private void grow(WorkSet set, OptionResult result) {
            Set<String> done = set.each();
            Map<Finding, List<Work>> offered = new IdentityHashMap<>();
            for (Finding finding : result.findings()) {
                List<Work> works = finding.remedies().stream().map(Work::of).toList();
                offered.put(finding, works);
                works.forEach(work -> keep(finding.calculator(), work, set.whole, done));
            }
            result.findings().stream()
                    .filter(this::hasToBeMended)
                    .map(finding -> choices(finding, offered.getOrDefault(finding, List.of()), set, done))
                    .min(Comparator.comparingInt(List::size))
                    .ifPresent(choices -> choices.forEach(work -> offer(set, work)));
        }

        private boolean hasToBeMended(Finding finding) {
            String key = finding.check().key();
            boolean stands =
                    finding.stands() && !(finding.outcome() == Outcome.TOO_CLOSE && doubtWithoutWork.contains(key));
            return stands || opensDoubt(finding);
        }

        /** Advice that neither failed before nor was too close to call. */
        private boolean failsAnew(Finding finding) {
            return !finding.check().deciding()
                    && finding.outcome() == Outcome.FAILS
                    && !failedBefore.contains(finding.check().key());
        }

        private boolean opensDoubt(Finding finding) {
            return (finding.outcome() == Outcome.CANNOT_TELL || finding.outcome() == Outcome.NOT_CHECKED)
                    && finding.check().deciding()
                    && !unknownBefore.contains(finding.check().key());
        }

        /** An offer stands once the works are done under which it was made, though its check may pass by then. */
        private void keep(String calculator, Work work, String under, Set<String> done) {
            offers.putIfAbsent(calculator + work.whole + under, new Offer(calculator, work, done));
        }

        /**
         * What can fix a check: its own offers, and what was offered by calculators that can change its answer. A deciding check
         * that fails offers all that its own calculator knows; one that is only advice, or lacks a reading since, need not.
         */
        private List<Work> choices(Finding finding, List<Work> own, WorkSet set, Set<String> done) {
            Map<String, Work> choices = new LinkedHashMap<>();
            own.forEach(work -> choices.putIfAbsent(work.whole, work));
            for (Offer offer : offers.values()) {
                boolean sameCalculator = offer.calculator.equals(finding.calculator());
                boolean counts =
                        sameCalculator ? !finding.stands() : influence.reaches(offer.calculator, finding.calculator());
                if (counts && done.containsAll(offer.under)) {
                    choices.putIfAbsent(offer.work.whole, offer.work);
                }
            }
            return choices.values().stream()
                    .filter(work -> set.works.stream()
                            .noneMatch(other -> other.remedy.kind().equals(work.remedy.kind())))
                    .toList();
        }

        private void offer(WorkSet set, Work work) {
            List<Work> more = new ArrayList<>(set.works);
            more.add(work);
            more.sort(Comparator.comparing(each -> each.remedy.id()));
            String whole = String.join("+", more.stream().map(Work::whole).toList());
            if (seen.add(whole)) {
                WorkCost cost = prices.of(more.stream().map(Work::remedy).toList());
                waiting.add(new WorkSet(List.copyOf(more), cost, whole));
            }
        }

        /**
         * What nothing fixed: the checks for which there is no work, or else those that none of the sets fixed, or else, if each
         * alone could be fixed but no set fixes all, all that failed.
         */
        private List<String> unmended() {
            List<String> stubborn =
                    failing(finding -> !mendable.contains(finding.check().key()));
            List<String> hopeless = failing(finding -> finding.remedies().isEmpty()
                    && !mendable.contains(finding.check().key()));
            if (!hopeless.isEmpty()) {
                return hopeless;
            }
            return stubborn.isEmpty() ? failing() : stubborn;
        }

        private List<String> failing() {
            return failing(finding -> true);
        }

        private List<String> failing(Predicate<Finding> which) {
            return before.findings().stream()
                    .filter(Finding::stands)
                    .filter(which)
                    .map(finding -> finding.check().key())
                    .toList();
        }
    }
}
