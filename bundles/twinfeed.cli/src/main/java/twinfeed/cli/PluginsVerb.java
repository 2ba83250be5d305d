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
    private final CliContext context;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    PluginsVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        List<CalculatorDescriptor> descriptors = context.service().calculators().stream()
                .map(Calculator::descriptor)
                .toList();
        if (json) {
            context.json().plugins(descriptors);
        } else {
            descriptors.forEach(this::print);
        }
        return Verbs.DONE;
    }

    private void print(CalculatorDescriptor descriptor) {
        context.out()
                .println(descriptor.id() + " " + descriptor.version() + "  "
                        + descriptor.texts().get(CliContext.LOCALE, "title"));
        line(
                "consumes",
                descriptor.consumes().stream().map(SharedQuantity::name).toList());
        line(
                "provides",
                descriptor.provides().stream().map(SharedQuantity::name).toList());
        descriptor
                .checks()
                .forEach(check -> line(
                        "check",
                        List.of(check.key() + ": "
                                + descriptor.texts().get(CliContext.LOCALE, "check." + check.key())
                                + (check.needs().isEmpty()
                                        ? ""
                                        : " (needs " + String.join(", ", check.needs()) + ")"))));
        descriptor.parameters().forEach(parameter -> line("parameter", List.of(parameter.key())));
        descriptor.formulas().forEach(formula -> line("formula", List.of(formula.name())));
    }

    private void line(String label, List<String> values) {
        if (!values.isEmpty()) {
            context.out().println("  " + label + " " + String.join(", ", values));
        }
    }
}
