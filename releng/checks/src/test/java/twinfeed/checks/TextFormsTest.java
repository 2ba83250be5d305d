// SPDX-License-Identifier: EPL-2.0
package twinfeed.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** Messages have one form and numbers for people one way of being written, whatever bundle says them. */
class TextFormsTest {
    private static final Pattern OTHER_WAY = Pattern.compile(
            "\\b(NumberFormat|DecimalFormat|DecimalFormatSymbols|MessageFormat|ResourceBundle|String\\.format|Formatter)\\b(?!\\.html)"
                    + "|\\.(formatted|printf)\\(");

    /** What is no text for people, and the one place where numbers become text. */
    private static final Map<String, String> ALLOWED = Map.of(
            "NumberText.java", "numbers become text here",
            "NumberStyle.java", "which marks are read in what people type",
            "Decimals.java", "which marks are read in what people type",
            "Typesetter.java", "whether a script has digits of its own",
            "PageBody.java", "lengths and colours for the layout engine",
            "PdfNormalizer.java", "syntax of PDF",
            "PdfMetadata.java", "syntax of XMP",
            "QuoteNumber.java", "numbers of quotes, the same everywhere",
            "XmlText.java", "escapes of characters");

    private static final Pattern PLACEHOLDER = Pattern.compile("\\{[^}]*}");
    private static final Pattern FORM = Pattern.compile("\\{[a-zA-Z0-9]+(:~?[0-9])?}");

    private static List<Path> files(String below, String ending) {
        return Project.bundles().stream()
                .flatMap(bundle -> Project.files(Project.bundle(bundle).resolve(below), ending).stream())
                .toList();
    }

    @Test
    void numbersAndMessagesAreWrittenInOneWay() throws IOException {
        List<Path> sources = files("src/main/java", ".java");
        assertTrue(sources.size() > 700, "sources: " + sources.size());
        List<String> others = new ArrayList<>();
        Set<String> used = new java.util.TreeSet<>();
        for (Path file : sources) {
            Matcher way = OTHER_WAY.matcher(Files.readString(file).replaceAll("(?m)^\\s*(/?\\*|//).*$", ""));
            if (way.find()) {
                String name = file.getFileName().toString();
                used.add(name);
                if (!ALLOWED.containsKey(name)) {
                    others.add(Project.ROOT.relativize(file) + ": " + way.group());
                }
            }
        }
        assertEquals(List.of(), others);
        assertEquals(new java.util.TreeSet<>(ALLOWED.keySet()), used, "exceptions that nobody needs any more");
    }

    @Test
    void placeholdersHaveOneForm() throws IOException {
        List<String> others = new ArrayList<>();
        int seen = 0;
        for (Path file : files("src/main/resources", ".properties")) {
            Matcher placeholders = PLACEHOLDER.matcher(Files.readString(file));
            while (placeholders.find()) {
                seen++;
                if (!FORM.matcher(placeholders.group()).matches()) {
                    others.add(Project.ROOT.relativize(file) + ": " + placeholders.group());
                }
            }
        }
        assertTrue(seen > 1000, "placeholders: " + seen);
        assertEquals(List.of(), others);
    }
}
