// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;

/**
 * What a calculator says of itself. The form, the command line, JSON and the workbook derive from it.
 *
 * @param id unique id, lower case letters, digits, dots and hyphens
 * @param version version of the calculator, for the record
 * @param texts its messages; must hold {@code title}, for each check {@code check.KEY} and the outcome texts, for each parameter
 *     and formula title and help
 * @param gives quantities that it puts into the exchange
 * @param takes quantities of others that it reads from the exchange
 * @param checks the checks that it answers, in the order of their findings
 * @param parameters its own parameters
 * @param formulas the functions that it publishes
 */
public record CalculatorDescriptor(
        String id,
        String version,
        Texts texts,
        List<SharedQuantity> gives,
        List<SharedQuantity> takes,
        List<Check> checks,
        List<Parameter> parameters,
        List<Formula> formulas) {

    public CalculatorDescriptor {
        gives = List.copyOf(gives);
        takes = List.copyOf(takes);
        checks = List.copyOf(checks);
        parameters = List.copyOf(parameters);
        formulas = List.copyOf(formulas);
    }
}
