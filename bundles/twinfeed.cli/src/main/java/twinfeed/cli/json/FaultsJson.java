// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import twinfeed.diagnosis.repair.RepairAdvice;
import twinfeed.diagnosis.visit.FaultSheet;

/** A fault-finding as JSON. */
final class FaultsJson {
    private final JsonGenerator json;

    FaultsJson(JsonGenerator json) {
        this.json = json;
    }

    @FunctionalInterface
    private interface Body<T> {
        void write(T value) throws IOException;
    }

    void write(FaultSheet sheet) throws IOException {
        json.writeStringField("heater", sheet.heater());
        json.writeStringField("conclusion", sheet.conclusion());
        json.writeStringField("summary", sheet.summary());
        json.writeNumberField("several", sheet.several());
        list("causes", sheet.causes(), this::cause);
        next(sheet.next());
        list("answers", sheet.answers(), this::answer);
        list("readings", sheet.readings(), this::reading);
        list("isolation", sheet.isolation(), this::tick);
        JsonFields.text(json, "isolationNotice", sheet.isolationNotice());
        JsonFields.texts(json, "links", sheet.links());
        JsonFields.texts(json, "steps", sheet.steps());
        list("expected", sheet.expected(), each -> {
            json.writeStringField("title", each.title());
            json.writeStringField("value", each.value());
        });
        repair(sheet.repair());
        JsonFields.texts(json, "notices", sheet.notices());
        json.writeNumberField("unanswered", sheet.unanswered());
        json.writeStringField("source", sheet.source());
        JsonFields.texts(json, "cautions", sheet.cautions());
    }

    private <T> void list(String name, java.util.List<T> values, Body<T> body) throws IOException {
        json.writeArrayFieldStart(name);
        for (T value : values) {
            json.writeStartObject();
            body.write(value);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void cause(FaultSheet.Cause cause) throws IOException {
        json.writeStringField("part", cause.part());
        json.writeStringField("title", cause.title());
        json.writeNumberField("prior", cause.prior());
        json.writeNumberField("chance", cause.chance());
        json.writeStringField("reason", cause.reason());
        JsonFields.texts(json, "codes", cause.codes());
    }

    private void next(FaultSheet.@Nullable Next next) throws IOException {
        if (next == null) {
            return;
        }
        json.writeObjectFieldStart("next");
        json.writeStringField("observation", next.observation());
        json.writeStringField("question", next.question());
        json.writeStringField("place", next.place());
        json.writeNumberField("minutes", next.minutes());
        json.writeNumberField("informationBits", next.informationBits());
        JsonFields.texts(json, "procedure", next.procedure());
        json.writeEndObject();
    }

    private void answer(FaultSheet.Answer answer) throws IOException {
        json.writeStringField("observation", answer.observation());
        json.writeStringField("question", answer.question());
        json.writeStringField("answer", answer.answer());
        json.writeStringField("origin", answer.origin());
        JsonFields.text(json, "note", answer.note());
    }

    private void reading(FaultSheet.Reading reading) throws IOException {
        json.writeStringField("title", reading.title());
        json.writeStringField("value", reading.value());
        JsonFields.text(json, "expected", reading.expected());
        Boolean sound = reading.sound();
        if (sound != null) {
            json.writeBooleanField("sound", sound);
        }
    }

    private void tick(FaultSheet.Tick tick) throws IOException {
        json.writeStringField("step", tick.step());
        json.writeStringField("title", tick.title());
        json.writeBooleanField("done", tick.done());
        JsonFields.text(json, "by", tick.by());
        JsonFields.text(json, "at", tick.at());
    }

    private void repair(@Nullable RepairAdvice advice) throws IOException {
        if (advice == null) {
            return;
        }
        json.writeObjectFieldStart("repair");
        json.writeStringField("currency", advice.currency());
        list("lines", advice.lines(), line -> {
            json.writeStringField("title", line.title());
            JsonFields.money(json, "amount", line.amount());
        });
        JsonFields.money(json, "repair", advice.repair());
        JsonFields.money(json, "later", advice.later());
        JsonFields.money(json, "total", advice.total());
        json.writeNumberField("years", advice.years());
        list("replacements", advice.replacements(), this::replacement);
        Integer age = advice.breakEvenAge();
        if (age != null) {
            json.writeNumberField("breakEvenAge", age.intValue());
        }
        JsonFields.money(json, "breakEvenPrice", advice.breakEvenPrice());
        json.writeStringField("sentence", advice.sentence());
        JsonFields.texts(json, "assumptions", advice.assumptions());
        JsonFields.texts(json, "missing", advice.missing());
        json.writeEndObject();
    }

    private void replacement(RepairAdvice.Replacement each) throws IOException {
        json.writeStringField("heater", each.heater());
        json.writeStringField("title", each.title());
        JsonFields.money(json, "price", each.price());
        JsonFields.money(json, "later", each.later());
        JsonFields.money(json, "total", each.total());
        json.writeBooleanField("enquiry", each.enquiry());
    }
}
