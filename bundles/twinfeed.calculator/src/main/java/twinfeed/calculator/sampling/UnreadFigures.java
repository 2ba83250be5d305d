// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.sampling;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.eclipse.emf.ecore.EObject;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.rules.Table;
import twinfeed.model.survey.Fitting;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/**
 * What is uncertain without being a reading: the power of a heater within its tolerance, and usual figures from tables that stand in for
 * readings. Each is a parameter of a calculator; figures of one table share one deviation, for what a table is off it is off throughout.
 */
final class UnreadFigures {
    private static final List<Map<String, String>> FIGURES =
            Table.beside(UnreadFigures.class, "tolerances.csv", "tolerances").rows();

    private UnreadFigures() {}

    /** The figures that take part in a house; those whose parameter the survey sets are taken as set. */
    static List<SampledInput> of(Survey copy) {
        List<SampledInput> inputs = new ArrayList<>();
        for (Map<String, String> row : FIGURES) {
            String path = row.getOrDefault("path", "");
            String calculator = row.getOrDefault("calculator", "");
            String key = row.getOrDefault("parameter", "");
            if (takesPart(copy, path) && !set(copy, calculator, key)) {
                ParameterValue value = SurveyFactory.eINSTANCE.createParameterValue();
                value.setCalculator(calculator);
                value.setKey(key);
                copy.getParameters().add(value);
                SampledParameter input =
                        new SampledParameter(value, path, Table.number(row, "nominal"), Table.number(row, "half"));
                input.place(0);
                inputs.add(input);
            }
        }
        return inputs;
    }

    private static boolean set(Survey survey, String calculator, String key) {
        return survey.getParameters().stream()
                .anyMatch(value -> calculator.equals(value.getCalculator()) && key.equals(value.getKey()));
    }

    private static boolean takesPart(Survey survey, String path) {
        return switch (path) {
            case "heater.realPower" ->
                survey.getElectricity() != null && survey.getElectricity().getCircuit() != null;
            case "tables.fittings" -> any(survey.getWater(), Fitting.class, fitting -> fitting.getK() == null);
            case "tables.roughness" -> any(survey.getWater(), PipeSegment.class, pipe -> pipe.getRoughness() == null);
            case "tables.bores" -> any(survey.getWater(), PipeSegment.class, pipe -> pipe.getBore() == null);
            default -> throw new IllegalStateException("tolerances.csv: no figure " + path);
        };
    }

    private static <T> boolean any(@Nullable EObject root, Class<T> type, Predicate<T> wanted) {
        if (root == null) {
            return false;
        }
        Iterable<EObject> contents = root::eAllContents;
        Stream<EObject> all = StreamSupport.stream(contents.spliterator(), false);
        return all.filter(type::isInstance).map(type::cast).anyMatch(wanted);
    }
}
