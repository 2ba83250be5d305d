// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.units.UnitException;

/** Values for parameters, checked against them; what was not given has its default. */
public final class Arguments {
    private final Map<String, Double> numbers;
    private final Map<String, String> words;

    private Arguments(Map<String, Double> numbers, Map<String, String> words) {
        this.numbers = numbers;
        this.words = words;
    }

    /**
     * Reads what a person typed.
     *
     * @param parameters the parameters
     * @param typed texts by key, for example {@code power} to {@code 9.5kW}
     * @throws ArgumentException if a key is unknown or missing, a value is no quantity of its kind, or out of range
     */
    public static Arguments parse(List<Parameter> parameters, Map<String, String> typed) {
        for (String key : typed.keySet()) {
            if (parameters.stream().noneMatch(parameter -> parameter.key().equals(key))) {
                throw ArgumentException.unknown(
                        key, parameters.stream().map(Parameter::key).toList());
            }
        }
        Arguments result = new Arguments(new LinkedHashMap<>(), new LinkedHashMap<>());
        parameters.forEach(parameter -> result.put(parameter, typed.get(parameter.key())));
        return result;
    }

    private void put(Parameter parameter, @Nullable String typed) {
        Kind kind = parameter.kind();
        if (kind == null) {
            putWord(parameter, typed == null ? parameter.defaultWord() : typed);
        } else if (typed != null) {
            putNumber(parameter, quantity(parameter, kind, typed), typed);
        } else if (parameter.defaultValue() != null) {
            numbers.put(parameter.key(), parameter.defaultValue());
        } else if (parameter.required()) {
            throw ArgumentException.missing(parameter.key(), kind);
        }
    }

    private static double quantity(Parameter parameter, Kind kind, String typed) {
        try {
            return Quantities.parse(kind, typed).si();
        } catch (UnitException refused) {
            throw ArgumentException.notUnderstood(parameter.key(), typed, refused);
        }
    }

    private void putNumber(Parameter parameter, double si, String typed) {
        if (!(si >= parameter.least() && si <= parameter.most())) {
            throw ArgumentException.outOfRange(parameter, typed);
        }
        numbers.put(parameter.key(), si);
    }

    private void putWord(Parameter parameter, @Nullable String word) {
        if (word == null) {
            if (parameter.required()) {
                throw ArgumentException.missing(parameter.key(), parameter.words());
            }
            return;
        }
        if (!parameter.words().isEmpty() && !parameter.words().contains(word)) {
            throw ArgumentException.unknownWord(parameter.key(), word, parameter.words());
        }
        words.put(parameter.key(), word);
    }

    /** Whether a value is there, given or by default. */
    public boolean has(String key) {
        return numbers.containsKey(key) || words.containsKey(key);
    }

    /** A quantity in SI. */
    public double si(String key) {
        Double value = numbers.get(key);
        if (value == null) {
            throw new IllegalArgumentException("no value for " + key);
        }
        return value;
    }

    /** A quantity in SI, or another value if it was not given. */
    public double si(String key, double otherwise) {
        Double value = numbers.get(key);
        return value == null ? otherwise : value;
    }

    /** A word. */
    public String word(String key) {
        String value = words.get(key);
        if (value == null) {
            throw new IllegalArgumentException("no value for " + key);
        }
        return value;
    }
}
