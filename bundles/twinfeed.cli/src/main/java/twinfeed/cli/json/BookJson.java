// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import twinfeed.usecase.BookReport;
import twinfeed.usecase.batch.BatchReport;
import twinfeed.usecase.batch.Refused;

/** What came of a price list or of a list of dwellings, as JSON. */
final class BookJson {
    private final JsonGenerator json;

    BookJson(JsonGenerator json) {
        this.json = json;
    }

    void write(BookReport report) throws IOException {
        json.writeBooleanField("usable", report.text() != null);
        JsonFields.texts(json, "added", report.added());
        json.writeArrayFieldStart("changed");
        for (BookReport.Change change : report.changed()) {
            json.writeStartObject();
            JsonFields.text(json, "code", change.code());
            json.writeStringField("field", change.field());
            JsonFields.text(json, "before", change.before());
            JsonFields.text(json, "after", change.after());
            json.writeEndObject();
        }
        json.writeEndArray();
        JsonFields.texts(json, "removed", report.removed());
        JsonFields.texts(json, "refused", report.refused());
        JsonFields.texts(json, "notices", report.notices());
        lacking(report.lacking());
    }

    private void lacking(List<BookReport.Lack> lacking) throws IOException {
        if (lacking.isEmpty()) {
            return;
        }
        json.writeArrayFieldStart("lacking");
        for (BookReport.Lack lack : lacking) {
            json.writeStartObject();
            json.writeStringField("need", lack.need().name().toLowerCase(Locale.ROOT));
            JsonFields.text(json, "subject", lack.subject());
            JsonFields.texts(json, "codes", lack.codes());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    void batch(BatchReport report, Path written) throws IOException {
        json.writeStringField("result", written.toString());
        json.writeNumberField("judged", report.judged());
        json.writeNumberField("offered", report.offered());
        json.writeNumberField("estimates", report.estimates());
        json.writeNumberField("unanswered", report.unanswered());
        json.writeNumberField("unsafe", report.unsafe());
        json.writeNumberField("complaints", report.complaints());
        json.writeNumberField("rejected", report.rejected());
        json.writeNumberField("before", report.before());
        json.writeArrayFieldStart("refused");
        for (Refused one : report.refused()) {
            json.writeStartObject();
            json.writeNumberField("row", one.row());
            JsonFields.text(json, "dwelling", one.dwelling());
            json.writeStringField("reason", one.reason());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
