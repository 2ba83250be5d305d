// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli.json;

import com.fasterxml.jackson.core.JsonEncoding;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.io.InputProblem;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.BookReport;
import twinfeed.usecase.FormulaAnswer;
import twinfeed.usecase.NamedFormula;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.batch.BatchReport;
import twinfeed.usecase.completion.PartsListWriter.Part;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;
import twinfeed.usecase.quote.FolderCheck;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.QuoteDifference;

/**
 * Prints one JSON document. Each has a member {@code schema} that names its form and version; the schemas stand under
 * {@code twinfeed/cli/schema}. Numbers are in the unit that a member {@code unit} names, money is text with all its places.
 */
public final class JsonReport {
    private final OutputStream out;
    private final String cautions;

    /**
     * To a stream, which stays open.
     *
     * @param cautions what ends every answer that somebody may act on
     */
    public JsonReport(OutputStream out, String cautions) {
        this.out = out;
        this.cautions = cautions;
    }

    @FunctionalInterface
    private interface Body {
        void write(JsonGenerator json) throws IOException;
    }

    private void document(String schema, Body body) {
        JsonFactory factory = JsonFactory.builder()
                .configure(com.fasterxml.jackson.core.StreamWriteFeature.AUTO_CLOSE_TARGET, false)
                .build();
        try (JsonGenerator json = factory.createGenerator(out, JsonEncoding.UTF8)) {
            json.useDefaultPrettyPrinter();
            json.writeStartObject();
            json.writeStringField("schema", "urn:twinfeed:json:" + schema + ":1");
            body.write(json);
            json.writeEndObject();
            json.writeRaw('\n');
        } catch (IOException unwritable) {
            throw new UncheckedIOException("JSON", unwritable);
        }
    }

    /** All findings of every option; with workings and curves if asked. */
    public void assessment(AssessedJob judged, boolean workings) {
        document("assessment", json -> {
            new AssessmentJson(json, workings).write(judged.record());
            json.writeStringField("cautions", cautions);
        });
    }

    /**
     * A quote with the files that were written, and its number if it was issued.
     *
     * @param dangers what of the shower as it is, and of what was reported, can be a danger
     */
    public void quote(Quote quote, List<String> dangers, OutputPaths written, @Nullable IssuedQuote issued) {
        document("quote", json -> new QuoteJson(json).write(quote, dangers, written, issued));
    }

    /** The issued quotes of an office. */
    public void issued(List<IssuedEntry> entries, LocalDate day) {
        document("issued", json -> {
            json.writeArrayFieldStart("quotes");
            for (IssuedEntry entry : entries) {
                new QuoteJson(json).entry(entry, day);
            }
            json.writeEndArray();
        });
    }

    /** The readings after the work. */
    public void completion(CompletionSheet sheet) {
        document("completion", json -> new AfterWorkJson(json).completion(sheet));
    }

    /** Why a unit is unsafe. */
    public void notice(List<Reason> reasons) {
        document("notice", json -> new AfterWorkJson(json).notice(reasons));
    }

    /** The parts of an accepted quote. */
    public void parts(String quote, List<Part> parts) {
        document("parts", json -> new AfterWorkJson(json).parts(quote, parts));
    }

    /** What is wrong with the unit that is there. */
    public void faults(FaultSheet sheet) {
        document("faults", json -> new FaultsJson(json).write(sheet));
    }

    /** The answer of a formula; digits are the significant ones of its texts. */
    public void answer(NamedFormula formula, FormulaAnswer answer, int digits, Locale locale) {
        document("answer", json -> {
            new FormulaJson(json, locale).answer(formula, answer, digits);
            json.writeStringField("cautions", cautions);
        });
    }

    /** The formulas that can be asked, with their parameters. */
    public void formulas(List<NamedFormula> formulas, Locale locale) {
        document("formulas", json -> new FormulaJson(json, locale).formulas(formulas));
    }

    /** What differs between the revisions of a quote. */
    public void comparison(List<IssuedQuote> quotes, List<QuoteDifference> differences) {
        document("comparison", json -> {
            json.writeArrayFieldStart("quotes");
            for (IssuedQuote quote : quotes) {
                json.writeStartObject();
                json.writeStringField("file", quote.file().toString());
                json.writeStringField("name", quote.name());
                json.writeBooleanField("unchanged", quote.unchanged());
                json.writeStringField("verification", quote.verification(Locale.ENGLISH));
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("differences");
            for (QuoteDifference one : differences) {
                json.writeStartObject();
                json.writeStringField("kind", one.kind());
                JsonFields.text(json, "option", one.option());
                JsonFields.text(json, "section", one.section());
                JsonFields.text(json, "code", one.code());
                JsonFields.text(json, "field", one.field());
                JsonFields.text(json, "before", one.before());
                JsonFields.text(json, "after", one.after());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    /** Why there is no answer, with the exit status. */
    public void failure(int status, List<InputProblem> problems) {
        document("error", json -> {
            json.writeNumberField("status", status);
            json.writeArrayFieldStart("problems");
            for (InputProblem problem : problems) {
                json.writeStartObject();
                JsonFields.text(json, "file", problem.file());
                if (problem.line() > 0) {
                    json.writeNumberField("line", problem.line());
                }
                JsonFields.text(json, "element", problem.element());
                JsonFields.text(json, "reading", problem.reading());
                json.writeStringField("wrong", problem.wrong());
                JsonFields.text(json, "right", problem.right());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    /** Whether the quotes of a folder are as they were issued. */
    public void verification(FolderCheck check) {
        document("verification", json -> {
            json.writeBooleanField("sound", check.sound());
            json.writeArrayFieldStart("quotes");
            for (FolderCheck.Quote quote : check.quotes()) {
                json.writeStartObject();
                json.writeStringField("file", quote.file().toString());
                JsonFields.text(json, "name", quote.name());
                json.writeStringField("status", quote.status());
                json.writeStringField("text", quote.text());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeArrayFieldStart("missing");
            for (FolderCheck.Missing one : check.missing()) {
                json.writeStartObject();
                json.writeStringField("name", one.name());
                json.writeStringField("kind", one.kind());
                json.writeEndObject();
            }
            json.writeEndArray();
        });
    }

    /** What a price book holds and what it lacks. */
    public void book(BookReport report) {
        document("book", json -> new BookJson(json).write(report));
    }

    /** How a list of dwellings came out, and the workbook that was written. */
    public void batch(BatchReport report, Path written) {
        document("batch", json -> new BookJson(json).batch(report, written));
    }

    /** The calculators and what they declare. */
    public void plugins(List<CalculatorDescriptor> statements) {
        document("plugins", json -> new PluginsJson(json).write(statements));
    }
}
