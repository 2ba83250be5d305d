// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Workbook and PDF of the demonstration say the same; both appear or neither. */
class PapersTest {
    private static final Path BOOK = Run.DEMO.resolve("prices.csv");

    @TempDir
    private Path folder;

    /** Without spaces: paper breaks its lines where it likes, also behind a hyphen. */
    private static String flat(String text) {
        return text.replaceAll("[\\s\\u00a0\u200B]+", "");
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return flat(new PDFTextStripper().getText(document));
        }
    }

    private static List<String> texts(XSSFSheet sheet) {
        List<String> texts = new ArrayList<>();
        sheet.forEach(row -> row.forEach(cell -> {
            if (cell.getCellType() == CellType.STRING
                    && !cell.getStringCellValue().isBlank()) {
                texts.add(cell.getStringCellValue());
            }
        }));
        return texts;
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"rowan-brook", "alder-beck", "hazel-ghyll"})
    void aQuotesPdfSaysWhatItsWorkbookSays(String job) throws IOException {
        Path out = folder.resolve("q.xlsx");
        Path pdf = folder.resolve("q.pdf");
        Run run = Run.of("quote", Run.DEMO.resolve(job + ".job"), "--book", BOOK, "--out", out, "--pdf", pdf, "--json");
        assertEquals(0, run.status(), run.err());
        assertEquals("", run.err(), "nothing of the typesetter is heard");
        JsonNode quote = new ObjectMapper().readTree(run.out());
        String said = text(pdf);
        for (JsonNode option : quote.get("options")) {
            for (String amount : List.of("net", "tax", "total")) {
                assertTrue(
                        said.contains(String.format(
                                Locale.ROOT,
                                "£%,.2f",
                                new BigDecimal(option.get(amount).asText()))),
                        option.get("title") + " " + amount + ": " + said);
            }
        }
        for (String part : List.of("cautions", "assumptions", "exclusions", "terms")) {
            for (JsonNode entry : quote.get(part)) {
                assertTrue(said.contains(flat(entry.asText())), part + ": " + entry + " is not in " + said);
            }
        }
        try (XSSFWorkbook book = new XSSFWorkbook(out.toFile())) {
            XSSFSheet page = book.getSheetAt(0);
            for (String text : texts(page)) {
                // The workbook counts what its page has no room for, and tells of its other sheets; paper has no
                // others.
                boolean own = text.contains(" · ") || text.contains("sheet Items");
                assertTrue(own || said.contains(flat(text)), text + " is not in " + said);
            }
            for (JsonNode caution : quote.get("cautions")) {
                String all = flat(String.join(" ", texts(page)));
                assertTrue(all.contains(flat(caution.asText())), caution + " is not in " + all);
            }
        } catch (org.apache.poi.openxml4j.exceptions.InvalidFormatException broken) {
            throw new IOException(broken);
        }
    }

    /** Whoever gets the quote can sign it without turning the page, and small print takes one page more at most. */
    @ParameterizedTest
    @CsvSource({
        "alder-beck, en",
        "alder-beck, de",
        "rowan-brook, en",
        "rowan-brook, de",
        "hazel-ghyll, en",
        "hazel-ghyll, de"
    })
    void theFirstPageHoldsTheBoxToSign(String job, String language) throws IOException {
        Path pdf = folder.resolve("q.pdf");
        Run run = Run.of(
                "quote",
                Run.DEMO.resolve(job + ".job"),
                "--book",
                BOOK,
                "--out",
                folder.resolve("q.xlsx"),
                "--pdf",
                pdf,
                "--issue",
                folder.resolve("office"),
                "--language",
                language);
        assertEquals(0, run.status(), run.err());
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            PDFTextStripper first = new PDFTextStripper();
            first.setEndPage(1);
            String page = flat(first.getText(document));
            boolean german = language.equals("de");
            for (String said : german
                    ? List.of("Bitte führen Sie aus: ☐", "Unterschrift", "Zu zahlen, mit Steuer", "Was wir tun")
                    : List.of("Please carry out: ☐", "Signature", "To pay, with tax", "What we do")) {
                assertTrue(page.contains(flat(said)), said + " is not on the first page: " + page);
            }
            assertTrue(pagesOfText(document, german) <= 2, "pages: " + document.getNumberOfPages());
            String all = text(pdf);
            assertTrue(all.contains(flat(german ? "Steuer: " : "Tax: ")), all);
            assertTrue(all.contains(flat("Tax registration 000 0000 00")), all);
            assertTrue(all.contains(flat("45 min")), "labour is told in minutes: " + all);
        }
    }

    /** A draft is no offer: there is nothing to sign, and no day until which it can be accepted. */
    @Test
    void aDraftHasNothingToSign() throws IOException {
        quote(folder.resolve("q.xlsx"), folder.resolve("q.pdf"));
        String said = text(folder.resolve("q.pdf"));
        assertTrue(said.contains(flat("Draft, not binding")), said);
        assertFalse(said.contains("Signature"), said);
        assertFalse(said.contains(flat("Can be accepted until")), said);
    }

    @Test
    void aJobSheetsPdfSaysWhatItsWorkbookSays() throws Exception {
        Path out = folder.resolve("s.xlsx");
        Path pdf = folder.resolve("s.pdf");
        Run run = Run.of(
                "faults", Run.DEMO.resolve("birch-syke.job"), "--book", BOOK, "--out", out, "--pdf", pdf, "--json");
        assertEquals(0, run.status(), run.err());
        String said = text(pdf);
        JsonNode sheet = new ObjectMapper().readTree(run.out());
        List<String> wanted = new ArrayList<>(List.of(sheet.get("summary").asText(), "birch-syke"));
        sheet.get("cautions").forEach(caution -> wanted.add(caution.asText()));
        sheet.get("isolation").forEach(tick -> wanted.add(tick.get("title").asText()));
        sheet.get("readings").forEach(reading -> wanted.add(reading.get("value").asText()));
        sheet.get("expected")
                .forEach(expected -> wanted.add(expected.get("value").asText()));
        sheet.get("steps").forEach(step -> wanted.add(step.asText()));
        wanted.add(sheet.get("repair").get("sentence").asText());
        try (XSSFWorkbook book = new XSSFWorkbook(out.toFile())) {
            List<String> written = texts(book.getSheetAt(0));
            String all = flat(String.join(" ", written));
            for (String each : wanted) {
                assertTrue(said.contains(flat(each)), each + " is not in the PDF: " + said);
                assertTrue(all.contains(flat(each)), each + " is not in the workbook: " + all);
            }
            for (String each : written) {
                assertTrue(said.contains(flat(each)), each + " is not in the PDF: " + said);
            }
        }
    }

    private Run quote(Path out, Path pdf) {
        return Run.of(
                "quote",
                Run.DEMO.resolve("rowan-brook.job"),
                "--book",
                BOOK,
                "--out",
                out,
                "--pdf",
                pdf,
                "--date",
                "2026-11-25");
    }

    @Test
    void theSameInputGivesTheSameBytes() throws IOException {
        Path pdf = folder.resolve("q.pdf");
        quote(folder.resolve("q.xlsx"), pdf);
        byte[] first = Files.readAllBytes(pdf);
        quote(folder.resolve("q.xlsx"), pdf);
        assertArrayEquals(first, Files.readAllBytes(pdf));
    }

    @Test
    void whereThePdfCannotBeWrittenThereIsNoWorkbookEither() throws IOException {
        Run run = quote(folder.resolve("q.xlsx"), folder.resolve("nowhere").resolve("q.pdf"));
        assertEquals(2, run.status());
        assertTrue(run.err().contains("q.pdf"), run.err());
        assertEquals(List.of(), names());
    }

    @Test
    void oneFileForTwoOutputsIsRefused() throws IOException {
        Run run = quote(
                folder.resolve("q.xlsx"), folder.resolve("x").resolve("..").resolve("q.xlsx"));
        assertEquals(2, run.status());
        assertTrue(run.err().contains("does not end in .pdf"), run.err());
        assertEquals(List.of(), names());
    }

    @Test
    void aLogoThatIsNoPictureIsRefusedWithItsFile() throws IOException {
        Files.writeString(folder.resolve("logo.png"), "no picture", StandardCharsets.UTF_8);
        Path firm = Files.writeString(folder.resolve("firm.properties"), "name=Invented\nlogo=logo.png\n");
        Run run = Run.of(
                "quote",
                Run.DEMO.resolve("rowan-brook.job"),
                "--book",
                BOOK,
                "--out",
                folder.resolve("q.xlsx"),
                "--firm",
                firm,
                "--issue",
                folder.resolve("office"));
        assertEquals(2, run.status());
        assertTrue(run.err().contains("firm.properties"), run.err());
        assertTrue(run.err().contains("logo.png"), run.err());
        assertEquals(List.of("firm.properties", "logo.png"), names(), "no number is taken for it");
    }

    /** A quote without a PDF pays nothing for it. */
    @Test
    void nothingOfTheTypesetterIsLoadedUnlessItIsAskedFor() throws Exception {
        assertFalse(loaded("--out", folder.resolve("q.xlsx").toString()));
        assertTrue(loaded(
                "--out",
                folder.resolve("q.xlsx").toString(),
                "--pdf",
                folder.resolve("q.pdf").toString()));
    }

    /** All pages but the last where that holds nothing but the drawings of the house. */
    private static int pagesOfText(PDDocument document, boolean german) throws IOException {
        int pages = document.getNumberOfPages();
        PDFTextStripper last = new PDFTextStripper();
        last.setStartPage(pages);
        String text = flat(last.getText(document));
        String drawing = german ? "Das Haus, wie es ist" : "The house as it is";
        int begin = text.indexOf(flat(drawing));
        // Above the drawings stands no more than the head of the page.
        return begin >= 0 && begin < 80 ? pages - 1 : pages;
    }

    private boolean loaded(String... outputs) throws IOException, InterruptedException {
        String path = System.getProperty("surefire.test.class.path", System.getProperty("java.class.path"));
        Path list = folder.resolve("loaded.txt");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xlog:class+load:file=" + list,
                "-cp",
                path,
                "twinfeed.cli.Main",
                "quote",
                Run.DEMO.resolve("rowan-brook.job").toString(),
                "--book",
                BOOK.toString()));
        command.addAll(List.of(outputs));
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
        assertEquals(0, process.waitFor(), () -> "see " + folder.resolve("said.txt"));
        String classes = Files.readString(list);
        assertTrue(classes.contains("twinfeed.workbook.QuoteWorkbook"), "the list of loaded classes");
        return classes.contains("org.apache.fop.") || classes.contains("org.apache.batik.");
    }
}
