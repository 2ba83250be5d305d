// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Water that reaches a person before a cut-out acts is advice where the users can step aside. It decides nothing, but whoever is to stand
 * under it reads of it, with its temperature, on every page that a customer gets.
 */
class ScaldCautionTest {
    private static final String CAUTION = "When another tap is turned on during a shower";
    private static final String SCALDS = "From 44 °C water can scald.";

    @TempDir
    private Path folder;

    @Test
    void everyPageForTheCustomerTellsHowHotItGetsWhenATapOpens() throws IOException {
        for (String file : new String[] {"alder-beck.job", "heaters.catalogue", "prices.csv"}) {
            Files.copy(Run.DEMO.resolve(file), folder.resolve(file));
        }
        Path book = folder.resolve("quote.xlsx");
        Path pdf = folder.resolve("quote.pdf");
        Run run = Run.of(
                "quote",
                folder.resolve("alder-beck.job"),
                "--book",
                folder.resolve("prices.csv"),
                "--out",
                book,
                "--pdf",
                pdf,
                "--json");
        assertEquals(0, run.status(), run.err());
        String caution = caution(run);
        assertTrue(caution.matches(".* up to \\d\\d °C with “.*"), caution);
        assertTrue(caution.contains(SCALDS), caution);
        assertTrue(quotePage(book).contains(caution));
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            String text = new PDFTextStripper().getText(document);
            // Lines break at spaces and behind hyphens.
            assertTrue(text.replaceAll("[\\s\\u00a0]+", "").contains(caution.replaceAll("[\\s\\u00a0]+", "")), text);
        }
    }

    private static String caution(Run run) throws IOException {
        for (JsonNode one : new ObjectMapper().readTree(run.out()).findValue("cautions")) {
            if (one.asText().startsWith(CAUTION)) {
                return one.asText();
            }
        }
        throw new AssertionError(run.out());
    }

    private static String quotePage(Path book) throws IOException {
        StringBuilder all = new StringBuilder();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(book))) {
            for (Row row : workbook.getSheet("Quote")) {
                for (Cell cell : row) {
                    all.append(cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "")
                            .append('\n');
                }
            }
        }
        return all.toString();
    }
}
