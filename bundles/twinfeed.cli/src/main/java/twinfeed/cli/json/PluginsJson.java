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

    void write(List<CalculatorDescriptor> descriptors) throws IOException {
        json.writeArrayFieldStart("plugins");
        for (CalculatorDescriptor descriptor : descriptors) {
            json.writeStartObject();
            json.writeStringField("id", descriptor.id());
            json.writeStringField("version", descriptor.version());
            json.writeStringField("title", descriptor.texts().get(Locale.ROOT, "title"));
            JsonFields.texts(
                    json,
                    "takes",
                    descriptor.consumes().stream().map(SharedQuantity::name).toList());
            JsonFields.texts(
                    json,
                    "gives",
                    descriptor.provides().stream().map(SharedQuantity::name).toList());
            json.writeArrayFieldStart("checks");
            for (Check check : descriptor.checks()) {
                check(descriptor, check);
            }
            json.writeEndArray();
            JsonFields.texts(
                    json,
                    "parameters",
                    descriptor.parameters().stream().map(each -> each.key()).toList());
            JsonFields.texts(
                    json,
                    "formulas",
                    descriptor.formulas().stream().map(each -> each.name()).toList());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void check(CalculatorDescriptor descriptor, Check check) throws IOException {
        json.writeStartObject();
        json.writeStringField("key", check.key());
        json.writeStringField("title", descriptor.texts().get(Locale.ROOT, "check." + check.key()));
        json.writeStringField("class", check.kind().name().toLowerCase(Locale.ROOT));
        json.writeStringField("unit", check.unit().symbol());
        JsonFields.texts(json, "needs", check.needs());
        json.writeEndObject();
    }
}
