// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.formula;

import java.util.List;
import java.util.function.Function;

/**
 * A named, typed pure function that a calculator publishes; the command line and help use the same one as the workings.
 *
 * @param name name as typed, lower case with hyphens; its help is the text {@code formula.NAME}
 * @param parameters what it takes
 * @param function the function
 */
public record Formula(String name, List<Parameter> parameters, Function<Arguments, Answer> function) {
    public Formula {
        parameters = List.copyOf(parameters);
    }

    /** Computes. */
    public Answer apply(Arguments arguments) {
        return function.apply(arguments);
    }
}
