// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.check.ReadingRange;
import twinfeed.model.io.InvalidValue;
import twinfeed.model.io.NearestName;
import twinfeed.model.survey.SurveyPackage.Literals;

/** Reads what was typed into the cell of a reading. */
final class FormText {
    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d+(?:\\.\\d+)?");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(?<=\\d),(?=\\d)");

    /** Words of catalogues and rule sets, of which the form may have had another one. */
    private static final Set<EAttribute> COMES_WITH_MEANING =
            Set.of(Literals.PRESENT_UNIT__HEATER_ID, Literals.PROTECTIVE_DEVICE__KIND, Literals.CABLE_SEGMENT__METHOD);

    private final FormLanguage language;
    private final EAttribute attribute;
    private final String unit;

    /**
     * For a reading.
     *
     * @param unit the unit that its label names
     */
    FormText(FormLanguage language, EAttribute attribute, String unit) {
        this.language = language;
        this.attribute = attribute;
        this.unit = unit;
    }

    /**
     * A value, or why there is none.
     *
     * @param value the value; null if the text is none
     */
    record Result(@Nullable Object value, String wrong, String right) {}

    /** Whether two words are the same but for capitals and spaces. */
    static boolean same(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }

    /** Reads it. */
    Result read(String typed, String tolerance) {
        String text = typed.strip();
        if (ReadingRange.kind(attribute).isPresent()) {
            return value(attribute.getEAttributeType(), quantity(point(text), point(tolerance.strip())));
        }
        if (!tolerance.isEmpty()) {
            return refused("noTolerance");
        }
        if (attribute.isMany()) {
            return new Result(
                    Arrays.stream(text.split(";"))
                            .map(String::strip)
                            .filter(one -> !one.isEmpty())
                            .toList(),
                    "",
                    "");
        }
        return word(text);
    }

    /** In German a comma is the decimal sign. */
    private String point(String text) {
        return language.locale().getLanguage().equals(Locale.GERMAN.getLanguage())
                ? DECIMAL_COMMA.matcher(text).replaceAll(".")
                : text;
    }

    private String quantity(String text, String tolerance) {
        String head = withUnit(text);
        if (tolerance.isEmpty()) {
            return head;
        }
        String spread = tolerance.startsWith("\u00b1") ? tolerance.substring(1).strip() : tolerance;
        return spread.startsWith("u ")
                ? head + " u " + withUnit(spread.substring(2).strip())
                : head + " \u00b1 " + withUnit(spread);
    }

    private String withUnit(String text) {
        return unit.isEmpty() || !NUMBER.matcher(text).matches() ? text : text + " " + unit;
    }

    private Result word(String text) {
        List<FormWords.Word> words = language.words(attribute);
        for (FormWords.Word word : words) {
            if (same(word.text(), text)) {
                return value(attribute.getEAttributeType(), word.value());
            }
        }
        boolean closed = attribute.getEAttributeType() instanceof EEnum
                || attribute.getEAttributeType().getInstanceClass() == Boolean.class;
        boolean known = words.stream().anyMatch(word -> word.value().equals(text));
        if (closed && !known) {
            List<String> texts = words.stream().map(FormWords.Word::text).toList();
            String nearest = NearestName.of(text, texts);
            String all = String.join("; ", texts);
            return new Result(
                    null,
                    language.text("wrong.word"),
                    nearest.isEmpty()
                            ? language.text("right.word", Map.of("all", all))
                            : language.text("right.nearWord", Map.of("nearest", nearest, "all", all)));
        }
        int meaning = COMES_WITH_MEANING.contains(attribute) ? text.indexOf(FormWords.MEANS) : -1;
        return value(attribute.getEAttributeType(), meaning < 0 ? text : text.substring(0, meaning));
    }

    private static Result value(EDataType type, String text) {
        InvalidValue fault = InvalidValue.of(type, text);
        return fault == null
                ? new Result(EcoreUtil.createFromString(type, text), "", "")
                : new Result(null, fault.wrong(), fault.right());
    }

    private Result refused(String key) {
        return new Result(null, language.text("wrong." + key), language.text("right." + key));
    }
}
