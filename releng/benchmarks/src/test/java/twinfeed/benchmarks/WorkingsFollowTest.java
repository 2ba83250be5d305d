// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeMap;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.Candidate;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Readings;
import twinfeed.calculator.engine.OptionResult;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.expression.Expression;
import twinfeed.calculator.formula.Step;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.ProtectiveDevice;
import twinfeed.model.survey.Survey;
import twinfeed.units.Kind;
import twinfeed.units.Quantity;
import twinfeed.usecase.OpenedJob;

/**
 * Each line of a working that is a reading follows that reading: with any one reading of a house changed a little, the working of each
 * check comes to the value and the limit that the calculator gives for the changed house. So a workbook, which has the workings as
 * formulas, follows every reading too. Sizes of cables, and ratings of fuses, pick a line of a table, which only the program does.
 */
class WorkingsFollowTest {
    private static final double FACTOR = 1.004;
    private static final double KELVIN = 0.3;
    private static final double NEAR = 1e-9;

    /**
     * The flow of the hottest moment can lie where the flow in a pipe turns turbulent (Re = 2000), at which its friction jumps: there the
     * rounds go to and fro over the jump that the program's search stops at.
     */
    private static final String BY_ROUNDS = "pressure.scald";

    private static final double NEAR_BY_ROUNDS = 1e-3;
    private static final Runner RUNNER = runner();

    private static Runner runner() {
        List<Calculator> calculators = new ArrayList<>();
        ServiceLoader.load(Calculator.class).forEach(calculators::add);
        return new Runner(calculators, (mean, spread, day, southern) -> mean);
    }

    @ParameterizedTest
    @ValueSource(strings = {"alder-beck", "rowan-brook", "hazel-ghyll", "willow-mere", "birch-syke"})
    void theWorkingsOfAHouse(String name) {
        OpenedJob job = new Books().opened(name + ".job");
        List<Candidate> candidates = job.catalogue().getHeaters().stream()
                .filter(heater -> job.job().getSurvey().getCandidates().contains(heater.getId()))
                .map(heater -> new Candidate(heater, false))
                .toList();
        List<String> differences = new ArrayList<>();
        int compared = follow(job.job().getSurvey(), candidates, differences);
        assertEquals(List.of(), differences);
        assertTrue(compared > 80, "compared: " + compared);
    }

    private static int follow(Survey survey, List<Candidate> candidates, List<String> differences) {
        Map<String, List<Place>> places = new TreeMap<>();
        places(survey, "survey", places);
        int compared = 0;
        for (Map.Entry<String, List<Place>> entry : places.entrySet()) {
            Place place = entry.getValue().get(0);
            if (entry.getValue().size() > 1 || place.picksALine()) {
                continue; // two of one name cannot be told apart
            }
            for (Candidate candidate : candidates) {
                List<Prediction> predictions = RUNNER.judge(survey, candidate).findings().stream()
                        .filter(finding -> finding.printed() != null)
                        .map(finding -> Prediction.of(finding, entry.getKey(), place))
                        .toList();
                Quantity was = place.reading();
                place.change();
                OptionResult after = RUNNER.judge(survey, candidate);
                place.set(was);
                for (Prediction prediction : predictions) {
                    Finding then =
                            after.finding(prediction.finding.check().key()).orElseThrow();
                    compared += prediction.compare(then, entry.getKey(), differences) ? 1 : 0;
                }
            }
        }
        return compared;
    }

    private static void places(EObject owner, String path, Map<String, List<Place>> found) {
        for (EAttribute attribute : owner.eClass().getEAllAttributes()) {
            if (!attribute.isMany() && owner.eIsSet(attribute) && owner.eGet(attribute) instanceof Quantity) {
                found.computeIfAbsent(path + "." + attribute.getName(), key -> new ArrayList<>())
                        .add(new Place(owner, attribute));
            }
        }
        for (EReference reference : owner.eClass().getEAllContainments()) {
            Object value = owner.eGet(reference);
            if (value instanceof List<?> list) {
                for (int i = 0; i < list.size(); i++) {
                    EObject element = (EObject) list.get(i);
                    places(element, path + "." + reference.getName() + "[" + Readings.name(element, i) + "]", found);
                }
            } else if (value instanceof EObject element) {
                places(element, path + "." + reference.getName(), found);
            }
        }
    }

