// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
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
import twinfeed.model.survey.WaterFeed;
import twinfeed.units.text.Texts;

/**
 * The answers that can be picked: the words of the model, and what catalogue, rule set and survey know. Calculators bring
 * words of their own by messages {@code choice.CLASS.FEATURE.VALUE} and questions about faults by {@code question.KEY}.
 */
public final class Choices {
    private final Supplier<Survey> survey;
    private final Supplier<List<Heater>> heaters;
    private final List<Calculator> calculators;
    private final Words words;

    /** For one job in one language. */
    public Choices(JobSession session, Words words) {
        this(
                session::survey,
                () -> session.catalogue().getHeaters(),
                session.services().service().calculators(),
                words);
    }

    private Choices(
            Supplier<Survey> survey, Supplier<List<Heater>> heaters, List<Calculator> calculators, Words words) {
        this.survey = survey;
        this.heaters = heaters;
        this.calculators = List.copyOf(calculators);
        this.words = words;
    }

    /** For a survey without its catalogue of heaters. */
    static Choices of(Survey survey, List<Calculator> calculators, Words words) {
        return new Choices(() -> survey, List::of, calculators, words);
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

    /** What a person reads for an answer; empty for one of which only the person knows. */
    Optional<String> text(EAttribute attribute, Object answer) {
        return known(attribute).stream()
                .filter(each -> answer.equals(each.value()))
                .map(Choice::text)
                .findFirst();
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
            default -> worded("choice." + key + ".");
        };
    }

    private Choice literal(EEnumLiteral literal) {
        return new Choice(literal.getInstance(), text(literal.getEEnum().getName(), literal.getLiteral()));
    }

    private List<Choice> heaters() {
        return heaters.get().stream()
                .map(heater -> new Choice(heater.getId(), title(heater)))
                .toList();
    }

    private static String title(Heater heater) {
        return heater.getTitle() == null ? heater.getId() : heater.getTitle();
    }

    private List<Choice> pipes() {
        WaterFeed water = survey.get().getWater();
        return water == null
                ? List.of()
                : water.getSegments().stream()
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
        String id = survey.get().getRules();
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
        for (Calculator calculator : calculators) {
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
