// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TimeZone;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import twinfeed.document.DocumentException;
import twinfeed.document.Firm;
import twinfeed.document.QuoteDocument;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.workbook.text.WorkbookException;

class QuoteWorkbookTest {
    /** Texts that a spreadsheet would run as formulas, as in OWASP's page on CSV injection. */
    private static final List<String> INJECTIONS =
            List.of("=1+2", "+1+2", "-1+2", "@SUM(A1)", "=HYPERLINK(\"http://example.org\",\"x\")", "\t=1+2", "'=1+2");

    static byte[] written(QuoteDocument document) throws Exception {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        QuoteWorkbook.write(document, out);
        return out.toByteArray();
    }

    @Test
    void sameDocumentGivesTheSameBytes() throws Exception {
        assertArrayEquals(written(SampleQuote.document()), written(SampleQuote.document()));
    }

    /** What nobody decided is never good news. */
    @Test
    void whatNobodyDecidedIsNotChecked() throws Exception {
        QuoteDocument document = SampleQuote.document();
        document.quote().getOptions().forEach(option -> option.unsetVerdict());
        document.assessment().getOptions().forEach(option -> {
            option.unsetVerdict();
            option.getFindings().forEach(finding -> finding.unsetOutcome());
            option.getAfterWork().forEach(finding -> finding.unsetOutcome());
        });
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written(document)))) {
            for (String good : List.of("✓ suits", "✓ suits with work", "✓ passes")) {
                for (int at = 0; at < book.getNumberOfSheets(); at++) {
                    assertEquals(0, count(book.getSheetAt(at), good), good + " on " + book.getSheetName(at));
                }
            }
            assertTrue(count(book.getSheet("Quote"), "? not checked") > 0);
            assertTrue(count(book.getSheet("Checks"), "? not checked") > 0);
        }
    }

    @Test
    void typedTextStaysText() throws Exception {
        for (String text : INJECTIONS) {
            QuoteDocument document = SampleQuote.document();
            document.survey().getSite().setName(text);
            document.survey().setNotes(text);
            document.quote().setSummary(text);
            document.quote()
                    .getOptions()
                    .get(0)
                    .getSections()
                    .get(0)
                    .getLines()
                    .get(0)
                    .setDescription(text);
            try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written(document)))) {
                assertEquals(1, count(book.getSheet("Items"), text), text);
                // The name of the site; the notes are for colleagues and stay out.
                assertEquals(1, count(book.getSheet("Survey"), text), text);
                assertEquals(1, count(book.getSheet("Quote"), text), text);
            }
        }
    }

    private static int count(XSSFSheet sheet, String text) {
        int count = 0;
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.STRING
                        && cell.getStringCellValue().equals(text)) {
                    count++;
                }
            }
        }
        return count;
    }

    @Test
    void aTotalThatIsNotTheSumOfItsLinesIsRefused() throws Exception {
        QuoteDocument document = SampleQuote.document();
        document.quote().getOptions().get(1).setTotal(new BigDecimal("623.58"));
        WorkbookException refused = assertThrows(WorkbookException.class, () -> written(document));
        assertTrue(
                refused.getMessage().contains("total is 623.58, but the printed sums give 623.57"),
                refused.getMessage());
    }

    /** The machine's language and place must not show in the file. */
    @Test
    void bytesDoNotDependOnTheMachine() throws Exception {
        byte[] here = written(SampleQuote.document());
        Locale locale = Locale.getDefault();
        TimeZone zone = TimeZone.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("de-CH"));
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Auckland"));
            assertArrayEquals(here, written(SampleQuote.document()));
        } finally {
            Locale.setDefault(locale);
            TimeZone.setDefault(zone);
        }
    }

    @Test
    void propertiesComeFromTheDocument() throws Exception {
        try (XSSFWorkbook book = read(written(SampleQuote.document()))) {
            var core = book.getProperties().getCoreProperties();
            assertEquals("Quote 2026-0042", core.getTitle());
            assertEquals("Rowan Cottage", core.getSubject());
            assertEquals("Brook & Alder Showers", core.getCreator());
            assertEquals(
                    Instant.parse("2026-11-25T00:00:00Z"), core.getCreated().toInstant());
            assertEquals(
                    Instant.parse("2026-11-25T00:00:00Z"), core.getModified().toInstant());
        }
    }

    @Test
    void nineSheetsWithoutMacrosAndLinks() throws Exception {
        byte[] bytes = written(SampleQuote.document());
        try (XSSFWorkbook book = read(bytes)) {
            List<String> names = new ArrayList<>();
            book.forEach(sheet -> names.add(sheet.getSheetName()));
            assertEquals(
                    List.of(
                            "Quote",
                            "Items",
                            "Checks",
                            "Index",
                            "Workings",
                            "Season",
                            "Drawing",
                            "Survey",
                            "On completion",
                            "Sources"),
                    names);
            assertEquals(List.of(), book.getExternalLinksTable());
            for (Sheet sheet : book) {
                assertEquals(PrintSetup.A4_PAPERSIZE, sheet.getPrintSetup().getPaperSize(), sheet.getSheetName());
                assertEquals(1, sheet.getPrintSetup().getFitWidth(), sheet.getSheetName());
                assertTrue(sheet.getFitToPage(), sheet.getSheetName());
            }
            for (String repeated : List.of("Items", "Workings", "Survey")) {
                assertNotNull(book.getSheet(repeated).getRepeatingRows(), repeated);
            }
            assertEquals(1, book.getSheet("Quote").getPrintSetup().getFitHeight());
        }
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            List<String> entries = new ArrayList<>();
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                assertFalse(
                        entry.getName().contains("vba") || entry.getName().contains("externalLink"), entry.getName());
                assertEquals(java.time.LocalDateTime.of(1980, 2, 1, 0, 0), entry.getTimeLocal());
                entries.add(entry.getName());
            }
            assertEquals(entries.stream().sorted().toList(), entries);
        }
    }

    @Test
    void datesAndMoneyAreTyped() throws Exception {
        try (XSSFWorkbook book = read(written(SampleQuote.document()))) {
            assertEquals(1, typed(book.getSheet("Quote"), LocalDate.of(2026, 12, 25)));
            assertEquals(1, typed(book.getSheet("Survey"), LocalDate.of(2022, 5, 3)));
            assertEquals(1, typed(book.getSheet("Sources"), LocalDate.of(2026, 9, 1)));
            Cell total = find(book.getSheet("Quote"), 623.57);
            assertEquals("\"£\"#,##0.00", total.getCellStyle().getDataFormatString());
            assertEquals(CellType.FORMULA, total.getCellType());
        }
    }

    private static int typed(Sheet sheet, LocalDate date) {
        int count = 0;
        for (Row row : sheet) {
            for (Cell cell : row) {
                if (cell.getCellType() == CellType.NUMERIC
                        && DateUtil.isCellDateFormatted(cell)
                        && cell.getLocalDateTimeCellValue().toLocalDate().equals(date)) {
                    count++;
                }
            }
        }
        return count;
    }

    private static Cell find(Sheet sheet, double value) {
        for (Row row : sheet) {
            for (Cell cell : row) {
                boolean formula =
                        cell.getCellType() == CellType.FORMULA && cell.getCachedFormulaResultType() == CellType.NUMERIC;
                boolean number = cell.getCellType() == CellType.NUMERIC || formula;
                if (number && cell.getNumericCellValue() == value) {
                    return cell;
                }
            }
        }
        throw new AssertionError("no cell with " + value);
    }

    /** Names that differ only by capitals are one name to a spreadsheet: L and l of one working must not be. */
    @Test
    void namesDifferByMoreThanCapitals() throws Exception {
        try (XSSFWorkbook book = read(written(SampleQuote.document()))) {
            Set<String> names = new HashSet<>();
            for (Name name : book.getAllNames()) {
                if (name.getNameName().startsWith("v_")) {
                    assertTrue(names.add(name.getNameName().toLowerCase(Locale.ROOT)), name.getNameName());
                }
            }
            assertTrue(names.contains("v_0_circuit_voltagedrop_l"));
            assertTrue(names.contains("v_0_circuit_voltagedrop_l_2"));
        }
    }

    @Test
    void chartsDrawTheCurvesOfTheOptions() throws Exception {
        try (XSSFWorkbook book = read(written(SampleQuote.document()))) {
            List<XSSFChart> charts =
                    book.getSheet("Season").createDrawingPatriarch().getCharts();
            assertEquals(2, charts.size());
            assertEquals(3, charts.get(0).getChartSeries().get(0).getSeriesCount());
            assertTrue(charts.get(1).getChartSeries().get(0).getSeriesCount() >= 5);
        }
    }

    @Test
    void picturesAreEmbeddedSmall() throws Exception {
        QuoteDocument document = SampleQuote.document();
        for (String file : List.of("unit.jpg", "gone.jpg")) {
            Photo photo = SurveyFactory.eINSTANCE.createPhoto();
            photo.setFile(file);
            photo.setCaption("The unit");
            document.survey().getPhotos().add(photo);
        }
        byte[] large = SamplePictures.jpeg(3000, 2000);
        QuoteDocument pictured =
                document.withPhotos(file -> file.equals("unit.jpg") ? new ByteArrayInputStream(large) : null);
        try (XSSFWorkbook book = read(written(pictured))) {
            assertEquals(1, book.getAllPictures().size());
            BufferedImage picture = ImageIO.read(
                    new ByteArrayInputStream(book.getAllPictures().get(0).getData()));
            assertEquals(760, picture.getWidth());
            assertEquals(507, picture.getHeight());
            assertEquals(1, count(book.getSheet("Survey"), "The picture is not there."));
        }
        assertArrayEquals(written(pictured), written(pictured));
    }

    @Test
    void aPictureThatCannotBeReadIsNamed() throws Exception {
        QuoteDocument document = SampleQuote.document();
        Photo photo = SurveyFactory.eINSTANCE.createPhoto();
        photo.setFile("broken.jpg");
        document.survey().getPhotos().add(photo);
        WorkbookException refused = assertThrows(
                WorkbookException.class,
                () -> written(document.withPhotos(file -> new ByteArrayInputStream(new byte[] {1, 2, 3}))));
        assertEquals("photo broken.jpg: it is no picture that can be read; JPEG and PNG can", refused.getMessage());
    }

    @Test
    void costIsNeverShown() throws Exception {
        QuoteDocument document = SampleQuote.document();
        document.quote()
                .getOptions()
                .get(0)
                .getSections()
                .get(0)
                .getLines()
                .get(0)
                .setCost(new BigDecimal("131.3131"));
        byte[] bytes = written(document);
        try (ZipInputStream zip = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                String content = new String(zip.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
                assertFalse(content.contains("131.3131"), entry.getName());
            }
        }
    }

    @Test
    void aQuoteWithNothingButADateIsWritten() throws Exception {
        Quote bare = QuoteFactory.eINSTANCE.createQuote();
        bare.setDate(LocalDate.of(2026, 11, 25));
        QuoteDocument document = QuoteDocument.of(
                SurveyFactory.eINSTANCE.createSurvey(),
                AssessmentFactory.eINSTANCE.createAssessment(),
                bare,
                Firm.of("", "", ""),
                "0.1.0",
                Locale.UK);
        try (XSSFWorkbook book = read(written(document))) {
            assertEquals(10, book.getNumberOfSheets());
        }
    }

    @Test
    void aQuoteWithoutDateIsRefused() {
        Quote bare = QuoteFactory.eINSTANCE.createQuote();
        assertThrows(
                DocumentException.class,
                () -> QuoteDocument.of(
                        SurveyFactory.eINSTANCE.createSurvey(),
                        AssessmentFactory.eINSTANCE.createAssessment(),
                        bare,
                        Firm.of("", "", ""),
                        "0.1.0",
                        Locale.UK));
    }

    /** Four options, long texts, sixty assumptions: the page is still one page, and is not printed much smaller for it. */
    @Test
    void aFullQuoteStaysOnItsPage() throws Exception {
        QuoteDocument document = SampleQuote.document();
        Quote quote = document.quote();
        quote.getOptions()
                .add(org.eclipse.emf.ecore.util.EcoreUtil.copy(
                        quote.getOptions().get(0)));
        quote.getOptions()
                .add(org.eclipse.emf.ecore.util.EcoreUtil.copy(
                        quote.getOptions().get(1)));
        for (int at = 0; at < 60; at++) {
            quote.getAssumptions()
                    .add("Assumption " + at
                            + " about a part of the house that could not be seen over its whole length");
            quote.getTerms()
                    .add("Term " + at + " in a sentence of the length that terms of a quote usually have in practice");
        }
        try (XSSFWorkbook book = read(written(document))) {
            double height = 0;
            String all = "";
            for (Row row : book.getSheet("Quote")) {
                height += row.getHeightInPoints();
                for (Cell cell : row) {
                    all += cell.getCellType() == CellType.STRING ? cell.getStringCellValue() : "";
                }
            }
            double page = 842 - 2 * 0.6 * 72;
            assertTrue(height < page * 1.08, "height " + height);
            for (String caution : quote.getCautions()) {
                assertTrue(all.contains(caution), caution);
            }
            assertTrue(all.contains("more, on the sheet Sources"));
            for (String assumption : quote.getAssumptions()) {
                assertEquals(1, count(book.getSheet("Sources"), assumption), assumption);
            }
        }
    }

    /** Where each price comes from made the letters half as small. */
    @Test
    void theItemsArePrintedWithoutTheOriginOfTheirPrices() throws Exception {
        try (XSSFWorkbook book = read(written(SampleQuote.document()))) {
            int last = book.getSheet("Items").getLastRowNum() + 1;
            assertEquals("Items!$A$1:$I$" + last, book.getPrintArea(book.getSheetIndex("Items")));
            assertTrue(book.getSheet("Items")
                    .getRow(3)
                    .getCell(8)
                    .getStringCellValue()
                    .equals("With tax"));
        }
    }

    @Test
    void printingTheBookDoesNotPrintEveryWorking() throws Exception {
        try (XSSFWorkbook book = read(written(SampleQuote.document()))) {
            // One empty cell: an empty page is not printed.
            assertEquals("Workings!$A$5:$A$5", book.getPrintArea(book.getSheetIndex("Workings")));
            assertEquals("Index!$A$3:$A$3", book.getPrintArea(book.getSheetIndex("Index")));
            assertTrue(book.getSheet("Workings").getLastRowNum() > 50);
        }
    }

    private static XSSFWorkbook read(byte[] bytes) throws Exception {
        return new XSSFWorkbook(new ByteArrayInputStream(bytes));
    }
}
