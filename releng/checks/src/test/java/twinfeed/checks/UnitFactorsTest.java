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
 * calculator or the fault-finding: neither as a number nor within an expression of a working. Findings are in SI; texts convert.
 */
class UnitFactorsTest {
    private static final Pattern FACTOR = Pattern.compile("(?<![\\w.])(60_?000|100_?000|1e5|6e4)(?![\\w.]*\\d)");

    /** A factor of ten within what a finding is given: its figures and arguments are in SI, and texts convert them. */
    private static final Pattern CONVERTED =
            Pattern.compile("\\.(?:compare|report|argument)\\((?:[^();]|\\((?:[^();]|\\([^();]*\\))*\\))*[*/]"
                    + " ?(?:1000|100|1e3|1e6)\\b");

    @Test
    void noFigureIsConvertedBeforeItIsCompared() throws IOException {
        assertEquals(List.of(), found(CONVERTED), "findings are in SI");
    }

    @Test
    void theFactorsOfFlowAndPressureStandInTheTableOfUnitsOnly() throws IOException {
        assertEquals(List.of(), found(FACTOR), "take it from twinfeed.units.Kind");
    }

    private static List<String> found(Pattern pattern) throws IOException {
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
                    Matcher match = pattern.matcher(code);
                    while (match.find()) {
                        found.add(Project.ROOT.relativize(file) + ": " + match.group());
                    }
                }
            }
        }
        assertTrue(seen > 200, "sources: " + seen);
        return found;
    }
}
