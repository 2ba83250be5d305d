// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.cli.json.JsonReport;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.TwinfeedService;

/** What nobody decided is neither "suits" nor "passes", on screen or in JSON. */
class UndecidedTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();

    private static AssessedJob undecided() {
        AssessedJob judged = SERVICE.quickAssess(SERVICE.open(Run.DEMO.resolve("rowan-brook.job"), null), Locale.ROOT);
        judged.record().getOptions().forEach(option -> {
            option.unsetVerdict();
            option.getFindings().forEach(finding -> {
                finding.unsetOutcome();
                finding.unsetKind();
            });
        });
        return judged;
    }

    @Test
    void theScreenSaysThatNobodyChecked() {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        PrintStream out = new PrintStream(bytes, true, StandardCharsets.UTF_8);
        new TextReport(new CliContext(SERVICE, Run.DAY, out, out)).assessment(undecided(), false);
        String text = bytes.toString(StandardCharsets.UTF_8);
        assertTrue(text.contains(": not checked"), text);
        assertTrue(text.contains("[??]"), text);
        assertFalse(text.contains("[ok]"), text);
        assertFalse(text.contains(": suits"), text);
    }

    @Test
    void jsonSaysThatNobodyChecked() throws IOException {
        ByteArrayOutputStream written = new ByteArrayOutputStream();
        new JsonReport(written, "").assessment(undecided(), false);
        for (JsonNode option :
                new ObjectMapper().readTree(written.toByteArray()).get("options")) {
            assertEquals("not-checked", option.get("verdict").asText());
            for (JsonNode finding : option.get("findings")) {
                assertEquals("not-checked", finding.get("outcome").asText());
                assertEquals("not-stated", finding.get("class").asText());
            }
        }
    }
}
