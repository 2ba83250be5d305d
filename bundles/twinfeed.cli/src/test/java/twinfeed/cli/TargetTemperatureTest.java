// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A target that the outlet meets exactly is met: the last digit of a computation decides nothing. */
class TargetTemperatureTest {
    @TempDir
    private Path folder;

    private JsonNode options(int targetC) throws IOException {
        String job = Files.readString(Run.DEMO.resolve("rowan-brook.job"));
        assertTrue(job.contains("targetOutlet=\"40 °C\""), "the demonstration states its target");
        Path file = folder.resolve("rowan-brook.job");
        Files.writeString(file, job.replace("targetOutlet=\"40 °C\"", "targetOutlet=\"" + targetC + " °C\""));
        Files.copy(
                Run.DEMO.resolve("heaters.catalogue"),
                folder.resolve("heaters.catalogue"),
                java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        Run run = Run.of("assess", file, "--json");
        assertEquals(0, run.status(), run.err());
        return new ObjectMapper().readTree(run.out()).get("options");
    }

    @Test
    void theVerdictDoesNotFlickerWithTheTarget() throws IOException {
        List<String> verdicts = new ArrayList<>();
        for (int targetC = 43; targetC <= 46; targetC++) {
            List<String> row = new ArrayList<>();
            for (JsonNode option : options(targetC)) {
                row.add(option.get("heater").asText() + " "
                        + option.get("verdict").asText());
                for (JsonNode finding : option.get("findings")) {
                    JsonNode margin = finding.get("margin");
                    if (margin != null && margin.isNumber()) {
                        double distance = Math.abs(margin.asDouble());
                        assertTrue(
                                distance == 0 || distance > 1e-12, () -> "rounding shows in the margin of " + finding);
                    }
                }
            }
            verdicts.add(targetC + ": " + row);
        }
        assertEquals(
                1,
                verdicts.stream()
                        .map(row -> row.substring(row.indexOf(':')))
                        .distinct()
                        .count(),
                () -> String.join("\n", verdicts));
    }
}
