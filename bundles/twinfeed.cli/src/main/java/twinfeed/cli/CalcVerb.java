// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.usecase.FormulaAnswer;
import twinfeed.usecase.NamedFormula;

/** One calculation without a survey. */
@Command(
        name = "calc",
        mixinStandardHelpOptions = true,
        description =
                "One calculation without a survey: twinfeed calc flow power=9.5kW rated=240V supply=230V intake=5C"
                        + " outlet=40C; or a quantity in all its units in one line: twinfeed calc units value=0.3bar")
final class CalcVerb implements Callable<Integer> {
    /** What converts a quantity in place of computing something. */
    private static final String UNITS = "units";

    private final CliContext context;

    @Option(names = "--list", description = "The names, and with a NAME its keys.")
    private boolean list;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "What to compute.")
    private @Nullable String name;

    @Parameters(index = "1..*", paramLabel = "KEY=VALUE", description = "Values with their units.")
    private List<String> values = List.of();

    CalcVerb(CliContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (list || name == null) {
            new FormulaList(context).print(name, json);
            return Verbs.DONE;
        }
        if (UNITS.equals(name)) {
            units(typed());
            return Verbs.DONE;
        }
        NamedFormula formula = context.service()
                .formula(name)
                .orElseThrow(() -> new ArgumentException("\"" + name + "\" is no calculation; known are "
                        + String.join(
                                ", ",
                                context.service().formulas().stream()
                                        .map(NamedFormula::name)
                                        .toList())));
        Map<String, String> typed = typed();
        FormulaAnswer answer = formula.answer(typed, CliContext.LOCALE);
        int digits = TypedDigits.of(typed.values());
        if (json) {
            context.json().answer(formula, answer, digits, CliContext.LOCALE);
        } else {
            new TextReport(context).answer(answer, digits);
        }
        return Verbs.DONE;
    }

    private void units(Map<String, String> typed) {
        String value = typed.get("value");
        if (value == null || typed.size() > 1) {
            throw new ArgumentException("calc units takes value= and nothing else; write for example value=0.3bar");
        }
        if (json) {
            throw new ArgumentException("calc units has no JSON document; leave --json out");
        }
        UnitLines.of(value).forEach(context.out()::println);
    }

    private Map<String, String> typed() {
        Map<String, String> typed = new LinkedHashMap<>();
        for (String value : values) {
            int equals = value.indexOf('=');
            if (equals <= 0) {
                throw new ArgumentException("\"" + value + "\" is no KEY=VALUE; write for example power=9.5kW");
            }
            if (typed.put(value.substring(0, equals), value.substring(equals + 1)) != null) {
                throw new ArgumentException("\"" + value.substring(0, equals) + "\" is given twice; give it once");
            }
        }
        return typed;
    }
}
