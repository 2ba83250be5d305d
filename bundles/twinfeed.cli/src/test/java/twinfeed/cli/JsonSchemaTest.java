// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every document against its published schema, judged by an independent validator. */
class JsonSchemaTest {
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private static JsonNode valid(Run run, String schema) throws IOException {
        assertEquals(0, run.status(), run.err());
        JsonNode document = MAPPER.readTree(run.out());
        assertEquals(
                "urn:twinfeed:json:" + schema + ":1", document.get("schema").asText());
        assertEquals(Set.of(), problems(document, schema));
        return document;
    }

    private static Set<ValidationMessage> problems(JsonNode document, String schema) throws IOException {
        try (InputStream stream = Verbs.class.getResourceAsStream("schema/" + schema + "-1.json")) {
            assertNotNull(stream, schema);
            JsonSchema judge = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(MAPPER.readTree(stream));
            return judge.validate(document);
        }
    }

    static Stream<Path> jobs() throws IOException {
        try (Stream<Path> files = Files.list(Run.DEMO)) {
            return files.filter(file -> file.toString().endsWith(".job")).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void assess(Path job) throws IOException {
        JsonNode document = valid(Run.of("assess", job, "--json"), "assessment");
        assertFalse(document.get("options").isEmpty());
        assertFalse(document.get("options").get(0).get("findings").get(0).has("steps"));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void options(Path job) throws IOException {
        valid(Run.of("options", job, "--json"), "assessment");
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void faults(Path job) throws IOException {
        JsonNode document = valid(Run.of("faults", job, "--json"), "faults");
        double chances = 0;
        for (JsonNode cause : document.get("causes")) {
            chances += cause.get("chance").asDouble();
        }
        assertEquals(1, chances, 1e-9);
        assertFalse(document.has("repair"), "without a price book nothing is priced");
    }

    @Test
    void faultsWithPrices() throws IOException {
        JsonNode document = valid(
                Run.of(
                        "faults",
                        Run.DEMO.resolve("birch-syke.job"),
                        "--book",
                        Run.DEMO.resolve("prices.csv"),
                        "--json"),
                "faults");
        assertTrue(document.get("repair").get("replacements").size() >= 1, document.toString());
        assertFalse(document.toString().contains("\"cost\""), "the customer never sees cost");
    }

    @Test
    void quote(@TempDir Path folder) throws IOException {
        JsonNode document = valid(
                Run.of(
                        "quote",
                        Run.DEMO.resolve("alder-beck.job"),
                        "--book",
                        Run.DEMO.resolve("prices.csv"),
                        "--out",
                        folder.resolve("q.xlsx"),
                        "--json"),
                "quote");
        assertTrue(document.get("options").size() >= 1);
        assertFalse(document.toString().contains("\"cost\""), "the customer never sees cost");
        assertTrue(
                document.get("dangers").toString().contains("can overheat"),
                "the cable under the insulation: " + document.get("dangers"));
    }

    @Test
    void compare(@TempDir Path folder) throws IOException {
        Path office = folder.resolve("office");
        for (String job : new String[] {"alder-beck.job", "willow-mere.job"}) {
            Run issued = Run.of(
                    "quote",
                    Run.DEMO.resolve(job),
                    "--book",
                    Run.DEMO.resolve("prices.csv"),
                    "--out",
                    folder.resolve("q.xlsx"),
                    "--reason",
                    "A figure was asked for before the readings are complete.",
                    "--issue",
                    office);
            assertEquals(0, issued.status(), issued.err());
        }
        Path first = office.resolve("quotes/2026-0001-r1.quote");
        Path second = office.resolve("quotes/2026-0002-r1.quote");
        JsonNode document = valid(Run.of("compare", first, second, "--json"), "comparison");
        assertFalse(document.get("differences").isEmpty());
        assertTrue(Run.of("compare", first, first).out().contains("say the same"));
    }

    @Test
    void issuedQuotes(@TempDir Path folder) throws IOException {
        Path office = folder.resolve("office");
        Run issued = Run.of(
                "quote",
                Run.DEMO.resolve("rowan-brook.job"),
                "--book",
                Run.DEMO.resolve("prices.csv"),
                "--out",
                folder.resolve("q.xlsx"),
                "--issue",
                office,
                "--json");
        valid(issued, "quote");
        Path file = office.resolve("quotes/2026-0001-r1.quote");
        JsonNode accepted = valid(Run.of("accept", file, "--option", "h85", "--json"), "quote");
        assertEquals("h85", accepted.get("chosen").asText());
        valid(Run.of("reprint", file, "--pdf", folder.resolve("again.pdf"), "--json"), "quote");
        JsonNode reopened = valid(Run.of("reopen", file, "--reason", "A slip.", "--json"), "quote");
        assertEquals("issued", reopened.get("state").asText());
        JsonNode list = valid(Run.of("issued", office, "--json"), "issued");
        JsonNode taken = list.get("quotes").get(0).get("takenBack").get(0);
        assertEquals("h85", taken.get("chosen").asText());
        assertEquals("A slip.", taken.get("reason").asText());
        valid(Run.of("decline", file, "--json"), "quote");
        valid(Run.of("issued", office, "--json"), "issued");
    }

    @Test
    void afterTheWork(@TempDir Path folder) throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        Path job = Files.copy(Run.DEMO.resolve("birch-syke.job"), folder.resolve("birch-syke.job"));
        JsonNode document = valid(
                Run.of("complete", job, "--by", "tester", "--reading", "insulation=0.1 Mohm", "--json"), "completion");
        assertEquals("unsafe", document.get("state").asText());
        JsonNode notice = valid(Run.of("notice", job, "--json"), "notice");
        assertEquals("insulation", notice.get("reasons").get(0).get("key").asText());
    }

    @Test
    void plugins() throws IOException {
        assertTrue(valid(Run.of("plugins", "--json"), "plugins").get("plugins").size() >= 4);
    }

    @Test
    void answer() throws IOException {
        valid(Run.of("calc", "flow", "power=9.5kW", "intake=5C", "outlet=40C", "--json"), "answer");
        valid(Run.of("calc", "flow", "power=9.5kW", "intake=40C", "outlet=38C", "--json"), "answer");
    }

    @Test
    void formulas() throws IOException {
        valid(Run.of("calc", "--list", "--json"), "formulas");
    }

    @Test
    void errors(@TempDir Path folder) throws IOException {
        Path job = folder.resolve("broken.job");
        Files.writeString(
                job, Files.readString(Run.DEMO.resolve("alder-beck.job")).replace("3.0 bar", "3.0 baar"));
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        JsonNode problem =
                error(Run.of("assess", job, "--json")).get("problems").get(0);
        assertEquals(job.toString(), problem.get("file").asText());
        assertTrue(problem.get("line").asInt() > 1);
        assertTrue(problem.get("element").asText().endsWith("staticPressure"), problem.toString());
        assertTrue(problem.get("reading").asText().startsWith("3.0 baar"), problem.toString());
        assertTrue(problem.has("wrong") && problem.has("right"), problem.toString());
        error(Run.of("assess", folder.resolve("none.job"), "--json"));
        error(Run.of("assess", "--json"));
        error(Run.of("calc", "flow", "power=banana", "--json"));
        error(Run.of("calc", "banana", "--json"));
    }

    private static JsonNode error(Run run) throws IOException {
        assertEquals(2, run.status(), run.err());
        JsonNode document = MAPPER.readTree(run.out());
        assertEquals(Set.of(), problems(document, "error"));
        return document;
    }

    @Test
    void verification(@TempDir Path folder) throws IOException {
        assertTrue(valid(Run.of("verify", folder, "--json"), "verification")
                .get("sound")
                .asBoolean());
    }

    @Test
    void theValidatorRefusesWhatIsWrong() throws IOException {
        assertFalse(problems(MAPPER.readTree("{\"schema\":\"urn:twinfeed:json:answer:1\"}"), "answer")
                .isEmpty());
    }

    @Test
    void batch(@TempDir Path folder) throws IOException {
        Object[] words = {
            "batch",
            Run.DEMO.resolve("dwellings.csv"),
            "--template",
            Run.DEMO.resolve("alder-beck.job"),
            "--book",
            Run.DEMO.resolve("prices.csv"),
            "--out",
            folder.resolve("result.xlsx"),
            "--json"
        };
        JsonNode document = valid(Run.of(words), "batch");
        assertEquals(6, document.get("judged").asInt());
        assertEquals(2, document.get("refused").size());
    }

    @Test
    void book() throws IOException {
        Path prices = Run.DEMO.resolve("prices.csv");
        assertTrue(valid(Run.of("book", prices, "--json"), "book").get("usable").asBoolean());
        assertFalse(valid(Run.of("book", prices, "--against", prices, "--json"), "book")
                .has("added"));
    }
}
