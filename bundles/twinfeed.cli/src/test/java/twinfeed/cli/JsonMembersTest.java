// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.cli.json.IssuedEntry;
import twinfeed.cli.json.JsonReport;
import twinfeed.diagnosis.completion.CompletionReading;
import twinfeed.diagnosis.completion.CompletionSheet;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentPackage;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.io.InputProblem;
import twinfeed.model.job.JobFactory;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuotePackage;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.BookReport;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.batch.BatchReport;
import twinfeed.usecase.completion.PartsListWriter.Part;
import twinfeed.usecase.completion.UnsafeNoticeWriter.Reason;
import twinfeed.usecase.quote.FolderCheck;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.QuoteCorrection;
import twinfeed.usecase.quote.QuoteDifference;

/** Of a thing in which nothing is left out a document has every member that its schema names, each with that thing's value. */
class JsonMembersTest {
    /** What has another name in a document than in the model. */
    private static final Map<String, String> OTHERWISE = Map.of(
            "heater", "heaterId", "class", "kind", "working", "steps", "xs", "x", "ys", "y", "result", "written");

    /** Members that hold title and unit of an axis, not its numbers. */
    private static final Set<String> AXES = Set.of("x", "y");

    private static JsonNode printed(Consumer<JsonReport> printing) throws IOException {
        return new ObjectMapper().readTree(text(printing));
    }

