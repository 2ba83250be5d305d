// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.Step;

/** Members that are left out where there is nothing to say. */
final class JsonFields {
    private JsonFields() {}

    static void text(JsonGenerator json, String name, @Nullable String value) throws IOException {
        if (value != null && !value.isEmpty()) {
            json.writeStringField(name, value);
        }
    }

    /** A line of a working; the object begins and ends elsewhere. */
    static void step(JsonGenerator json, Step step) throws IOException {
        json.writeStringField("symbol", step.getSymbol());
        json.writeStringField("meaning", step.getMeaning());
        json.writeNumberField("value", step.getValue());
        text(json, "unit", step.getUnit());
        text(json, "expression", step.getExpression());
        text(json, "source", step.getSource());
    }

    static void number(JsonGenerator json, String name, @Nullable Double value) throws IOException {
        if (value != null) {
            json.writeNumberField(name, value);
        }
    }

    static void money(JsonGenerator json, String name, @Nullable BigDecimal value) throws IOException {
        if (value != null) {
            json.writeStringField(name, value.toPlainString());
        }
    }

    static void texts(JsonGenerator json, String name, List<String> values) throws IOException {
        if (!values.isEmpty()) {
            json.writeArrayFieldStart(name);
            for (String value : values) {
                json.writeString(value);
            }
            json.writeEndArray();
        }
    }
}
