// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import twinfeed.diagnosis.completion.CompletionReading;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.usecase.completion.PartsListWriter.Part;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;

/** What comes after the work, as JSON. */
final class AfterWorkJson {
    private final JsonGenerator json;

    AfterWorkJson(JsonGenerator json) {
        this.json = json;
    }

    void completion(CompletionSheet sheet) throws IOException {
        json.writeStringField("state", sheet.state());
        json.writeBooleanField("fitted", sheet.fitted());
        JsonFields.texts(json, "works", sheet.works());
        json.writeArrayFieldStart("readings");
        for (CompletionReading each : sheet.readings()) {
            json.writeStartObject();
            json.writeStringField("field", each.key());
            json.writeStringField("title", each.title());
            JsonFields.text(json, "value", each.value());
            JsonFields.text(json, "expected", each.expected());
            if (each.sound() != null) {
                json.writeBooleanField("sound", each.sound());
            }
            json.writeBooleanField("safety", each.safety());
            json.writeBooleanField("needed", each.needed());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    void notice(List<Reason> reasons) throws IOException {
        json.writeArrayFieldStart("reasons");
        for (Reason each : reasons) {
            json.writeStartObject();
            json.writeStringField("key", each.key());
            json.writeStringField("title", each.title());
            json.writeStringField("text", each.text());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    void parts(String quote, List<Part> parts) throws IOException {
        json.writeStringField("quote", quote);
        json.writeArrayFieldStart("parts");
        for (Part each : parts) {
            json.writeStartObject();
            json.writeStringField("code", each.code());
            json.writeStringField("description", each.description());
            json.writeNumberField("quantity", each.quantity());
            json.writeStringField("unit", each.unit());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
