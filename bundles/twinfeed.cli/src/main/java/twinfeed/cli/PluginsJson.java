// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import twinfeed.calculator.Check;
import twinfeed.calculator.ExchangeKey;
import twinfeed.calculator.Statement;

/** Calculators as JSON. */
final class PluginsJson {
    private final JsonGenerator json;

    PluginsJson(JsonGenerator json) {
        this.json = json;
    }

    void write(List<Statement> statements) throws IOException {
        json.writeArrayFieldStart("plugins");
        for (Statement statement : statements) {
            json.writeStartObject();
            json.writeStringField("id", statement.id());
            json.writeStringField("version", statement.version());
            json.writeStringField("title", statement.texts().get(Face.LOCALE, "title"));
            JsonFields.texts(
                    json,
                    "takes",
                    statement.takes().stream().map(ExchangeKey::name).toList());
            JsonFields.texts(
                    json,
                    "gives",
                    statement.gives().stream().map(ExchangeKey::name).toList());
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

    private void check(Statement statement, Check check) throws IOException {
        json.writeStartObject();
        json.writeStringField("key", check.key());
        json.writeStringField("title", statement.texts().get(Face.LOCALE, "check." + check.key()));
        json.writeStringField("class", check.kind().name().toLowerCase(Locale.ROOT));
        json.writeStringField("unit", check.unit());
        JsonFields.texts(json, "needs", check.needs());
        json.writeEndObject();
    }
}
