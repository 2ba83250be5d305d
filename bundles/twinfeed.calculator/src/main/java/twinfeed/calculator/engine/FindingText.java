// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Assumptions;
import twinfeed.calculator.Condition;
import twinfeed.calculator.DrawOffState;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Intake;
import twinfeed.calculator.PassProbability;
import twinfeed.calculator.Remedy;
import twinfeed.calculator.formula.Step;
import twinfeed.model.assessment.Outcome;
import twinfeed.units.text.Texts;

/**
 * Puts findings into words. A check's texts are {@code check.KEY} for its title and {@code check.KEY.OUTCOME} or
 * {@code check.KEY.OUTCOME.VARIANT} for the sentence; a check without a sentence of its own gets the common one of the outcome.
 * {@code customer.check.KEY.OUTCOME} says it in a customer's words. Sentences may name {@code value}, {@code limit}, {@code margin}, {@code shortfall}, {@code condition} and the finding's own arguments.
 */
public final class FindingText {
    /** What is sampled for the tolerance of a heater's power. */
    private static final String REAL_POWER = "heater.realPower";

    /** Readings without words of their own that are called as others are. */
    private static final Map<String, String> ALIKE = Map.of(
            "survey.unit.heater.", "heater.",
            "survey.water.drawOffs.segments.", "survey.water.segments.",
            "survey.water.mainPipe.", "survey.water.segments.");

    private final Runner runner;
    private final Locale locale;

    /** Words of a runner's calculators in a language. */
    public FindingText(Runner runner, Locale locale) {
        this.runner = runner;
        this.locale = locale;
    }

    /** The check's name. */
    public String title(Finding finding) {
        return texts(finding).get(locale, "check." + finding.check().key());
    }

    /** The finding in one sentence. */
    public String sentence(Finding finding) {
        Texts texts = texts(finding);
        String how = how(finding);
        if (how != null) {
            Map<String, Object> arguments = arguments(finding);
            arguments.put("how", how);
            return Runner.TEXTS.format(locale, "outcome.cannotTell.how.sentence", arguments);
        }
        for (String key : finding.outcome() == Outcome.TOO_CLOSE ? List.<String>of() : keys(finding)) {
            if (texts.has(key)) {
                return texts.format(locale, key, arguments(finding));
            }
        }
        String outcome = Texts.key(finding.outcome()) + special(finding);
        return Runner.TEXTS.format(locale, "outcome." + outcome + ".sentence", arguments(finding));
    }

    /** Nothing that is missing has a name, or what decides is no reading: nobody can measure what a heater takes that is still in its box. */
    private static String special(Finding finding) {
        if (finding.outcome() == Outcome.CANNOT_TELL && finding.missing().isEmpty()) {
            return ".none";
        }
        PassProbability chance = finding.chance();
        return finding.outcome() == Outcome.TOO_CLOSE
                        && chance != null
                        && chance.interval().remeasure().equals(REAL_POWER)
                ? ".realPower"
                : "";
    }

    /** How the one thing that is missing is made good, where that is the same for every check; null otherwise. */
    private @Nullable String how(Finding finding) {
        return finding.outcome() == Outcome.CANNOT_TELL && finding.missing().size() == 1
                ? Runner.TEXTS.find(locale, "how." + finding.missing().get(0))
                : null;
    }

    /**
     * What a failure means in the house, in a customer's words: {@code customer.check.KEY.OUTCOME}, or with the variant where it has words
     * of its own.
     *
     * @return the sentence; null where the check does not fail, or has none
     */
    public @Nullable String forCustomer(Finding finding) {
        if (finding.outcome() != Outcome.FAILS) {
            return null;
        }
        Texts texts = texts(finding);
        return keys(finding).stream()
                .map(key -> "customer." + key)
                .filter(texts::has)
                .findFirst()
                .map(key -> texts.format(locale, key, arguments(finding)))
                .orElse(null);
    }

    private static List<String> keys(Finding finding) {
        String base = "check." + finding.check().key() + "." + Texts.key(finding.outcome());
        return finding.variant().isEmpty() ? List.of(base) : List.of(base + "." + finding.variant(), base);
    }

