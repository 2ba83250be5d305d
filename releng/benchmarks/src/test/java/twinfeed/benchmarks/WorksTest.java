// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.ServiceLoader;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.search.RemedySearch;
import twinfeed.calculator.search.WorkCost;
import twinfeed.calculator.search.WorkPlan;
import twinfeed.model.assessment.Verdict;
import twinfeed.pricing.RemedyPrice;
import twinfeed.pricing.RemedyPrices;
import twinfeed.pricing.RequiredItem;
import twinfeed.usecase.TwinfeedService;

/**
 * The search for the least costly works in invented houses as surveys describe them, judged by the real calculators, against the
 * judgement of every set of works.
 */
class WorksTest {
    /** A sample in every run; all 2000 by the profile "whole-judges". */
    private static final int HOUSES = Integer.getInteger("twinfeed.houses", 150);

    /** Houses in which more sets can come about are left out: those with a dozen works and more. */
    private static final int MOST_SETS = 500;

    private static final Runner RUNNER = new Runner(calculators(), (mean, spread, month, southern) -> mean);

    private static List<Calculator> calculators() {
        List<Calculator> found = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(found::add);
        return found;
    }

    /** Random prices, the same for the same code. */
    private static WorkCost cost(List<Remedy> works) {
        BigDecimal sum = BigDecimal.ZERO;
        int enquiries = 0;
        int days = 0;
        for (Remedy work : works) {
            days = Math.max(days, work.leadDays());
            enquiries += work.enquiry() ? 1 : 0;
            for (Remedy.Item item : work.items()) {
                int price = new Random(item.code().hashCode()).nextInt(500);
                sum = sum.add(item.quantity().multiply(BigDecimal.valueOf(price)));
            }
        }
        return new WorkCost(enquiries, sum, days);
    }

    /** How a comparison ended. */
    private enum End {
        SUITS_ALREADY,
        TOO_MANY_SETS,
        BEYOND_MENDING,
        ONE_WORK,
        SEVERAL_WORKS
    }

    @Test
    void theSearchFindsWhatBruteForceFinds() {
        assertEquals(5, RUNNER.calculators().size());
        Map<End, Long> ends = LongStream.range(0, HOUSES)
                .parallel()
                .mapToObj(seed -> compared(seed, WorksTest::cost))
                .collect(Collectors.groupingBy(end -> end, Collectors.counting()));
        System.out.println("works against brute force, houses: " + new TreeMap<>(ends));
        // Were the houses all easy or hopeless, the comparison would say nothing.
        assertTrue(ends.getOrDefault(End.SEVERAL_WORKS, 0L) > HOUSES / 4, ends::toString);
        assertTrue(ends.getOrDefault(End.BEYOND_MENDING, 0L) > HOUSES / 12, ends::toString);
        assertTrue(ends.getOrDefault(End.TOO_MANY_SETS, 0L) < HOUSES / 4, ends::toString);
    }

    /** By a price book costs do not add up: a cable is bought by its whole length, and a visit is charged once. */
    @Test
    void theSearchFindsWhatBruteForceFindsByAPriceBook() {
        RemedyPrices prices = RemedyPrices.withReplacement(
                TwinfeedService.onClassPath().book(Books.DEMO.resolve("prices.csv")), LocalDate.of(2026, 11, 25));
        WorkCost.Source costs = works -> {
            RemedyPrice price = prices.priceAll(works.stream()
                    .map(work -> work.items().stream()
                            .map(item -> new RequiredItem(item.code(), item.quantity()))
                            .toList())
                    .toList());
            return new WorkCost(price.enquiry() ? 1 : 0, price.net().getAmount(), price.leadDays());
        };
        Map<End, Long> ends = LongStream.range(HOUSES, HOUSES + HOUSES / 3)
                .parallel()
                .mapToObj(seed -> compared(seed, costs))
                .collect(Collectors.groupingBy(end -> end, Collectors.counting()));
        assertTrue(ends.getOrDefault(End.SEVERAL_WORKS, 0L) > HOUSES / 12, ends::toString);
    }

    private static End compared(long seed, WorkCost.Source costs) {
        RandomHouse house = RandomHouse.of(seed);
        BruteForce force = new BruteForce(house, RUNNER::judge, costs);
        if (force.suits(force.before())) {
            return End.SUITS_ALREADY;
        }
        if (!force.ran(MOST_SETS)) {
            return End.TOO_MANY_SETS;
        }
        WorkPlan plan = new RemedySearch(RUNNER::judge, costs, RUNNER.influence())
                .plan(house.survey(), house.candidate(), force.before());
        String what = "seed " + seed + ": "
                + plan.works().stream().map(Remedy::id).toList() + " against " + force.leastWorks();
        assertFalse(plan.exhausted(), what);
        if (force.least().isEmpty()) {
            assertEquals(Verdict.DOES_NOT_SUIT, plan.verdict(), what);
            assertEquals(List.of(), plan.works(), what);
            return End.BEYOND_MENDING;
        }
        assertEquals(force.least().get(), plan.cost(), what);
        assertTrue(force.suits(plan.after()), what);
        return plan.works().size() > 1 ? End.SEVERAL_WORKS : End.ONE_WORK;
    }
}
