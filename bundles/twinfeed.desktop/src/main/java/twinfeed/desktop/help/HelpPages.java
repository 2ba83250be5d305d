// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.help;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.LimitType;
import twinfeed.calculator.engine.Runner;
import twinfeed.calculator.formula.Parameter;
import twinfeed.desktop.help.HelpPage.Section;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.text.ReadingName;
import twinfeed.desktop.text.Words;
import twinfeed.document.Figures;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Step;
import twinfeed.units.text.Texts;

/**
 * One page for each check, made from what its calculator says of itself, so that a third party's check has one like any other.
 * Formula, source and works come from an answer of the check in a job where there is one. A calculator may say more in its
 * messages {@code help.KEY} (what the check asks) and {@code help.KEY.do} (what to do).
 */
public final class HelpPages {
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([A-Za-z]+)(:~?\\d+)?}");
    /** Stands for what only a house can give. */
    private static final String GAP = "\u2026";

    private final List<Calculator> calculators;
    private final Words words;
    private final Figures figures;

    /** For these calculators in a language. */
    public HelpPages(List<Calculator> calculators, Words words) {
        this.calculators = calculators;
        this.words = words;
        this.figures = new Figures(words.locale());
    }

    /** All that have a page. */
    public List<CalculatorDescriptor> statements() {
        return calculators.stream().map(Calculator::descriptor).toList();
    }

    /** Name of a check. */
    public String title(CalculatorDescriptor statement, Check check) {
        return statement.texts().get(words.locale(), "check." + check.key());
    }

    /**
     * The page of a check.
     *
     * @param key key of the check
     * @param result a job's answers, from which formula and source come; may be null
     * @param chosen key of the option that is looked at; may be null
     * @return nothing if no calculator has such a check
     */
    public Optional<HelpPage> of(String key, @Nullable JobResult result, @Nullable String chosen) {
        for (CalculatorDescriptor statement : statements()) {
            for (Check check : statement.checks()) {
                if (check.key().equals(key)) {
                    return Optional.of(page(statement, check, Explained.of(key, result, chosen)));
                }
            }
        }
        return Optional.empty();
    }

    private HelpPage page(CalculatorDescriptor statement, Check check, Explained example) {
        List<Section> sections = new ArrayList<>();
        sections.add(section("asks", asks(statement, check)));
        sections.add(section("answers", answers(statement.texts(), check)));
        sections.add(section("needs", needs(check)));
        sections.add(section("formula", formula(example)));
        sections.add(section("source", source(example)));
        if (check.limitType() != LimitType.REPORT) {
            sections.add(section("tolerances", List.of(words.get("help.tolerances"))));
        }
        sections.add(section("do", todo(statement, check, example)));
        if (!statement.parameters().isEmpty()) {
            sections.add(section("parameters", parameters(statement)));
        }
        return new HelpPage(title(statement, check), sections);
    }

    private Section section(String key, List<String> lines) {
        return new Section(words.get("help.section." + key), lines);
    }

    private List<String> asks(CalculatorDescriptor statement, Check check) {
        List<String> lines = new ArrayList<>();
        Texts texts = statement.texts();
        String own = texts.find(words.locale(), "help." + check.key());
        if (own != null) {
            lines.add(own);
        }
        lines.add(words.format(
                "help.sense." + lower(check.limitType()),
                Map.of("title", title(statement, check), "unit", unit(check))));
        String kind = Runner.TEXTS.get(words.locale(), "kind." + lower(check.kind()));
        lines.add(words.format(check.deciding() ? "help.deciding" : "help.advising", Map.of("kind", kind)));
        lines.add(words.format(
                "help.calculator",
                Map.of("title", texts.get(words.locale(), "title"), "version", statement.version())));
        return lines;
    }

    private static String unit(Check check) {
        return check.unit().symbol().isEmpty() ? "\u2013" : check.unit().symbol();
    }

    private static String lower(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT);
    }

    /** The sentences that it may answer with, with gaps for what only a house can give. */
    private List<String> answers(Texts texts, Check check) {
        List<String> lines = new ArrayList<>();
        for (Outcome outcome : Outcome.values()) {
            String word = Runner.TEXTS.get(words.locale(), "outcome." + Texts.key(outcome));
            String base = "check." + check.key() + "." + Texts.key(outcome);
            List<String> sentences = texts.keys().stream()
                    .filter(key -> key.equals(base) || key.startsWith(base + "."))
                    .map(key -> texts.get(words.locale(), key))
                    .toList();
            if (sentences.isEmpty() && common(outcome, check)) {
                sentences = List.of(Runner.TEXTS.get(words.locale(), "outcome." + Texts.key(outcome) + ".sentence"));
            }
            sentences.forEach(sentence -> lines.add(
                    sentence.startsWith(upper(word)) ? withGaps(sentence) : upper(word) + ": " + withGaps(sentence)));
        }
        if (lines.stream().anyMatch(line -> line.contains(GAP))) {
            lines.add(words.get("help.gaps"));
        }
        return lines;
    }

    /** Whether an outcome without a sentence of the check's own can come up: a figure without a limit neither fails nor is close. */
    private static boolean common(Outcome outcome, Check check) {
        return switch (outcome) {
            case PASSES, FAILS, TOO_CLOSE -> check.limitType() != LimitType.REPORT;
            case CANNOT_TELL -> true;
            case NOT_APPLICABLE, NOT_CHECKED -> false;
        };
    }

    private static String upper(String word) {
        return word.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    private static String withGaps(String sentence) {
        return PLACEHOLDER.matcher(sentence).replaceAll(GAP);
    }

    private List<String> needs(Check check) {
        Set<String> lines = new LinkedHashSet<>();
        check.needs().forEach(path -> lines.add("\u2022 " + reading(path)));
        return lines.isEmpty() ? List.of(words.get("help.needs.nothing")) : List.copyOf(lines);
    }

    private String reading(String path) {
        String known = Runner.TEXTS.find(words.locale(), "reading." + path);
        if (known != null) {
            return upper(known);
        }
        String label = ReadingName.of(path.replaceFirst("^heater\\.", "heaters."), words);
        return label.contains(".") ? path : label;
    }

    private List<String> formula(Explained example) {
        @Nullable Finding finding = example.finding();
        if (finding == null || finding.getSteps().isEmpty()) {
            return List.of(words.get("help.formula.none"));
        }
        List<String> lines = new ArrayList<>();
        lines.add(words.format("help.formula.of", Map.of("option", example.option())));
        finding.getSteps().forEach(step -> lines.add(formula(step)));
        return lines;
    }

    private String formula(Step step) {
        String value = figures.withUnit(step.getValue(), step.getUnit());
        String expression =
                step.getExpression() == null || step.getExpression().isEmpty() ? "" : " = " + step.getExpression();
        return "   " + step.getSymbol() + expression + " = " + value + "   (" + step.getMeaning() + ")";
    }

    private List<String> source(Explained example) {
        Set<String> lines = new LinkedHashSet<>();
        @Nullable Finding finding = example.finding();
        if (finding != null) {
            add(lines, finding.getSource());
            finding.getSteps().forEach(step -> add(lines, step.getSource()));
        }
        return lines.isEmpty() ? List.of(words.get("help.source.none")) : List.copyOf(lines);
    }

    private static void add(Set<String> lines, @Nullable String source) {
        if (source != null && !source.isEmpty()) {
            lines.add("\u2022 " + source);
        }
    }

    private List<String> todo(CalculatorDescriptor statement, Check check, Explained example) {
        List<String> lines = new ArrayList<>();
        String own = statement.texts().find(words.locale(), "help." + check.key() + ".do");
        if (own != null) {
            lines.add(own);
        }
        @Nullable Finding finding = example.finding();
        if (finding != null) {
            lines.add(words.format("help.now", Map.of("option", example.option(), "text", text(finding))));
            if (finding.getRemeasure() != null) {
                lines.add(words.format("help.remeasure", Map.of("reading", finding.getRemeasure())));
            }
        }
        if (finding != null && !finding.getOffers().isEmpty()) {
            lines.add(words.get("help.remedies"));
            finding.getOffers().forEach(offer -> lines.add("\u2022 " + offer));
        } else if (check.deciding()) {
            lines.add(words.get("help.remedies.none"));
        }
        lines.add(words.get("help.cannotTell"));
        return lines;
    }

    private static String text(Finding finding) {
        return finding.getText() == null ? "" : finding.getText();
    }

    private List<String> parameters(CalculatorDescriptor statement) {
        return statement.parameters().stream()
                .map(parameter -> parameter(statement, parameter))
                .toList();
    }

    private String parameter(CalculatorDescriptor statement, Parameter parameter) {
        String help = statement.texts().get(words.locale(), "parameter." + parameter.key());
        Object defaultValue =
                parameter.defaultValue() != null ? figures.number(parameter.defaultValue()) : parameter.defaultWord();
        String without =
                defaultValue == null ? "" : " " + words.format("help.parameter.default", Map.of("value", defaultValue));
        return "\u2022 " + parameter.key() + ": " + help + without;
    }
}
