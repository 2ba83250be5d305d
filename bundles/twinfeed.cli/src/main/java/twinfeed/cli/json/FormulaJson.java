// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import twinfeed.calculator.formula.Parameter;
import twinfeed.model.assessment.Step;
import twinfeed.units.Kind;
import twinfeed.units.Quantities;
import twinfeed.usecase.FormulaAnswer;
import twinfeed.usecase.NamedFormula;

/** Formulas and their answers as JSON. */
final class FormulaJson {
    private final JsonGenerator json;
    private final Locale locale;

    FormulaJson(JsonGenerator json, Locale locale) {
        this.json = json;
        this.locale = locale;
    }

    void answer(NamedFormula formula, FormulaAnswer answer, int digits) throws IOException {
        json.writeStringField("formula", formula.name());
        json.writeArrayFieldStart("results");
        for (FormulaAnswer.Result result : answer.results()) {
            json.writeStartObject();
            json.writeStringField("key", result.key());
            json.writeStringField("title", result.title());
            json.writeNumberField("value", result.si());
            json.writeStringField("unit", result.kind().symbol());
            json.writeStringField("text", Quantities.format(result.kind(), result.si(), digits));
            json.writeEndObject();
        }
        json.writeEndArray();
        if (answer.refused()) {
            json.writeStringField("trouble", answer.trouble().key());
            json.writeStringField("troubleText", answer.trouble().text());
        }
        List<FormulaAnswer.Note> warnings = answer.warnings();
        JsonFields.texts(
                json, "warnings", warnings.stream().map(FormulaAnswer.Note::key).toList());
        JsonFields.texts(
                json,
                "warningTexts",
                warnings.stream().map(FormulaAnswer.Note::text).toList());
        working(answer.steps());
    }

    private void working(List<Step> steps) throws IOException {
        json.writeArrayFieldStart("working");
        for (Step step : steps) {
            json.writeStartObject();
            JsonFields.step(json, step);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    void formulas(List<NamedFormula> formulas) throws IOException {
        json.writeArrayFieldStart("formulas");
        for (NamedFormula formula : formulas) {
            json.writeStartObject();
            json.writeStringField("name", formula.name());
            json.writeStringField("calculator", formula.calculator());
            json.writeStringField("help", formula.text(locale, "formula." + formula.name()));
            json.writeArrayFieldStart("parameters");
            for (Parameter parameter : formula.formula().parameters()) {
                parameter(formula, parameter);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void parameter(NamedFormula formula, Parameter parameter) throws IOException {
        json.writeStartObject();
        json.writeStringField("key", parameter.key());
        json.writeStringField("help", formula.text(locale, "parameter." + parameter.key()));
        json.writeBooleanField("required", parameter.required());
        Kind kind = parameter.kind();
        if (kind != null) {
            json.writeStringField("kind", kind.name().toLowerCase(Locale.ROOT));
            json.writeStringField("unit", kind.symbol());
            json.writeNumberField("least", parameter.least());
            json.writeNumberField("most", parameter.most());
            JsonFields.number(json, "fallback", parameter.defaultValue());
        } else {
            JsonFields.texts(json, "words", parameter.words());
            JsonFields.text(json, "fallbackWord", parameter.defaultWord());
        }
        json.writeEndObject();
    }
}
