// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.engine.Climates;
import twinfeed.calculator.engine.SourceText;
import twinfeed.calculator.rules.RuleSet;
import twinfeed.calculator.rules.RuleSets;
import twinfeed.calculator.rules.RuleTitles;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.PipeSegment;
import twinfeed.model.survey.Survey;
import twinfeed.units.text.Texts;

/**
 * The answers that can be picked: the words of the model, and what catalogue, rule set and survey know. Calculators bring
 * words of their own by messages {@code choice.CLASS.FEATURE.VALUE}, questions about faults by {@code question.KEY} and the steps of a
 * safe isolation by {@code isolation.KEY}.
 */
public final class Choices {
    private final JobSession session;
    private final Words words;

    /** For one job in one language. */
    public Choices(JobSession session, Words words) {
        this.session = session;
        this.words = words;
    }

    /**
     * The answers for an attribute, "not recorded" first; nothing but that where the answer is free.
     *
     * @param attribute what is asked
     * @param present the present answer, which is offered even if nobody knows it
     */
    public List<Choice> of(EAttribute attribute, @Nullable Object present) {
        List<Choice> choices = new ArrayList<>();
        choices.add(new Choice(null, words.get("choice.none")));
        choices.addAll(known(attribute));
        if (present != null && choices.stream().noneMatch(each -> present.equals(each.value()))) {
            choices.add(new Choice(present, words.format("choice.unknown", Map.of("value", present))));
        }
        return choices;
    }

    private List<Choice> known(EAttribute attribute) {
        if (attribute.getEAttributeType() instanceof EEnum literals) {
            return literals.getELiterals().stream().map(this::literal).toList();
        }
        if (attribute.getEAttributeType().getInstanceClass() == Boolean.class) {
            return List.of(new Choice(true, words.get("choice.yes")), new Choice(false, words.get("choice.no")));
        }
        String key = attribute.getEContainingClass().getName() + "." + attribute.getName();
        return switch (key) {
            case "PresentUnit.heaterId", "Completion.heaterId" -> heaters();
            case "WaterTest.gaugeAfter", "DrawOff.teeAfter" -> pipes();
            case "Survey.rules" ->
                titled(RuleSets.ids(), id -> RuleSets.find(id)
                        .map(rules -> SourceText.in(words.locale()).of(rules.title()))
                        .orElse(id));
            case "Survey.climate" -> titled(Climates.ids(), id -> text(key, id));
            case "ProtectiveDevice.kind" -> devices();
            case "CableSegment.cable" -> titled(rules().cables().keys(), titles()::cable);
            case "CableSegment.method" -> methods();
            case "Symptom.key" -> worded("question.");
            case "IsolationTick.step" -> worded("isolation.");
            default -> worded("choice." + key + ".");
        };
    }

    private Choice literal(EEnumLiteral literal) {
        return new Choice(literal.getInstance(), text(literal.getEEnum().getName(), literal.getLiteral()));
    }

    private List<Choice> heaters() {
        return session.catalogue().getHeaters().stream()
                .map(heater -> new Choice(heater.getId(), title(heater)))
                .toList();
    }

    private static String title(Heater heater) {
        return heater.getTitle() == null ? heater.getId() : heater.getTitle();
    }

    private List<Choice> pipes() {
        Survey survey = session.survey();
        return survey.getWater() == null
                ? List.of()
                : survey.getWater().getSegments().stream()
                        .map(PipeSegment::getName)
                        .filter(name -> name != null && !name.isBlank())
                        .map(name -> new Choice(name, name))
                        .toList();
    }

    private List<Choice> devices() {
        return titled(rules().devices().keys(), titles()::device);
    }

    private List<Choice> methods() {
        return titled(rules().methods(), key -> key + " \u2013 " + titles().method(key));
    }

    private RuleTitles titles() {
        return new RuleTitles(rules(), words.locale());
    }

    private RuleSet rules() {
        String id = session.survey().getRules();
        return id == null ? RuleSets.standard() : RuleSets.find(id).orElseGet(RuleSets::standard);
    }

    private static List<Choice> titled(List<String> values, Function<String, String> title) {
        return values.stream()
                .map(value -> new Choice(value, title.apply(value)))
                .toList();
    }

    /** Values that only messages know: the desktop's own, then those of the calculators. */
    private List<Choice> worded(String prefix) {
        Map<String, String> found = new LinkedHashMap<>();
        for (String each : Words.keys()) {
            if (each.startsWith(prefix)) {
                found.put(each.substring(prefix.length()), words.get(each));
            }
        }
        for (Calculator calculator : session.services().service().calculators()) {
            Texts texts = calculator.descriptor().texts();
            texts.keys().stream()
                    .filter(each -> each.startsWith(prefix))
                    .forEach(each ->
                            found.putIfAbsent(each.substring(prefix.length()), texts.get(words.locale(), each)));
        }
        return found.entrySet().stream()
                .map(entry -> new Choice(entry.getKey(), entry.getValue()))
                .toList();
    }

    private String text(String key, String value) {
        String text = words.find("choice." + key + "." + value);
        return text == null ? value : text;
    }
}
