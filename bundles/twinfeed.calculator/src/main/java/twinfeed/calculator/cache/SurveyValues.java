// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.cache;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.model.survey.ParameterValue;
import twinfeed.model.survey.Survey;
import twinfeed.units.Kind;
import twinfeed.units.Quantity;

/** Every value that is set in a survey and every object in it, with its path, for telling whether two surveys are the same to a calculator. */
final class SurveyValues {
    private static final String ROOT = "survey";

    private final List<Value> values = new ArrayList<>();

    /** A value; a parameter of a calculator stands by itself. */
    private record Value(String path, Object value) {
        boolean isReadBy(CalculatorDescriptor calculator) {
            return value instanceof Parameter parameter
                    ? parameter.calculator.equals(calculator.id())
                    : calculator.reads(path);
        }
    }

    private record Parameter(String calculator, String key, String value) {}

    /** A reading without the text that was typed, which takes longer to compare than to read and tells calculators nothing. */
    private record Measured(Kind kind, double si, boolean hasTolerance, double halfWidthSi, boolean normal) {
        static Measured of(Quantity quantity) {
            return new Measured(
                    quantity.kind(), quantity.si(), quantity.hasTolerance(), quantity.halfWidthSi(), quantity.normal());
        }
    }

    private SurveyValues() {}

    static SurveyValues of(Survey survey) {
        SurveyValues found = new SurveyValues();
        found.walk(survey, ROOT);
        return found;
    }

    /** Every value of something else, a heater for example, with its path. */
    static List<Object> all(EObject object) {
        SurveyValues found = new SurveyValues();
        found.walk(object, object.eClass().getName());
        return List.copyOf(found.values);
    }

    /** Those that a calculator says it reads. */
    List<Object> readBy(CalculatorDescriptor calculator) {
        List<Object> read = new ArrayList<>();
        for (Value value : values) {
            if (value.isReadBy(calculator)) {
                read.add(value);
            }
        }
        return read;
    }

    private void walk(EObject owner, String path) {
        if (owner instanceof ParameterValue parameter) {
            values.add(new Value(
                    path,
                    new Parameter(
                            String.valueOf(parameter.getCalculator()),
                            String.valueOf(parameter.getKey()),
                            String.valueOf(parameter.getValue()))));
            return;
        }
        // An element of which nothing is known yet is one more element.
        values.add(new Value(path, owner.eClass().getName()));
        for (EStructuralFeature feature : owner.eClass().getEAllStructuralFeatures()) {
            if (owner.eIsSet(feature)) {
                add(path + "." + feature.getName(), owner.eGet(feature));
            }
        }
    }

    private void add(String path, Object value) {
        if (value instanceof EObject child) {
            walk(child, path);
        } else if (value instanceof List<?> list) {
            for (int i = 0; i < list.size(); i++) {
                add(path + "[" + i + "]", list.get(i));
            }
        } else {
            values.add(new Value(path, value instanceof Quantity quantity ? Measured.of(quantity) : value));
        }
    }
}
