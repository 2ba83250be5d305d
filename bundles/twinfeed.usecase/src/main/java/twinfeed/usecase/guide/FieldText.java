// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.guide;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import twinfeed.calculator.Calculator;
import twinfeed.model.check.ReadingRange;
import twinfeed.model.text.ModelDocs;
import twinfeed.units.Kind;
import twinfeed.units.text.Texts;
import twinfeed.usecase.form.SurveyWords;
import twinfeed.workbook.form.FormLanguage;
import twinfeed.workbook.form.FormWords;

/** What an attribute is in a file: how it is written, its unit or words, an example, and what it means. */
final class FieldText {
    private static final Texts TEXTS = new Texts(FieldText.class, "Guide");

    /** Examples that are the same in every language: codes, ids and words of files. */
    private static final Map<String, String> CODES = Map.ofEntries(
            Map.entry("PipeSegment.size", "15 mm"),
            Map.entry("PresentUnit.heaterId", "h85"),
            Map.entry("ProtectiveDevice.kind", "breaker-b"),
            Map.entry("ResidualDevice.type", "A"),
            Map.entry("Site.reference", "NQ-0110"),
            Map.entry("Survey.candidates", "h85; h95"),
            Map.entry("Symptom.key", "weakFlowHere"),
            Map.entry("WaterFeed.backflowProtection", "double-check-valve"),
            Map.entry("WaterTest.takenAt", "08:10"));

    private final Locale locale;
    private final FormLanguage words;

    FieldText(List<Calculator> calculators, Locale locale) {
        this.locale = locale;
        this.words = new FormLanguage(locale, new SurveyWords(calculators, locale, null, null));
    }

    /** What it means, with its usual range. */
    String meaning(EAttribute attribute) {
        String usual = ReadingRange.of(attribute).map(ReadingRange::usual).orElse("");
        String docs = ModelDocs.printed(attribute, locale);
        return usual.isEmpty() ? docs : docs + " " + text("usual", Map.of("range", usual));
    }

    /** How it is written. */
    String form(EAttribute attribute) {
        Kind kind = ReadingRange.kind(attribute).orElse(null);
        String form;
        if (kind != null) {
            form = text(
                    "form.quantity",
                    Map.of("example", example(attribute), "units", String.join(", ", units(attribute, kind))));
        } else if (attribute.getEAttributeType() instanceof EEnum list) {
            form = text("form.words", Map.of("words", literals(list)));
        } else {
            form = other(attribute);
        }
        return attribute.isMany() ? form + ", " + text("form.several") : form;
    }

    /** The unit in which it is asked for comes first. */
    private static Set<String> units(EAttribute attribute, Kind kind) {
        Set<String> units = new LinkedHashSet<>();
        units.add(ReadingRange.unit(attribute));
        units.addAll(kind.unitSymbols());
        units.remove("");
        return units;
    }

    private String other(EAttribute attribute) {
        List<FormWords.Word> known = words.words(attribute);
        if (!known.isEmpty()) {
            return text(
                    "form.words",
                    Map.of("words", known.stream().map(FormWords.Word::value).collect(Collectors.joining(", "))));
        }
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == LocalDate.class) {
            return text("form.day");
        }
        if (type == Integer.class || type == int.class) {
            return text("form.whole");
        }
        return type == BigDecimal.class || type == Double.class ? text("form.number") : text("form.text");
    }

    /** What each word of a closed list means, where the word does not say so itself. */
    List<String> meanings(EAttribute attribute) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        return type == Boolean.class
                ? List.of()
                : words.words(attribute).stream()
                        .filter(word -> !plain(word.text()).equals(plain(word.value())))
                        .map(word -> word.text().startsWith(word.value() + FormWords.MEANS)
                                ? word.text()
                                : word.value() + FormWords.MEANS + word.text())
                        .toList();
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", "");
    }

    /** An example of how a value is written: a typical one where there is one, for other words the first of them. */
    String example(EAttribute attribute) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        String name = attribute.getEContainingClass().getName() + "." + attribute.getName();
        String code = CODES.get(name);
        if (code != null || TEXTS.has("example." + name)) {
            return code != null ? code : text("example." + name);
        }
        ReadingRange range = ReadingRange.of(attribute).orElse(null);
        if (range != null) {
            return range.example();
        }
        if (ReadingRange.kind(attribute).isPresent()) {
            return ("1 " + ReadingRange.unit(attribute)).strip();
        }
        if (attribute.getEAttributeType() instanceof EEnum list) {
            return list.getELiterals().get(0).getLiteral();
        }
        if (!words.words(attribute).isEmpty()) {
            return words.words(attribute).get(0).value();
        }
        return type == LocalDate.class ? "2026-10-06" : type == Integer.class ? "1" : text("example.text");
    }

    /** The unit, or the words that are right; empty for free text. */
    String unit(EAttribute attribute) {
        if (ReadingRange.kind(attribute).isPresent()) {
            return ReadingRange.unit(attribute);
        }
        String form = form(attribute);
        return form.equals(text("form.text")) ? "" : form;
    }

    private static String literals(EEnum list) {
        return list.getELiterals().stream().map(EEnumLiteral::getLiteral).collect(Collectors.joining(", "));
    }

    private String text(String key) {
        return TEXTS.get(locale, key);
    }

    private String text(String key, Map<String, ?> values) {
        return TEXTS.format(locale, key, values);
    }
}
