// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Readings;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.Table;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.Confidence;
import twinfeed.model.survey.Survey;
import twinfeed.units.Quantity;

/**
 * Finds what is uncertain in a survey: readings with a stated tolerance, readings of instruments with a usual one, and reference
 * methods that were not seen; and beside them what nobody reads ({@link UnreadFigures}).
 */
final class SampledInputs {
    private static final Map<String, Map<String, String>> INSTRUMENTS = instruments();

    private final List<SampledInput> inputs = new ArrayList<>();
    private final Map<String, Integer> gauges = new LinkedHashMap<>();
    private final RuleSet rules;

    private SampledInputs(RuleSet rules) {
        this.rules = rules;
    }

    /** The uncertain inputs of a private copy of a survey; drawing changes that copy. */
    static SampledInputs of(Survey copy, RuleSet rules) {
        SampledInputs found = new SampledInputs(rules);
        found.walk(copy, "survey", "survey");
        return found;
    }

    /**
     * The uncertain inputs of a house before and after works, in private copies of both; drawing changes the copies. A reading that
     * stands in both is one input and is drawn alike in both.
     *
     * @param surveyed the house in which the readings were taken
     * @param changed the house with works done; may be the same
     */
    static SampledInputs of(Survey surveyed, Survey changed, RuleSet rules) {
        SampledInputs found = of(changed, rules);
        if (surveyed != changed) {
            List<SampledInput> after = List.copyOf(found.inputs);
            found.inputs.clear();
            found.walk(surveyed, "survey", "survey");
            List<SampledInput> before = List.copyOf(found.inputs);
            found.inputs.clear();
            found.inputs.addAll(joined(before, after));
        }
        found.inputs.addAll(UnreadFigures.of(changed));
        return found;
    }

    private static List<SampledInput> joined(List<SampledInput> before, List<SampledInput> after) {
        Map<String, SampledInput> byName = named(after);
        named(before).forEach((name, input) -> byName.merge(name, input, JoinedInput::new));
        return List.copyOf(byName.values());
    }

    /** By path; several of one path, for two pipes may have one name, by path and number. */
    private static Map<String, SampledInput> named(List<SampledInput> inputs) {
        Map<String, SampledInput> byName = new LinkedHashMap<>();
        for (SampledInput input : inputs) {
            String name = input.path();
            for (int number = 2; byName.containsKey(name); number++) {
                name = input.path() + "#" + number;
            }
            byName.put(name, input);
        }
        return byName;
    }

    /** An input of the changed house that stands in the surveyed one too. */
    private record JoinedInput(SampledInput after, SampledInput before) implements SampledInput {
        @Override
        public String path() {
            return after.path();
        }

        @Override
        public int gauge() {
            return after.gauge();
        }

        @Override
        public void place(double position) {
            after.place(position);
            before.place(position);
        }

        @Override
        public boolean isReadBy(CalculatorDescriptor calculator) {
            return after.isReadBy(calculator) || before.isReadBy(calculator);
        }

        @Override
        public Spread spread() {
            return after.spread();
        }
    }

    /** The inputs, each with its own dimension in this order. */
    List<SampledInput> list() {
        return inputs;
    }

    /** What a draw of them depends on. */
    DrawnInputs drawn() {
        return new DrawnInputs(
                inputs.stream().map(SampledInput::spread).toList(),
                inputs.stream().map(SampledInput::gauge).toList(),
                gauges.size());
    }

    /** Puts all at positions. */
    void place(double[] positions) {
        for (int i = 0; i < inputs.size(); i++) {
            inputs.get(i).place(positions[i]);
        }
    }

    private void walk(EObject owner, String plain, String named) {
        for (EStructuralFeature feature : owner.eClass().getEAllStructuralFeatures()) {
            if (!owner.eIsSet(feature)) {
                continue;
            }
            Object value = owner.eGet(feature);
            String plainPath = plain + "." + feature.getName();
            String namedPath = named + "." + feature.getName();
            if (value instanceof Quantity quantity) {
                reading(owner, feature, quantity, plainPath, namedPath);
            } else if (value instanceof List<?> list) {
                elements(list, plainPath, namedPath);
            } else if (value instanceof EObject child && !ratings(child)) {
                walk(child, plainPath, namedPath);
            }
        }
        if (owner instanceof CableSegment segment) {
            method(segment, named + ".method");
        }
    }

    /** A heater's data are ratings. */
    private static boolean ratings(EObject child) {
        return child instanceof twinfeed.model.catalogue.Heater;
    }

    private void elements(List<?> list, String plainPath, String namedPath) {
        for (int i = 0; i < list.size(); i++) {
            if (list.get(i) instanceof EObject element) {
                walk(element, plainPath, namedPath + "[" + Readings.name(element, i) + "]");
            }
        }
    }

    private void reading(
            EObject owner, EStructuralFeature feature, Quantity quantity, String plainPath, String namedPath) {
        Map<String, String> instrument = INSTRUMENTS.get(plainPath);
        int gauge = instrument == null ? -1 : gauge(instrument.getOrDefault("gauge", ""));
        if (quantity.hasTolerance()) {
            add(owner, feature, quantity, namedPath, quantity.halfWidthSi(), quantity.normal(), gauge);
        } else if (instrument != null) {
            add(owner, feature, quantity, namedPath, usual(instrument, quantity), false, gauge);
        }
    }

    private void add(
            EObject owner,
            EStructuralFeature feature,
            Quantity quantity,
            String path,
            double halfWidth,
            boolean normal,
            int gauge) {
        if (halfWidth > 0) {
            inputs.add(new SampledReading(owner, feature, path, quantity, halfWidth, normal, gauge));
        }
    }

    private static double usual(Map<String, String> instrument, Quantity quantity) {
        double half = Table.number(instrument, "half");
        return "relative".equals(instrument.get("form")) ? half * Math.abs(quantity.si()) : half;
    }

    /** Index of an instrument by its name. */
    private int gauge(String name) {
        if (name.isEmpty()) {
            return -1;
        }
        return gauges.computeIfAbsent(name, key -> gauges.size());
    }

    private void method(CableSegment segment, String path) {
        String stated = segment.getMethod();
        if (stated == null || (segment.isSetConfidence() && segment.getConfidence() == Confidence.SEEN)) {
            return;
        }
        List<String> plausible = new ArrayList<>(List.of(stated));
        rules.table("methods").rows().stream()
                .filter(row -> stated.equals(row.get("key")))
                .map(row -> row.getOrDefault("plausible", ""))
                .flatMap(words -> List.of(words.split(" ")).stream())
                .filter(word -> !word.isEmpty())
                .forEach(plausible::add);
        if (plausible.size() > 1) {
            inputs.add(new SampledMethod(segment, path, plausible));
        }
    }

    private static Map<String, Map<String, String>> instruments() {
        Map<String, Map<String, String>> byPath = new LinkedHashMap<>();
        Table.beside(SampledInputs.class, "instruments.csv", "instruments")
                .rows()
                .forEach(row -> byPath.put(row.getOrDefault("path", ""), row));
        return byPath;
    }
}
