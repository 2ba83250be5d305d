// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.MinimalPrettyPrinter;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.model.rows.CsvLines;

/** Writes results one line a dwelling, as CSV (RFC 4180, with a head) or as JSON lines; UTF-8, lines end in a line feed. */
abstract class ResultLines {
    private ResultLines() {}

    /** For a form other than the workbook. */
    static ResultLines of(ResultForm form, OutputStream out) throws IOException {
        return form == ResultForm.CSV ? new Csv(out) : new JsonLines(out);
    }

    /** Writes one line, in the order of {@link ResultLine#KEYS}. */
    abstract void write(List<@Nullable Object> line) throws IOException;

    /** Ends it; the stream stays open. */
    abstract void finish() throws IOException;

    private static final class Csv extends ResultLines {
        private final Writer text;
        private final CsvLines lines;

        Csv(OutputStream stream) throws IOException {
            text = new OutputStreamWriter(stream, StandardCharsets.UTF_8);
            lines = new CsvLines(text);
            lines.write(ResultLine.KEYS);
        }

        @Override
        void write(List<@Nullable Object> line) throws IOException {
            lines.write(line);
        }

        @Override
        void finish() throws IOException {
            text.flush();
        }
    }

    private static final class JsonLines extends ResultLines {
        private final JsonGenerator json;

        JsonLines(OutputStream stream) throws IOException {
            json = new JsonFactory().createGenerator(stream);
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            json.setPrettyPrinter(new MinimalPrettyPrinter("\n"));
        }

        @Override
        void write(List<@Nullable Object> line) throws IOException {
            json.writeStartObject();
            for (int i = 0; i < line.size(); i++) {
                Object value = line.get(i);
                if (value instanceof Integer number) {
                    json.writeNumberField(ResultLine.KEYS.get(i), number);
                } else if (value instanceof BigDecimal amount) {
                    json.writeNumberField(ResultLine.KEYS.get(i), amount);
                } else if (value != null && !value.equals("")) {
                    json.writeStringField(ResultLine.KEYS.get(i), value.toString());
                }
            }
            json.writeEndObject();
        }

        @Override
        void finish() throws IOException {
            json.writeRaw('\n');
            json.flush();
        }
    }
}