    private Map<String, Object> arguments(Finding finding) {
        Map<String, Object> arguments = new LinkedHashMap<>(finding.arguments());
        Finding.Figures figures = finding.printed();
        if (figures != null) {
            arguments.put("value", figures.value());
            arguments.put("limit", figures.limit());
            arguments.put("margin", figures.margin());
            arguments.put("shortfall", -figures.margin());
        }
        PassProbability chance = finding.chance();
        if (chance != null) {
            arguments.put("chance", chance.passes() * 100);
            arguments.put("remeasure", remeasure(chance));
        }
        arguments.put("unit", finding.check().unit().symbol());
        arguments.put("condition", condition(finding.condition()));
        arguments.put("missing", String.join(", ", missing(finding)));
        arguments.put("title", title(finding));
        return arguments;
    }

    /** The reading to take again, in words; all of them where none stands out. */
    public String remeasure(PassProbability chance) {
        String path = chance.interval().remeasure();
        return path.isEmpty() ? Runner.TEXTS.get(locale, "reading.all") : reading(path);
    }

    /** The missing readings in words. */
    public List<String> missing(Finding finding) {
        return finding.missing().stream().map(this::reading).toList();
    }

    /** A reading's path in words; elements of lists keep their names. */
    public String reading(String path) {
        String element = path.contains("[") ? path.substring(path.indexOf('[') + 1, path.indexOf(']')) : "";
        String plain = path.replaceAll("\\[[^]]*]", "");
        String own = Runner.TEXTS.find(locale, "reading." + plain);
        String text = own == null ? Runner.TEXTS.find(locale, "reading." + alike(plain)) : own;
        String words = text == null ? plain : text;
        return element.isEmpty() ? words : words + " (" + element + ")";
    }

    /** What the plate of the present unit says is what the catalogue says of a heater, and the pieces of a branch are pipes like all others. */
    private static String alike(String path) {
        for (Map.Entry<String, String> each : ALIKE.entrySet()) {
            if (path.startsWith(each.getKey())) {
                return each.getValue() + path.substring(each.getKey().length());
            }
        }
        return path;
    }

    /** A condition in words: {@code January, kitchen tap open, 216 V}. */
    public String condition(Condition condition) {
        List<String> parts = new ArrayList<>();
        if (condition.subject() != null) {
            parts.add(condition.subject());
        }
        Intake intake = condition.intake();
        if (intake != null) {
            parts.add(Runner.TEXTS.format(
                    locale, "month." + intake.month(), Map.of("temperature", intake.temperatureC())));
        }
        DrawOffState drawOff = condition.drawOff();
        if (drawOff != null) {
            parts.add(Runner.TEXTS.format(
                    locale,
                    drawOff.open() == 0 ? "drawOff.none" : "drawOff.open",
                    Map.of("names", String.join(" + ", drawOff.names()))));
        }
        if (condition.voltageV() != null) {
            parts.add(Runner.TEXTS.format(locale, "voltage", Map.of("voltage", condition.voltageV())));
        }
        return String.join(", ", parts);
    }

    /** An assumption in words. */
    public String assumption(Assumptions.Assumption assumption) {
        return runner.texts(assumption.calculator())
                .format(locale, "assumption." + assumption.key(), assumption.arguments());
    }

    /** A remedy in words. */
    public String remedy(String calculator, Remedy remedy) {
        return runner.texts(calculator).format(locale, "remedy." + remedy.kind(), remedy.arguments());
    }

    /** What a step of a working stands for. */
    public String meaning(String calculator, Step step) {
        String key = "meaning." + step.meaning();
        String text = runner.texts(calculator).find(locale, key);
        if (text == null) {
            text = ofOthers(key);
        }
        return text == null ? Runner.TEXTS.get(locale, key) : text;
    }

    /** A line that was taken over from the working of another calculator is worded there. */
    private @Nullable String ofOthers(String key) {
        return runner.calculators().stream()
                .map(calculator -> calculator.descriptor().texts().find(locale, key))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private Texts texts(Finding finding) {
        return finding.check().key().equals(Runner.BROKEN.key()) ? Runner.TEXTS : runner.texts(finding.calculator());
    }
}
