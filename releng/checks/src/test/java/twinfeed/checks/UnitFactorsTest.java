// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * How many litres a minute make a cubic metre a second, and how many pascals a bar, stands in the table of units and nowhere in a
 * calculator or the fault-finding: neither as a number nor within an expression of a working.
 */
class UnitFactorsTest {
    private static final Pattern FACTOR = Pattern.compile("(?<![\\w.])(60_?000|100_?000|1e5|6e4)(?![\\w.]*\\d)");

    @Test
    void theFactorsOfFlowAndPressureStandInTheTableOfUnitsOnly() throws IOException {
        List<String> found = new ArrayList<>();
        int seen = 0;
        for (String bundle : Project.bundles()) {
            if (!bundle.startsWith("twinfeed.calculator.") && !bundle.equals("twinfeed.diagnosis")) {
                continue;
            }
            try (Stream<Path> files = Files.walk(Project.bundle(bundle).resolve("src/main/java"))) {
                for (Path file :
                        files.filter(each -> each.toString().endsWith(".java")).toList()) {
                    seen++;
                    String code = Files.readString(file).replaceAll("(?m)^\\s*(/?\\*|//).*$", "");
                    Matcher factor = FACTOR.matcher(code);
                    while (factor.find()) {
                        found.add(Project.ROOT.relativize(file) + ": " + factor.group());
                    }
                }
            }
        }
        assertTrue(seen > 200, "sources: " + seen);
        assertEquals(List.of(), found, "take it from twinfeed.units.Kind");
    }
}