    private static String text(Consumer<JsonReport> printing) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        printing.accept(new JsonReport(out, "Take care."));
        return out.toString(StandardCharsets.UTF_8);
    }

    private static Arguments document(String schema, Object told, Consumer<JsonReport> printing) {
        return Arguments.of(schema, told, printing);
    }

    /** Any job's, without calculators: only what was recorded is printed. */
    private static AssessedJob assessed(Assessment record) {
        TwinfeedService service = new TwinfeedService(List.of());
        AssessedJob judged =
                service.judge(service.open(Run.DEMO.resolve("rowan-brook.job"), null), null, null, Locale.ROOT);
        return new AssessedJob(judged.opened(), judged.assessed(), judged.plans(), record);
    }

    static Stream<Arguments> documents() {
        Filled all = new Filled();
        Quote quote = all.of(QuotePackage.Literals.QUOTE, Quote.class);
        IssuedQuote file = all.of(IssuedQuote.class);
        IssuedQuote issued = new IssuedQuote(
                file.file(), quote, file.digest(), true, file.verification(), file.customer(), file.site());
        OutputPaths written = all.of(OutputPaths.class);
        IssuedEntry entry = new IssuedEntry(issued, List.of(all.of(QuoteCorrection.class)));
        AssessedJob assessed = assessed(all.of(AssessmentPackage.Literals.ASSESSMENT, Assessment.class));
        FaultSheet faults = all.of(FaultSheet.class);
        CompletionSheet completion = new CompletionSheet(
                JobFactory.eINSTANCE.createCompletion(),
                SurveyFactory.eINSTANCE.createSurvey(),
                CatalogueFactory.eINSTANCE.createHeater(),
                true,
                List.of("works"),
                List.of(),
                List.of(all.of(CompletionReading.class)));
        Reason reason = all.of(Reason.class);
        Part part = all.of(Part.class);
        QuoteDifference difference = all.of(QuoteDifference.class);
        InputProblem problem = all.of(InputProblem.class);
        FolderCheck check = all.of(FolderCheck.class);
        BookReport book = all.of(BookReport.class);
        BatchReport batch = all.of(BatchReport.class);
        return Stream.of(
                document("quote", quote, json -> json.quote(quote, List.of("Hot."), written, issued)),
                document("issued", quote, json -> json.issued(List.of(entry), LocalDate.of(2026, 1, 1))),
                document("assessment", assessed.record(), json -> json.assessment(assessed, true)),
                document("faults", faults, json -> json.faults(faults)),
                document("completion", completion, json -> json.completion(completion)),
                document("notice", reason, json -> json.notice(List.of(reason))),
                document("parts", part, json -> json.parts("2026-0001-r1", List.of(part))),
                document("comparison", difference, json -> json.comparison(List.of(issued), List.of(difference))),
                document("error", problem, json -> json.failure(2, List.of(problem))),
                document("verification", check, json -> json.verification(check)),
                document("book", book, json -> json.book(book)),
                document("batch", batch, json -> json.batch(batch, Path.of("written"))));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void everyMemberOfTheSchemaIsPrinted(String schema, Object told, Consumer<JsonReport> printing) throws IOException {
        Set<String> named = new TreeSet<>();
        Set<String> members = new TreeSet<>();
        try (InputStream stream = JsonReport.class.getResourceAsStream("/twinfeed/cli/schema/" + schema + "-1.json")) {
            properties(new ObjectMapper().readTree(stream), "", named);
        }
        members(printed(printing), "", members);
        assertEquals(named, members);
    }

    private static void properties(JsonNode schema, String path, Set<String> names) {
        schema.path("properties").fields().forEachRemaining(each -> {
            names.add(path + each.getKey());
            properties(each.getValue(), path + each.getKey() + ".", names);
            properties(each.getValue().path("items"), path + each.getKey() + ".", names);
        });
    }

    private static void members(JsonNode node, String path, Set<String> names) {
        if (node.isArray()) {
            node.forEach(each -> members(each, path, names));
        }
        node.fields().forEachRemaining(each -> {
            names.add(path + each.getKey());
            members(each.getValue(), path + each.getKey() + ".", names);
        });
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void everyMemberHasTheValueOfItsName(String schema, Object told, Consumer<JsonReport> printing) throws IOException {
        assertTrue(compared(printed(printing), told, schema) > 1, schema);
    }

    /** Compares the members that the thing has too; how many they are. */
    private static int compared(JsonNode node, Object told, String where) {
        int compared = 0;
        for (Iterator<Map.Entry<String, JsonNode>> members = node.fields(); members.hasNext(); ) {
            Map.Entry<String, JsonNode> member = members.next();
            Object value = value(told, member.getKey());
            JsonNode shown = member.getValue().isArray() ? member.getValue().get(0) : member.getValue();
            value = value instanceof List<?> list ? list.get(0) : value;
            if (shown.isObject()) {
                // The list of things that a document tells has no place in the thing itself.
                Object part = value == null && !where.contains(".") ? told : value;
                compared += part == null ? 0 : compared(shown, part, where + "." + member.getKey());
            } else if (value != null && !(value instanceof EObject)) {
                Object seen = shown.isNumber() ? shown.decimalValue().stripTrailingZeros() : shown.asText();
                Object due = shown.isNumber() ? new BigDecimal(value.toString()).stripTrailingZeros() : text(value);
                assertEquals(due, seen, where + "." + member.getKey());
                compared++;
            }
        }
        return compared;
    }

    private static String text(Object value) {
        if (value instanceof BigDecimal amount) {
            return amount.toPlainString();
        }
        if (value instanceof Enumerator word) {
            return word.getLiteral();
        }
        return value instanceof Enum<?> word ? word.name().toLowerCase(Locale.ROOT) : value.toString();
    }

    private static @Nullable Object value(Object told, String name) {
        Object value = AXES.contains(name) ? null : named(told, name);
        String other = OTHERWISE.get(name);
        return value == null && other != null ? named(told, other) : value;
    }

    private static @Nullable Object named(Object told, String name) {
        if (told instanceof EObject thing) {
            EStructuralFeature feature = thing.eClass().getEStructuralFeature(name);
            return feature == null ? null : thing.eGet(feature);
        }
        try {
            for (RecordComponent part : told.getClass().getRecordComponents()) {
                if (part.getName().equals(name)) {
                    part.getAccessor().setAccessible(true);
                    return part.getAccessor().invoke(told);
                }
            }
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(name, e);
        }
        return null;
    }

    /** Shells and editors take a last line that does not end for one that was cut off. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("documents")
    void aDocumentEndsItsLastLine(String schema, Object told, Consumer<JsonReport> printing) {
        assertTrue(text(printing).endsWith("}\n"), schema);
    }

    @Test
    void aMemberWithNothingToSayIsLeftOut() throws IOException {
        JsonNode problem = printed(json -> json.failure(2, List.of(InputProblem.ofFile("", "wrong", ""))))
                .get("problems")
                .get(0);
        assertEquals("{\"wrong\":\"wrong\"}", problem.toString());
        JsonNode book = printed(json ->
                json.book(new BookReport(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), null)));
        assertFalse(book.get("usable").asBoolean());
        assertEquals(3, book.size(), book.toString());
    }

    @Test
    void anAssessmentNamesItsAssumptions() throws IOException {
        AssessedJob assessed = assessed(new Filled().of(AssessmentPackage.Literals.ASSESSMENT, Assessment.class));
        assertEquals(
                "[\"text\"]",
                printed(json -> json.assessment(assessed, false))
                        .get("assumptions")
                        .toString());
    }
}
