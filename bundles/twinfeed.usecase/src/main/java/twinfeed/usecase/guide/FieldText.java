// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.guide;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import twinfeed.workbook.form.FormWords;

/** What an attribute is in a file: how it is written, its unit or words, an example, and what it means. */
final class FieldText {
    private static final Texts TEXTS = new Texts(FieldText.class, "Guide");

    private final FormWords words;

    FieldText(List<Calculator> calculators) {
        this.words = new SurveyWords(calculators, Locale.ROOT, null, null);
    }

    /** What it means, with its usual range. */
    String meaning(EAttribute attribute) {
        String usual = ReadingRange.of(attribute).map(ReadingRange::usual).orElse("");
        String docs = ModelDocs.printed(attribute);
        return usual.isEmpty() ? docs : docs + " " + text("usual", Map.of("range", usual));
    }

    /** How it is written. */
    String form(EAttribute attribute) {
        Kind kind = ReadingRange.kind(attribute).orElse(null);
        String form;
        if (kind != null) {
            form = text(
                    "form.quantity",
                    Map.of("example", example(attribute), "units", String.join(", ", kind.unitSymbols())));
        } else if (attribute.getEAttributeType() instanceof EEnum list) {
            form = text("form.words", Map.of("words", literals(list)));
        } else {
            form = other(attribute);
        }
        return attribute.isMany() ? form + ", " + text("form.several") : form;
    }

    private String other(EAttribute attribute) {
        List<FormWords.Word> known = words.of(attribute);
        if (!known.isEmpty()) {
            return text(
                    "form.words",
                    Map.of("words", known.stream().map(FormWords.Word::value).collect(Collectors.joining(", "))));
        }
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        if (type == Boolean.class) {
            return text("form.words", Map.of("words", "true, false"));
        }
        if (type == LocalDate.class) {
            return text("form.day");
        }
        if (type == Integer.class || type == int.class) {
            return text("form.whole");
        }
        return type == BigDecimal.class || type == Double.class ? text("form.number") : text("form.text");
    }

    /** An example of how a value is written; for words the first of them. */
    String example(EAttribute attribute) {
        Class<?> type = attribute.getEAttributeType().getInstanceClass();
        ReadingRange range = ReadingRange.of(attribute).orElse(null);
        if (range != null && !range.to().isEmpty()) {
            return range.to();
        }
        if (ReadingRange.kind(attribute).isPresent()) {
            return ("1 " + ReadingRange.unit(attribute)).strip();
        }
        if (attribute.getEAttributeType() instanceof EEnum list) {
            return list.getELiterals().get(0).getLiteral();
        }
        if (!words.of(attribute).isEmpty()) {
            return words.of(attribute).get(0).value();
        }
        return type == Boolean.class
                ? "true"
                : type == LocalDate.class ? "2026-10-06" : type == Integer.class ? "1" : text("example.text");
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

    private static String text(String key) {
        return TEXTS.get(Locale.ROOT, key);
    }

    private static String text(String key, Map<String, ?> values) {
        return TEXTS.format(Locale.ROOT, key, values);
    }
}
