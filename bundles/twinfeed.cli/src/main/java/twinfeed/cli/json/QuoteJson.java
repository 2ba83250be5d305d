// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.QuoteCorrection;

/** A quote as JSON; what the customer must not see, cost and margin, is not in it. */
final class QuoteJson {
    private final JsonGenerator json;

    QuoteJson(JsonGenerator json) {
        this.json = json;
    }

    void write(Quote quote, List<String> dangers, OutputPaths written, @Nullable IssuedQuote issued)
            throws IOException {
        if (issued != null) {
            json.writeStringField("issued", issued.file().toString());
            json.writeStringField("digest", issued.digest());
        }
        JsonFields.text(json, "workbook", text(written.workbook()));
        JsonFields.text(json, "pdf", text(written.pdf()));
        JsonFields.text(json, "ubl", text(written.ubl()));
        JsonFields.text(json, "number", quote.getNumber());
        json.writeNumberField("revision", quote.getRevision());
        json.writeStringField("state", quote.getState().getLiteral());
        JsonFields.text(json, "decidedOn", day(quote.getDecidedOn()));
        JsonFields.text(json, "chosen", quote.getChosen());
        json.writeStringField("date", quote.getDate().toString());
        json.writeStringField("validUntil", quote.getValidUntil().toString());
        json.writeStringField("currency", quote.getCurrency());
        JsonFields.text(json, "rounding", quote.getRounding());
        JsonFields.text(json, "summary", quote.getSummary());
        JsonFields.texts(json, "dangers", dangers);
        JsonFields.texts(json, "reported", quote.getReported());
        JsonFields.text(json, "fault", quote.getFault());
        JsonFields.text(json, "repairLeftOut", quote.getRepairLeftOut());
        json.writeArrayFieldStart("options");
        for (QuoteOption option : quote.getOptions()) {
            option(option);
        }
        json.writeEndArray();
        JsonFields.texts(json, "assumptions", quote.getAssumptions());
        JsonFields.texts(json, "exclusions", quote.getExclusions());
        JsonFields.texts(json, "terms", quote.getTerms());
        JsonFields.texts(json, "cautions", quote.getCautions());
    }

    private static @Nullable String text(@Nullable Path file) {
        return file == null ? null : file.toString();
    }

    /** An issued quote as a line of a list: where it stands on a day, and which decisions were taken back. */
    void entry(IssuedEntry entry, LocalDate day) throws IOException {
        IssuedQuote issued = entry.issued();
        Quote quote = issued.quote();
        json.writeStartObject();
        json.writeStringField("file", issued.file().toString());
        json.writeStringField("name", issued.name());
        json.writeStringField("state", issued.stateOn(day).getLiteral());
        json.writeStringField("date", quote.getDate().toString());
        json.writeStringField("validUntil", quote.getValidUntil().toString());
        JsonFields.text(json, "decidedOn", day(quote.getDecidedOn()));
        JsonFields.text(json, "chosen", quote.getChosen());
        JsonFields.text(json, "customer", issued.customer());
        JsonFields.text(json, "site", issued.site());
        json.writeStringField("digest", issued.digest());
        json.writeBooleanField("unchanged", issued.unchanged());
        json.writeStringField("currency", quote.getCurrency());
        json.writeArrayFieldStart("options");
        for (QuoteOption option : quote.getOptions()) {
            json.writeStartObject();
            json.writeStringField("name", option.getName());
            json.writeStringField("title", option.getTitle());
            json.writeStringField("verdict", option.getVerdict().getLiteral());
            JsonFields.money(json, "total", option.getTotal());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("takenBack");
        for (QuoteCorrection one : entry.corrections()) {
            json.writeStartObject();
            json.writeStringField("state", one.was().getLiteral());
            json.writeStringField("decidedOn", one.decidedOn().toString());
            JsonFields.text(json, "chosen", one.chosen());
            json.writeStringField("on", one.on().toString());
            json.writeStringField("reason", one.reason());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static @Nullable String day(@Nullable LocalDate day) {
        return day == null ? null : day.toString();
    }

    private void option(QuoteOption option) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", option.getName());
        JsonFields.text(json, "heater", option.getHeaterId());
        JsonFields.text(json, "part", option.getPart());
        JsonFields.text(json, "repairWork", option.getRepairWork());
        json.writeStringField("title", option.getTitle());
        json.writeStringField("verdict", option.getVerdict().getLiteral());
        json.writeArrayFieldStart("sections");
        for (QuoteSection section : option.getSections()) {
            json.writeStartObject();
            json.writeStringField("key", section.getKey());
            json.writeStringField("title", section.getTitle());
            json.writeArrayFieldStart("lines");
            for (QuoteLine line : section.getLines()) {
                line(line);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
        JsonFields.money(json, "net", option.getNet());
        JsonFields.money(json, "tax", option.getTax());
        JsonFields.money(json, "total", option.getTotal());
        JsonFields.money(json, "showerCost", option.getShowerCost());
        JsonFields.texts(json, "enquiries", option.getEnquiries());
        json.writeEndObject();
    }

    private void line(QuoteLine line) throws IOException {
        json.writeStartObject();
        json.writeStringField("code", line.getCode());
        json.writeStringField("description", line.getDescription());
        json.writeStringField("quantity", line.getQuantity().toPlainString());
        json.writeStringField("unit", line.getUnit());
        JsonFields.money(json, "unitPrice", line.getUnitPrice());
        JsonFields.money(json, "net", line.getNet());
        JsonFields.text(json, "taxClass", line.getTaxClass());
        JsonFields.money(json, "taxRate", line.getTaxRate());
        JsonFields.money(json, "tax", line.getTax());
        JsonFields.text(json, "source", line.getSource());
        JsonFields.text(json, "reason", line.getReason());
        JsonFields.text(json, "note", line.getNote());
        json.writeEndObject();
    }
}
