// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.formula.ArgumentException;
import twinfeed.calculator.formula.Parameter;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.usecase.NamedFormula;

/** Lists what {@code calc} can compute. */
final class FormulaList {
    private final CliContext context;

    FormulaList(CliContext context) {
        this.context = context;
    }

    void print(@Nullable String name, boolean json) {
        List<NamedFormula> wanted = context.service().formulas().stream()
                .filter(formula -> name == null || formula.name().equals(name))
                .toList();
        if (wanted.isEmpty()) {
            throw new ArgumentException("\"" + name + "\" is no calculation; calc --list names them");
        }
        if (json) {
            context.json().formulas(wanted, CliContext.LOCALE);
        } else {
            wanted.forEach(this::print);
        }
    }

    private void print(NamedFormula formula) {
        context.out().println(formula.name() + "  " + formula.text(CliContext.LOCALE, "formula." + formula.name()));
        for (Parameter parameter : formula.formula().parameters()) {
            context.out()
                    .println("  " + parameter.key() + "  "
                            + formula.text(CliContext.LOCALE, "parameter." + parameter.key()) + "; "
                            + values(parameter));
        }
    }

    private static String values(Parameter parameter) {
        Kind kind = parameter.kind();
        if (kind == null) {
            return (parameter.words().isEmpty() ? "a name" : "one of " + String.join(", ", parameter.words()))
                    + word(parameter);
        }
        String range = kind.name().toLowerCase(Locale.ROOT).replace('_', ' ') + ", "
                + Quantities.format(kind, parameter.least(), 4) + " to " + Quantities.format(kind, parameter.most(), 4);
        Double defaultValue = parameter.defaultValue();
        if (defaultValue != null) {
            return range + "; " + Quantities.format(kind, defaultValue, 4) + " if not given";
        }
        return range + needed(parameter);
    }

    /** What stands in place of a word that is not given; that nothing does is said by the help of its key. */
    private static String word(Parameter parameter) {
        String defaultWord = parameter.defaultWord();
        return defaultWord == null || defaultWord.isEmpty() ? needed(parameter) : "; " + defaultWord + " if not given";
    }

    private static String needed(Parameter parameter) {
        return parameter.required() ? "; needed" : "";
    }
}
