// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.calculator.Check;
import twinfeed.calculator.SharedQuantity;

/** Calculators as JSON. */
final class PluginsJson {
    private final JsonGenerator json;

    PluginsJson(JsonGenerator json) {
        this.json = json;
    }

    void write(List<CalculatorDescriptor> statements) throws IOException {
        json.writeArrayFieldStart("plugins");
        for (CalculatorDescriptor statement : statements) {
            json.writeStartObject();
            json.writeStringField("id", statement.id());
            json.writeStringField("version", statement.version());
            json.writeStringField("title", statement.texts().get(Locale.ROOT, "title"));
            JsonFields.texts(
                    json,
                    "takes",
                    statement.takes().stream().map(SharedQuantity::name).toList());
            JsonFields.texts(
                    json,
                    "gives",
                    statement.gives().stream().map(SharedQuantity::name).toList());
            json.writeArrayFieldStart("checks");
            for (Check check : statement.checks()) {
                check(statement, check);
            }
            json.writeEndArray();
            JsonFields.texts(
                    json,
                    "parameters",
                    statement.parameters().stream().map(each -> each.key()).toList());
            JsonFields.texts(
                    json,
                    "formulas",
                    statement.formulas().stream().map(each -> each.name()).toList());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void check(CalculatorDescriptor statement, Check check) throws IOException {
        json.writeStartObject();
        json.writeStringField("key", check.key());
        json.writeStringField("title", statement.texts().get(Locale.ROOT, "check." + check.key()));
        json.writeStringField("class", check.kind().name().toLowerCase(Locale.ROOT));
        json.writeStringField("unit", check.unit().symbol());
        JsonFields.texts(json, "needs", check.needs());
        json.writeEndObject();
    }
}
