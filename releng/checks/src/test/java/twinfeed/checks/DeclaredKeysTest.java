// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.CalculatorDescriptor;
import twinfeed.pricing.FaultReport;
import twinfeed.pricing.StandardWork;

/**
 * The keys of checks and the price-book codes of a calculator stand in its bundle alone: the others ask for topics and take what is
 * declared, so that any calculator can be left out or replaced.
 */
class DeclaredKeysTest {
    private static final Pattern LITERAL = Pattern.compile("\"([^\"\\\\]*+(?:\\\\.[^\"\\\\]*+)*+)\"");

    /** Words that are a code and something else as well: a section of a quote, a kind of device in a survey. */
    private static final Map<String, Set<String>> WORDS = Map.of(
            "making-good",
            Set.of("Section.java", "PartsListWriter.java", "PriceLines.java"),
            "check-valve",
            Set.of("WaterRules.java"));

    private final Map<String, Set<String>> owners = new HashMap<>();

    /** With the bundle of each declared key and code. */
    DeclaredKeysTest() {
        for (Calculator calculator : ServiceLoader.load(Calculator.class)) {
            CalculatorDescriptor declared = calculator.descriptor();
            String bundle = calculator.getClass().getPackageName();
            own(declared.id() + ".", bundle);
            declared.checks().forEach(check -> own(check.key(), bundle));
            declared.remedies().forEach(kind -> kind.codes().forEach(code -> own(code, bundle)));
        }
        StandardWork.codes().forEach(owners::remove);
        assertTrue(owners.size() > 120, "keys and codes: " + owners.size());
    }

    private void own(String key, String bundle) {
        owners.computeIfAbsent(key, any -> new HashSet<>()).add(bundle);
    }

    @Test
    void noDeclaredKeyOrCodeStandsOutsideItsBundle() throws IOException {
        List<String> strange = new ArrayList<>();
        int sources = 0;
        for (String bundle : Project.bundles()) {
            for (Path file : sources(bundle)) {
                sources++;
                String name = file.getFileName().toString();
                Matcher literals = LITERAL.matcher(Files.readString(file));
                while (literals.find()) {
                    String text = literals.group(1);
                    if (!owners.getOrDefault(text, Set.of(bundle)).contains(bundle)
                            && !WORDS.getOrDefault(text, Set.of()).contains(name)) {
                        strange.add(bundle + ", " + name + ": " + text);
                    }
                }
            }
        }
        assertTrue(sources > 700, "sources: " + sources);
        assertEquals(List.of(), strange);
    }

    private static List<Path> sources(String bundle) {
        return Project.files(Project.bundle(bundle).resolve("src/main/java"), ".java");
    }

    /** Pricing's rules on codes are data; a rule for a code that nobody declares would never apply. */
    @Test
    void pricingRulesNameDeclaredCodes() throws IOException {
        Set<String> known = new HashSet<>(owners.keySet());
        known.addAll(StandardWork.codes());
        known.add(FaultReport.Repair.VISIT);
        Path folder = Project.bundle("twinfeed.pricing").resolve("src/main/resources/twinfeed/pricing");
        List<String> strange = new ArrayList<>();
        int rules = 0;
        for (String file : List.of("companions.csv", "needless-work.csv", "work-texts.csv")) {
            for (String line : Files.readAllLines(folder.resolve(file))) {
                if (!line.startsWith("#") && !line.startsWith("work,")) {
                    rules++;
                    String work = line.substring(0, line.indexOf(','));
                    if (known.stream().noneMatch(code -> matches(work, code))) {
                        strange.add(file + ": " + work);
                    }
                }
            }
        }
        assertTrue(rules >= 8, "rules: " + rules);
        assertEquals(List.of(), strange);
    }

    private static boolean matches(String pattern, String code) {
        return pattern.endsWith("*")
                ? code.startsWith(pattern.substring(0, pattern.length() - 1))
                : code.equals(pattern);
    }
}
