// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.emf.ecore.EAttribute;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.engine.Climates;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.calculator.rules.RuleTitles;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.units.text.Texts;
import twinfeed.workbook.form.FormWords;

/** The words that a survey may hold and that only catalogue, rule set and calculators know. */
public final class SurveyWords implements FormWords {
    private final List<Calculator> calculators;
    private final Locale locale;
    private final RuleSet rules;
    private final @Nullable Catalogue catalogue;

    /**
     * Of a survey.
     *
     * @param rules its rule set; absent for the usual one
     * @param catalogue its heaters, where they are known
     */
    public SurveyWords(
            List<Calculator> calculators, Locale locale, @Nullable String rules, @Nullable Catalogue catalogue) {
        this.calculators = List.copyOf(calculators);
        this.locale = locale;
        this.rules = rules == null ? RuleSets.standard() : RuleSets.find(rules).orElseGet(RuleSets::standard);
        this.catalogue = catalogue;
    }

    @Override
    public List<Word> of(EAttribute attribute) {
        String key = attribute.getEContainingClass().getName() + "." + attribute.getName();
        return switch (key) {
            case "Symptom.key" -> worded("question.");
            case "IsolationTick.step" -> worded("isolation.");
            case "Fitting.kind" -> worded("fitting.");
            case "ProtectiveDevice.kind" ->
                titled(rules.devices().keys(), each -> meaning(each, titles().device(each)));
            case "CableSegment.method" -> titled(rules.methods(), each -> meaning(each, titles().method(each)));
            case "CableSegment.cable" -> titled(rules.cables().keys(), each -> each);
            case "Survey.rules" -> titled(RuleSets.ids(), each -> each);
            case "Survey.climate" -> {
                List<String> ids = new ArrayList<>(Climates.ids());
                ids.add(Climates.MODEL);
                yield titled(ids, each -> each);
            }
            case "PresentUnit.heaterId" -> heaters();
            default -> List.of();
        };
    }

    private RuleTitles titles() {
        return new RuleTitles(rules, locale);
    }

    private static String meaning(String word, String title) {
        return title.equals(word) ? word : word + FormWords.MEANS + title;
    }

    private List<Word> heaters() {
        return catalogue == null
                ? List.of()
                : catalogue.getHeaters().stream()
                        .map(heater -> new Word(
                                heater.getId(),
                                heater.getTitle() == null
                                        ? heater.getId()
                                        : heater.getId() + FormWords.MEANS + heater.getTitle()))
                        .toList();
    }

    private static List<Word> titled(List<String> values, Function<String, String> title) {
        return values.stream()
                .distinct()
                .map(value -> new Word(value, title.apply(value)))
                .toList();
    }

    private List<Word> worded(String prefix) {
        Map<String, String> found = new LinkedHashMap<>();
        for (Calculator calculator : calculators) {
            Texts texts = calculator.descriptor().texts();
            texts.keys().stream()
                    .filter(key -> key.startsWith(prefix) && key.indexOf('.', prefix.length()) < 0)
                    .forEach(key -> found.putIfAbsent(key.substring(prefix.length()), texts.get(locale, key)));
        }
        return found.entrySet().stream()
                .map(entry -> new Word(entry.getKey(), entry.getValue()))
                .toList();
    }
}
