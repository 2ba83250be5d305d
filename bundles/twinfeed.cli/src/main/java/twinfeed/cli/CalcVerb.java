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
import twinfeed.calculator.Answer;
import twinfeed.calculator.ArgumentException;
import twinfeed.calculator.Arguments;
import twinfeed.usecase.NamedFormula;

/** One calculation without a survey. */
@Command(
        name = "calc",
        mixinStandardHelpOptions = true,
        description =
                "One calculation without a survey: twinfeed calc flow power=9.5kW rated=240V supply=230V intake=5C outlet=40C")
final class CalcVerb implements Callable<Integer> {
    private final CliContext face;

    @Option(names = "--list", description = "The names, and with a NAME its keys.")
    private boolean list;

    @Option(names = "--json", description = "One JSON document instead of text.")
    private boolean json;

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "What to compute.")
    private @Nullable String name;

    @Parameters(index = "1..*", paramLabel = "KEY=VALUE", description = "Values with their units.")
    private List<String> values = List.of();

    CalcVerb(CliContext face) {
        this.face = face;
    }

    @Override
    public Integer call() {
        if (list || name == null) {
            new FormulaList(face).print(name, json);
            return Verbs.DONE;
        }
        NamedFormula formula = face.office()
                .formula(name)
                .orElseThrow(() -> new ArgumentException("\"" + name + "\" is no calculation; known are "
                        + String.join(
                                ", ",
                                face.office().formulas().stream()
                                        .map(NamedFormula::name)
                                        .toList())));
        Answer answer = formula.apply(Arguments.parse(formula.formula().parameters(), typed()));
        if (json) {
            new JsonReport(face.out()).answer(formula, answer, CliContext.LOCALE);
        } else {
            new TextReport(face).answer(formula, answer);
        }
        return Verbs.DONE;
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
