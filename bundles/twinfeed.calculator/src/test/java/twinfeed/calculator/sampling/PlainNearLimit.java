// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * What is known of the draws near a limit, worked out plainly and slowly from all truths at once: the means of {@link DrawsNearLimit}, written a second
 * time with the usual formulas of linear regression.
 */
final class PlainNearLimit {
    private static final int AROUND = 6;

    /** A draw whose truth is known. */
    private record Known(int rank, double margin, double addition) {
        boolean passes() {
            return margin + addition >= 0;
        }
    }

    private final List<Integer> draws;
    private final double[] margins;
    private final Map<Integer, Known> known = new TreeMap<>();

    PlainNearLimit(int[] near, double[] predicted) {
        draws = IntStream.of(near)
                .boxed()
                .sorted(Comparator.comparingDouble(draw -> predicted[draw]))
                .toList();
        margins = draws.stream().mapToDouble(draw -> predicted[draw]).toArray();
    }

    void learn(int draw, double margin) {
        int rank = draws.indexOf(draw);
        if (rank >= 0) {
            known.putIfAbsent(rank, new Known(rank, margins[rank], margin - margins[rank]));
        }
    }

    private boolean enough() {
        return known.size() >= Math.min(AROUND, margins.length);
    }

    double passes() {
        if (!enough()) {
            return IntStream.range(0, margins.length)
                    .filter(rank -> margins[rank] >= 0)
                    .count();
        }
        return IntStream.range(0, margins.length).mapToDouble(this::chance).sum();
    }

    /** The chance that a draw passes. */
    double chance(int rank) {
        Known truth = known.get(rank);
        if (truth != null) {
            return enough() && truth.passes() ? 1 : 0;
        }
        return enough() ? share(margins[rank], around(margins[rank])) : 0;
    }

    double deviation() {
        if (!enough()) {
            return margins.length;
        }
        if (known.size() == margins.length) {
            return 0;
        }
        double variance = 0;
        for (Known truth : known.values()) {
            double influence = IntStream.range(0, margins.length)
                    .filter(rank -> !known.containsKey(rank))
                    .mapToDouble(rank -> influence(truth, rank))
                    .sum();
            variance += influence * influence;
        }
        return Math.max(Math.sqrt(variance * AROUND / (AROUND - 1)), contradiction());
    }

    /** By how much a truth moves the chance of a draw away from what all truths around say. */
    private double influence(Known truth, int rank) {
        List<Known> around = around(margins[rank]);
        if (!around.contains(truth)) {
            return 0;
        }
        double alone = passes(margins[rank], truth, trend(around)) ? 1 : 0;
        return (alone - chance(rank)) / AROUND;
    }

    /** The truths next to a margin; of two as near the one below. */
    private List<Known> around(double margin) {
        List<Known> all = new ArrayList<>(known.values());
        int from = 0;
        while (from + AROUND < all.size()
                && all.get(from + AROUND).margin() - margin
                        < margin - all.get(from).margin()) {
            from++;
        }
        return all.subList(from, from + AROUND);
    }

    private static double share(double margin, List<Known> around) {
        double trend = trend(around);
        return around.stream().filter(truth -> passes(margin, truth, trend)).count() / (double) around.size();
    }

    private static boolean passes(double margin, Known truth, double trend) {
        return margin + truth.addition() + trend * (margin - truth.margin()) >= 0;
    }

    /** The slope of the regression line of the additions over the margins, where more than 0.7 of their variance lies along it. */
    private static double trend(List<Known> around) {
        double n = around.size();
        double x = around.stream().mapToDouble(Known::margin).sum();
        double y = around.stream().mapToDouble(Known::addition).sum();
        double xx = around.stream()
                .mapToDouble(each -> each.margin() * each.margin())
                .sum();
        double yy = around.stream()
                .mapToDouble(each -> each.addition() * each.addition())
                .sum();
        double xy = around.stream()
                .mapToDouble(each -> each.margin() * each.addition())
                .sum();
        double covariance = xy - x * y / n;
        double varianceX = xx - x * x / n;
        double varianceY = yy - y * y / n;
        boolean flat = varianceX < 1e-12 || varianceY < 1e-12;
        return !flat && covariance * covariance / (varianceX * varianceY) > 0.7 ? covariance / varianceX : 0;
    }

    /** Each truth against the six around it, weighed by the draws between its neighbours. */
    private double contradiction() {
        List<Known> all = new ArrayList<>(known.values());
        if (all.size() <= AROUND) {
            return 0;
        }
        double sum = 0;
        double variance = 0;
        for (int i = 0; i < all.size(); i++) {
            int from = Math.max(0, Math.min(i - AROUND / 2, all.size() - 1 - AROUND));
            List<Known> others = new ArrayList<>(all.subList(from, from + AROUND + 1));
            others.remove(all.get(i));
            double said = share(all.get(i).margin(), others);
            int below = i == 0 ? 0 : all.get(i - 1).rank();
            int above = i == all.size() - 1 ? margins.length : all.get(i + 1).rank();
            double weight = 0.5 * (above - below);
            sum += weight * ((all.get(i).passes() ? 1 : 0) - said);
            variance += weight * weight * said * (1 - said);
        }
        return sum * sum > 4 * variance ? Math.abs(sum) : 0;
    }

    /** Which draws are asked by the plan of this number, from 0: those at which the doubts, added up, pass one of eight even marks. */
    List<Integer> plan(int number) {
        double[] doubts = IntStream.range(0, margins.length)
                .mapToDouble(rank -> known.containsKey(rank) ? 0 : 0.02 + Math.sqrt(chance(rank) * (1 - chance(rank))))
                .toArray();
        double all =
                IntStream.range(0, margins.length).mapToDouble(i -> doubts[i]).sum();
        double golden = (Math.sqrt(5) - 1) / 2;
        double offset = 0.5 + number * golden - Math.floor(0.5 + number * golden);
        List<Integer> asked = new ArrayList<>();
        for (int mark = 0; mark < 8; mark++) {
            double below = 0;
            int rank = 0;
            while (below + doubts[rank] <= all * (mark + offset) / 8) {
                below += doubts[rank];
                rank++;
            }
            if (!asked.contains(draws.get(rank))) {
                asked.add(draws.get(rank));
            }
        }
        return asked;
    }
}
