// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.assessment.AssessmentPackage;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.job.JobPackage;
import twinfeed.model.pricebook.PricebookPackage;
import twinfeed.model.quote.QuotePackage;
import twinfeed.usecase.FirmFile;

/** First files of each kind, which must read back, and the pages that explain them, which must leave nothing out. */
class NewAndHelpTest {
    @TempDir
    Path folder;

    private Path written(String kind, String name) {
        Path out = folder.resolve(name);
        Run run = Run.of("new", kind, "--out", out);
        assertEquals(0, run.status(), run.err());
        assertTrue(Files.exists(out));
        return out;
    }

    @Test
    void aFirmsFolderIsEnoughForAQuote() {
        Path firm = written("firm", "firm");
        Path job = firm.resolve("first.job");
        assertEquals(0, Run.of("new", "job", "--out", job).status());
        Run assess = Run.of("assess", job);
        assertEquals(0, assess.status(), assess.err());
        Run book = Run.of("book", firm.resolve("prices.csv"));
        assertEquals(0, book.status(), book.err());
        assertEquals(
                "Name of the firm",
                FirmFile.load(firm.resolve("firm.properties")).firm().name());
        Run quote = Run.of(
                "quote",
                job,
                "--book",
                firm.resolve("prices.csv"),
                "--heater",
                "example",
                "--out",
                firm.resolve("quote.xlsx"));
        assertEquals(0, quote.status(), quote.err());
    }

    @Test
    void aListOfDwellingsExplainsItsColumnsAndIsRead() throws IOException {
        Path list = written("dwellings", "dwellings.csv");
        String text = Files.readString(list);
        assertTrue(text.startsWith("dwelling,"), text);
        assertTrue(text.contains("Gauge reading with no flow."), text);
        assertTrue(text.contains("16 bar"), text);
        Run run = Run.of(
                "batch",
                list,
                "--template",
                Run.DEMO.resolve("alder-beck.job"),
                "--book",
                Run.DEMO.resolve("prices.csv"),
                "--out",
                folder.resolve("result.xlsx"));
        assertEquals(0, run.status(), run.err());
        assertTrue(run.out().contains("1"), run.out());
        assertEquals(
                "", run.err().lines().filter(line -> line.contains("line ")).reduce("", String::concat));
    }

    @Test
    void aPriceBookAndACatalogueAreRead() {
        assertEquals(0, Run.of("book", written("price-book", "prices.csv")).status());
        Path catalogue = written("catalogue", "own.catalogue");
        Run run = Run.of("options", Run.DEMO.resolve("hazel-ghyll.job"), "--catalogue", catalogue);
        assertTrue(run.status() == 0 || run.err().contains("survey."), run.err());
    }

    @Test
    void nothingIsReplacedAndNamesMustSuit() throws IOException {
        Path job = folder.resolve("there.job");
        Files.writeString(job, "somebody's");
        assertEquals(2, Run.of("new", "job", "--out", job).status());
        assertEquals("somebody's", Files.readString(job));
        Run run = Run.of("new", "job", "--out", folder.resolve("job.txt"));
        assertEquals(2, run.status());
        assertTrue(run.err().contains(".job"), run.err());
        Run misspelt = Run.of("new", "price-bok", "--out", folder.resolve("p.csv"));
        assertEquals(2, misspelt.status());
        assertTrue(misspelt.err().contains("did you mean price-book?"), misspelt.err());
        assertEquals(
                2, Run.of("new", "quote", "--out", folder.resolve("q.quote")).status());
    }

    private static String help(String kind) {
        Run run = Run.of("help", kind);
        assertEquals(0, run.status(), run.err());
        return run.out();
    }

    private static void assertNames(String page, EClass root) {
        Set<String> lacking = new TreeSet<>();
        Set<EClass> seen = new java.util.HashSet<>();
        collect(root, seen);
        for (EClass type : seen) {
            for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
                if (!page.contains("\n  " + feature.getName() + "  (")) {
                    lacking.add(type.getName() + "." + feature.getName());
                }
            }
        }
        assertEquals(Set.of(), lacking);
    }

    private static void collect(EClass type, Set<EClass> seen) {
        if (seen.add(type)) {
            type.getEAllContainments().forEach(part -> collect(part.getEReferenceType(), seen));
        }
    }

    @Test
    void everyAttributeIsNamed() {
        assertNames(help("job"), JobPackage.Literals.JOB);
        assertNames(help("catalogue"), CataloguePackage.Literals.CATALOGUE);
        String quote = help("quote");
        assertNames(quote, QuotePackage.Literals.QUOTE);
        assertNames(quote, AssessmentPackage.Literals.ASSESSMENT);
    }

    @Test
    void everyColumnAndKeyOfAPriceBookIsNamed() throws IOException {
        String page = help("price-book");
        for (EStructuralFeature feature : PricebookPackage.Literals.PRICE_ITEM.getEAllStructuralFeatures()) {
            String name = feature.getName().replaceAll("([A-Z])", "-$1").toLowerCase(Locale.ROOT);
            assertTrue(page.contains("\n  " + name + "  ("), name);
        }
        Files.readAllLines(Run.DEMO.resolve("prices.csv")).stream()
                .filter(line -> line.matches("# [a-z-]+:.*"))
                .map(line -> line.substring(0, line.indexOf(':') + 1))
                .forEach(key -> assertTrue(page.contains("\n  " + key + "  ("), key));
    }

    @Test
    void theOtherPagesNameTheirKeys() throws IOException {
        String firm = help("firm");
        FirmFile.keys().forEach(key -> assertTrue(firm.contains("\n  " + key + "\n"), key));
        assertTrue(help("texts").contains("\n  term.cancel\n"));
        String dwellings = help("dwellings");
        String head = Files.readAllLines(Run.DEMO.resolve("dwellings.csv")).get(0);
        for (String column : head.split(",")) {
            String name = column.replaceAll("\\[\\d+]", "[1]");
            assertTrue(name.startsWith("#") || dwellings.contains("\n  " + name), name);
        }
        String job = help("job");
        assertTrue(job.contains("for example 3.0 bar; units bar"), "unit and example");
        assertTrue(job.contains("\n        weakFlowHere \u2013 "), "what a word means");
        assertTrue(dwellings.contains("\n        weakFlowHere \u2013 "), "what a word means");
        assertTrue(job.contains("(one of A, AC, B, F)"), "words that only the checks know");
    }

    @ParameterizedTest
    @ValueSource(strings = {"batch", "reprint"})
    void aVerbIsExplainedToo(String verb) {
        assertTrue(help(verb).contains("Usage: twinfeed " + verb));
    }

    @Test
    void whatNobodyKnowsNamesTheNearest() {
        Run run = Run.of("help", "catalog");
        assertEquals(2, run.status());
        assertTrue(run.err().contains("did you mean catalogue?"), run.err());
        Run all = Run.of("help");
        assertEquals(0, all.status());
        assertTrue(all.out().contains("price-book") && all.out().contains("assess"), all.out());
        assertFalse(all.out().contains("{"), all.out());
    }

    @Test
    void everyFileThatWasWrittenIsNamed() {
        Path job = folder.resolve("named.job");
        assertEquals("Written: " + job, Run.of("new", "job", "--out", job).out().strip());
        Path firm = folder.resolve("named firm");
        List<String> lines = Run.of("new", "firm", "--out", firm).out().lines().toList();
        assertTrue(lines.contains("Written: " + firm.resolve("prices.csv")), lines.toString());
        assertTrue(lines.contains("Written: " + firm.resolve("firm.properties")), lines.toString());
    }
}
