// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;

/**
 * The steps of the workings in a tree for JSON, each written once. The checks of all heaters share most of their working, and in full it would stand
 * thousands of times in one file.
 *
 * <p>Beside the assessment stand {@code statements}, the steps without their values, and {@code reckoned}, pairs of a statement's
 * number and a value. The {@code steps} of a finding are runs of these pairs: the number of the first and how many.
 */
final class SharedSteps {
    private static final String STEPS = "steps";
    private static final String VALUE = "value";

    /** So many steps a file has at most, all findings together: forty times those of a house with five options. */
    private static final int MOST = 1_000_000;

    private final Map<Map<?, ?>, Integer> statements = new LinkedHashMap<>();
    private final Map<List<@Nullable Object>, Integer> reckoned = new LinkedHashMap<>();

    private SharedSteps() {}

    /** Puts an assessment, and the steps of its findings, into a tree. */
    static void write(Map<String, @Nullable Object> assessment, Map<String, @Nullable Object> tree) {
        SharedSteps shared = new SharedSteps();
        tree.put("assessment", copy(assessment, shared::runs));
        tree.put("statements", List.copyOf(shared.statements.keySet()));
        tree.put("reckoned", List.copyOf(shared.reckoned.keySet()));
    }

    /**
     * The assessment of a tree, with its steps where they belong.
     *
     * @throws IllegalArgumentException if a run or a pair points at nothing, or there are too many steps
     */
    static @Nullable Object read(Map<?, ?> tree) {
        List<?> statements = list(tree.get("statements"), "statements");
        List<Map<String, @Nullable Object>> steps = new ArrayList<>();
        for (Object pair : list(tree.get("reckoned"), "reckoned")) {
            steps.add(step(statements, list(pair, "reckoned")));
        }
        int[] left = {MOST};
        return copy(tree.get("assessment"), runs -> {
            List<Object> all = inFull(steps, runs, left[0]);
            left[0] -= all.size();
            return all;
        });
    }

    private List<Object> runs(List<?> steps) {
        List<Object> runs = new ArrayList<>();
        int first = 0;
        int count = 0;
        for (Object step : steps) {
            int number = number((Map<?, ?>) step);
            if (count > 0 && number == first + count) {
                count++;
            } else {
                if (count > 0) {
                    runs.add(List.of(first, count));
                }
                first = number;
                count = 1;
            }
        }
        if (count > 0) {
            runs.add(List.of(first, count));
        }
        return runs;
    }

    private int number(Map<?, ?> step) {
        Map<Object, @Nullable Object> statement = new LinkedHashMap<>(step);
        Object value = statement.remove(VALUE);
        List<@Nullable Object> pair = new ArrayList<>();
        pair.add(statements.computeIfAbsent(statement, key -> statements.size()));
        if (value != null) {
            pair.add(value);
        }
        return reckoned.computeIfAbsent(pair, key -> reckoned.size());
    }

    private static Map<String, @Nullable Object> step(List<?> statements, List<?> pair) {
        Map<String, @Nullable Object> step = new LinkedHashMap<>();
        if (!(at(statements, pair.isEmpty() ? null : pair.get(0)) instanceof Map<?, ?> statement)) {
            throw new IllegalArgumentException("a statement is no JSON object");
        }
        statement.forEach((key, value) -> step.put((String) key, value));
        if (pair.size() > 1) {
            step.put(VALUE, pair.get(1));
        }
        return step;
    }

    private static List<Object> inFull(List<Map<String, @Nullable Object>> steps, List<?> runs, int most) {
        List<Object> all = new ArrayList<>();
        for (Object each : runs) {
            List<?> run = list(each, STEPS);
            if (run.size() != 2 || !(run.get(0) instanceof Double first) || !(run.get(1) instanceof Double count)) {
                throw new IllegalArgumentException("a run of steps is not two numbers");
            }
            if (all.size() + count > most) {
                throw new IllegalArgumentException("more than " + MOST + " steps");
            }
            for (int i = 0; i < count; i++) {
                all.add(at(steps, first + i));
            }
        }
        return all;
    }

    private static Object at(List<?> list, @Nullable Object index) {
        if (index instanceof Double number && number >= 0 && number < list.size()) {
            return list.get(number.intValue());
        }
        throw new IllegalArgumentException("there is no step " + index);
    }

    private static List<?> list(@Nullable Object value, String key) {
        if (value instanceof List<?> list) {
            return list;
        }
        throw new IllegalArgumentException(key + " is no JSON array");
    }

    /** A copy of a tree in which the lists of steps are changed. */
    private static @Nullable Object copy(@Nullable Object tree, Function<List<?>, List<Object>> steps) {
        if (tree instanceof Map<?, ?> map) {
            Map<String, @Nullable Object> copy = new LinkedHashMap<>();
            map.forEach((key, value) -> copy.put(
                    (String) key,
                    STEPS.equals(key) && value instanceof List<?> list ? steps.apply(list) : copy(value, steps)));
            return copy;
        }
        if (tree instanceof List<?> list) {
            List<@Nullable Object> copy = new ArrayList<>();
            list.forEach(element -> copy.add(copy(element, steps)));
            return copy;
        }
        return tree;
    }
}