    record Place(EObject owner, EAttribute attribute) {
        Quantity reading() {
            return (Quantity) owner.eGet(attribute);
        }

        void set(Quantity reading) {
            owner.eSet(attribute, reading);
        }

        void change() {
            Quantity was = reading();
            set(was.withSi(was.kind() == Kind.TEMPERATURE ? was.si() + KELVIN : was.si() * FACTOR));
        }

        /** Whether it picks a line of a table: the size of a cable, the rating of a fuse. */
        boolean picksALine() {
            return owner instanceof CableSegment && Set.of("size", "cpc").contains(attribute.getName())
                    || owner instanceof ProtectiveDevice device
                            && String.valueOf(device.getKind()).startsWith("fuse");
        }

        /** A figure of the reading, in whatever unit, after the change. */
        double changed(double figure) {
            return reading().kind() == Kind.TEMPERATURE ? figure + KELVIN : figure * FACTOR;
        }
    }

    /** What a working gives with one reading changed. */
    record Prediction(Finding finding, double value, double limit) {
        static Prediction of(Finding finding, String path, Place place) {
            Finding.Figures figures = Objects.requireNonNull(finding.printed());
            List<Step> steps = finding.working().steps();
            if (steps.isEmpty()) {
                return new Prediction(finding, figures.value(), figures.limit());
            }
            Map<String, Double> then = new HashMap<>();
            for (Step step : steps) {
                String expression = step.expression();
                double value;
                if (expression != null) {
                    value = Expression.parse(expression).evaluate(then);
                } else {
                    value = step.origin().equals(path) ? place.changed(step.value()) : step.value();
                }
                then.put(step.symbol(), value);
            }
            Step last = steps.get(steps.size() - 1);
            double value = near(last.value(), figures.value()) ? then.get(last.symbol()) : figures.value();
            Step limit = limit(steps, figures.limit(), finding);
            return new Prediction(finding, value, limit == null ? figures.limit() : then.get(limit.symbol()));
        }

        private static @Nullable Step limit(List<Step> steps, double limit, Finding finding) {
            for (Step step : steps) {
                if (step.symbol().equals("lim") && near(step.value(), limit)) {
                    return step;
                }
            }
            Step found = null;
            for (Step step : steps.subList(0, steps.size() - 1)) {
                if (step.origin().isEmpty()
                        && near(step.value(), limit)
                        && step.unit().equals(finding.check().unit().symbol())) {
                    if (found != null) {
                        return null;
                    }
                    found = step;
                }
            }
            return found;
        }

        /** Whether there is something to compare: not where another month, or another word, is said. */
        boolean compare(Finding then, String path, List<String> differences) {
            Finding.Figures figures = then.printed();
            if (figures == null || !Objects.equals(words(then), words(finding))) {
                return false;
            }
            String key = finding.check().key();
            double near = key.equals(BY_ROUNDS) ? NEAR_BY_ROUNDS : NEAR;
            if (!near(figures.value(), value, near)) {
                differences.add(key + ", " + path + ": value " + value + " instead of " + figures.value() + "\n");
            }
            if (figures.limited() && !near(figures.limit(), limit, near)) {
                differences.add(key + ", " + path + ": limit " + limit + " instead of " + figures.limit() + "\n");
            }
            return true;
        }

        private static String words(Finding finding) {
            return finding.condition() + finding.variant();
        }
    }

    private static boolean near(double one, double other) {
        return near(one, other, NEAR);
    }

    private static boolean near(double one, double other, double relative) {
        return Math.abs(one - other) <= relative * Math.max(1e-3, Math.max(Math.abs(one), Math.abs(other)));
    }
}
