// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.SharedQuantity;

/** The calculators that were found. */
@Command(
        name = "plugins",
        mixinStandardHelpOptions = true,
        description = "The calculators found, their version, what they need, give, take and offer.")
final class PluginsVerb implements Callable<Integer> {
    private final CliContext face;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    PluginsVerb(CliContext face) {
        this.face = face;
    }

    @Override
    public Integer call() {
        List<CalculatorDescriptor> statements = face.service().calculators().stream()
                .map(Calculator::descriptor)
                .toList();
        if (json) {
            face.json().plugins(statements);
        } else {
            statements.forEach(this::print);
        }
        return Verbs.DONE;
    }

    private void print(CalculatorDescriptor statement) {
        face.out()
                .println(statement.id() + " " + statement.version() + "  "
                        + statement.texts().get(CliContext.LOCALE, "title"));
        line("takes", statement.takes().stream().map(SharedQuantity::name).toList());
        line("gives", statement.gives().stream().map(SharedQuantity::name).toList());
        statement
                .checks()
                .forEach(check -> line(
                        "check",
                        List.of(check.key() + ": "
                                + statement.texts().get(CliContext.LOCALE, "check." + check.key())
                                + (check.needs().isEmpty()
                                        ? ""
                                        : " (needs " + String.join(", ", check.needs()) + ")"))));
        statement.parameters().forEach(parameter -> line("parameter", List.of(parameter.key())));
        statement.formulas().forEach(formula -> line("formula", List.of(formula.name())));
    }

    private void line(String label, List<String> values) {
        if (!values.isEmpty()) {
            face.out().println("  " + label + " " + String.join(", ", values));
        }
    }
}
