// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.workbook.Office;

/** A survey as a workbook and back; LibreOffice and POI change it between as a person would. */
class SurveyFormTest {
    private static final String VALUE = "C";

    @TempDir
    Path folder;

    static Stream<String> jobs() throws IOException {
        try (Stream<Path> files = Files.list(Run.DEMO)) {
            return files
                    .map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".job"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    private Path form(String job, String language) throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        Path form = folder.resolve("form.xlsx");
        Run run = Run.of("form", Run.DEMO.resolve(job), "--out", form, "--language", language);
        assertEquals(0, run.status(), run.err());
        return form;
    }

    private Job back(Path form) {
        Path out = folder.resolve("back.job");
        Run run = Run.of("read", form, "--out", out);
        assertEquals(0, run.status(), run.err());
        return JobFile.load(out);
    }

    /** What a form asks: the survey and the catalogue. */
    private static Job asked(String job) {
        Job asked = JobFile.load(Run.DEMO.resolve(job));
        asked.setQuote(null);
        asked.setCompletion(null);
        return asked;
    }

    private static void assertSame(Job expected, Job found) {
        assertTrue(EcoreUtil.equals(expected, found), () -> text(expected) + "\n" + text(found));
    }

    private static String text(Job job) {
        return new String(JobFile.form().bytes("job", job), java.nio.charset.StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void aDemonstrationJobComesBackEqual(String job) throws IOException {
        assertSame(asked(job), back(form(job, "en")));
    }

    @ParameterizedTest
    @MethodSource("jobs")
    void aDemonstrationJobComesBackEqualFromAGermanForm(String job) throws IOException {
        assertSame(asked(job), back(form(job, "de")));
    }

    @ParameterizedTest
    @ValueSource(strings = {"alder-beck.job", "birch-syke.job"})
    void aFormSavedByLibreOfficeComesBackEqual(String job) throws IOException, InterruptedException {
        Office.assumePresent();
        Path form = form(job, "en");
        Office.convert(folder, "xlsx", form);
        assertSame(asked(job), back(folder.resolve("out/form.xlsx")));
    }

    @Test
    void aReadingThatIsChangedAndSavedByLibreOfficeIsRead() throws IOException, InterruptedException {
        Office.assumePresent();
        Path form = form("rowan-brook.job", "en");
        type(form, "Static pressure", VALUE, 2.95);
        type(form, "Running pressure", VALUE, "190 kPa");
        Office.convert(folder, "xlsx", form);
        Job job = back(folder.resolve("out/form.xlsx"));
        assertEquals(
                "2.95 bar ± 0.05 bar",
                job.getSurvey().getWater().getTest().getStaticPressure().toString());
        assertEquals(
                "190 kPa ± 0.05 bar",
                job.getSurvey().getWater().getTest().getRunningPressure().toString());
    }

    @Test
    void aBlankFormThatIsFilledInIsAJob() throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        Path form = folder.resolve("blank.xlsx");
        assertEquals(0, Run.of("form", "--out", form).status());
        type(form, "Taken by", VALUE, "a colleague");
        type(form, "Static pressure", VALUE, 3);
        type(form, "Static pressure", "D", 0.1);
        type(form, "Main bonding conductor", "E", "not there");
        type(form, "Tails", "E", "not seen");
        Path out = folder.resolve("new.job");
        Run run = Run.of("read", form, "--out", out, "--catalogue", "heaters.catalogue");
        assertEquals(0, run.status(), run.err());
        Job job = JobFile.load(out);
        assertEquals("heaters.catalogue", job.getCatalogue());
        assertEquals(
                "3 bar ± 0.1 bar",
                job.getSurvey().getWater().getTest().getStaticPressure().toString());
        assertEquals(false, job.getSurvey().getElectricity().getHasMainBonding());
        assertEquals(null, job.getSurvey().getElectricity().getTails());
        assertEquals(0, Run.of("assess", out).status());
    }

    @Test
    void everyWrongCellIsNamedAndNothingIsWritten() throws IOException {
        Path form = form("rowan-brook.job", "en");
        type(form, "Static pressure", VALUE, "three");
        type(form, "Service fuse", VALUE, "80 W");
        type(form, "Earthing arrangement", VALUE, "TN-C-S, combined");
        type(form, "Tails", "E", "not there");
        type(form, "Kind of dwelling", "D", 3);
        Path out = folder.resolve("back.job");
        Run run = Run.of("read", form, "--out", out);
        assertEquals(2, run.status());
        assertFalse(Files.exists(out));
        assertTrue(
                run.err().contains("sheet Water, cell C") && run.err().contains("Static pressure \"three\""),
                run.err());
        assertTrue(run.err().contains("Service fuse \"80 W\""), run.err());
        assertTrue(run.err().contains("Earthing arrangement \"TN-C-S, combined\""), run.err());
        assertTrue(run.err().contains("TN-C-S, combined neutral and earth up to the origin"), run.err());
        assertTrue(run.err().contains("Tails"), run.err());
        assertTrue(run.err().contains("Kind of dwelling"), run.err());
        assertEquals(5, run.err().lines().count(), run.err());
    }

    @Test
    void whatIsWrongBetweenReadingsNamesTheCellToo() throws IOException {
        Path form = form("rowan-brook.job", "en");
        type(form, "Running pressure", VALUE, 4.5);
        Run run = Run.of("read", form, "--out", folder.resolve("back.job"));
        assertEquals(2, run.status());
        assertTrue(
                run.err().contains("sheet Water, cell C")
                        && run.err().contains("survey.water.test.runningPressure \"4.5 bar"),
                run.err());
    }

    @Test
    void anUnknownWordNamesTheNearest() throws IOException {
        Path form = form("rowan-brook.job", "en");
        type(form, "Kind", VALUE, "breaker-bq", "Electricity");
        Run run = Run.of("read", form, "--out", folder.resolve("back.job"));
        assertEquals(2, run.status());
        assertTrue(run.err().contains("sheet Electricity") && run.err().contains("did you mean breaker-b?"), run.err());
    }

    @Test
    void noFileIsReplaced() throws IOException {
        Path form = form("rowan-brook.job", "en");
        Path out = folder.resolve("back.job");
        Files.writeString(out, "somebody's work");
        Run run = Run.of("read", form, "--out", out);
        assertEquals(2, run.status());
        assertEquals("somebody's work", Files.readString(out));
        Run onto = Run.of("form", Run.DEMO.resolve("rowan-brook.job"), "--out", Run.DEMO.resolve("rowan-brook.job"));
        assertEquals(2, onto.status());
    }

    @Test
    void anotherWorkbookIsRefused() throws IOException {
        Path other = folder.resolve("other.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(other)) {
            book.createSheet("list").createRow(0).createCell(0).setCellValue("dwelling");
            book.write(out);
        }
        Run run = Run.of("read", other, "--out", folder.resolve("back.job"));
        assertEquals(2, run.status());
        assertTrue(run.err().contains("it is not a survey form; write one with the verb form"), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void theFormForAClipboardHasTwoPages(String language) throws IOException {
        Path out = folder.resolve("form.pdf");
        Run run = Run.of("form", "--out", out, "--language", language);
        assertEquals(0, run.status(), run.err());
        try (PDDocument document = Loader.loadPDF(out.toFile())) {
            assertEquals(2, document.getNumberOfPages());
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("mg/L") && text.contains("mm²") && text.contains("MΩ"), text);
            int boxes = text.replaceAll("[^\u2610]", "").length();
            assertTrue(boxes > 100, "a box for each reading that is not there or was not seen: " + boxes);
        }
    }

    @Test
    void theFormOfAJobInHandAsksOnlyWhatIsMissing() throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        Path job = folder.resolve("house.job");
        Job house = JobFile.load(Run.DEMO.resolve("rowan-brook.job"));
        house.getSurvey().getWater().getTest().setStaticPressure(null);
        house.getSurvey().getElectricity().getCircuit().getSegments().get(0).setLength(null);
        JobFile.save(house, job);
        Path out = folder.resolve("missing.pdf");
        Run run = Run.of("form", job, "--missing", "--out", out);
        assertEquals(0, run.status(), run.err());
        try (PDDocument document = Loader.loadPDF(out.toFile())) {
            assertEquals(1, document.getNumberOfPages());
            String text = new PDFTextStripper().getText(document).replaceAll("[\\s\\u00a0]+", " ");
            assertTrue(text.contains("Checks wait for these"), text);
            assertTrue(text.contains("Two-point test: Static pressure, bar"), text);
            assertTrue(text.contains("Length, m (surface run)"), text);
            assertFalse(text.contains("Running pressure"), text);
            assertFalse(text.contains("Service fuse, A"), text);
        }
    }

    @Test
    void aJobIsPrintedOnlyForWhatItLacks() {
        Run run = Run.of("form", Run.DEMO.resolve("rowan-brook.job"), "--out", folder.resolve("form.pdf"));
        assertEquals(2, run.status());
        assertTrue(run.err().contains("--missing and --out FORM.pdf together"), run.err());
        assertFalse(Files.exists(folder.resolve("form.pdf")));
        Run blank = Run.of("form", "--missing", "--out", folder.resolve("form.pdf"));
        assertEquals(2, blank.status(), "nothing is missing of no job");
        Run workbook =
                Run.of("form", Run.DEMO.resolve("rowan-brook.job"), "--missing", "--out", folder.resolve("form.xlsx"));
        assertEquals(2, workbook.status());
        assertFalse(Files.exists(folder.resolve("form.pdf")) || Files.exists(folder.resolve("form.xlsx")));
    }

    private static void type(Path form, String label, String column, Object value) throws IOException {
        type(form, label, column, value, "");
    }

    /** Types into the row of a label, as a person with the open workbook does. */
    private static void type(Path form, String label, String column, Object value, String sheetName)
            throws IOException {
        byte[] bytes = Files.readAllBytes(form);
        try (InputStream in = new java.io.ByteArrayInputStream(bytes);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            Row row = row(book, label, sheetName);
            // A cell made anew: into a text that stands inline POI would write beside it.
            org.apache.poi.ss.usermodel.CellStyle style =
                    row.getCell(column.charAt(0) - 'A').getCellStyle();
            Cell cell = row.createCell(column.charAt(0) - 'A');
            cell.setCellStyle(style);
            if (value instanceof Number number) {
                cell.setCellValue(number.doubleValue());
            } else {
                cell.setCellValue(value.toString());
            }
            try (OutputStream out = Files.newOutputStream(form)) {
                book.write(out);
            }
        }
    }

    private static Row row(XSSFWorkbook book, String label, String sheetName) {
        DataFormatter texts = new DataFormatter();
        for (Sheet sheet : book) {
            for (Row row : sheet) {
                String found = texts.formatCellValue(row.getCell(1));
                boolean reading = texts.formatCellValue(row.getCell(0)).startsWith("reading");
                if (reading
                        && (found.equals(label) || found.startsWith(label + ","))
                        && (sheetName.isEmpty() || sheet.getSheetName().equals(sheetName))) {
                    return row;
                }
            }
        }
        throw new AssertionError("the form has no row " + label);
    }

    /** What is odd in a survey stops neither of both verbs, and both say it, beside what they wrote. */
    @Test
    void whatIsOddIsSaidWhenAFormIsWrittenAndRead() throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        Path job = Files.writeString(
                folder.resolve("odd.job"),
                Files.readString(Run.DEMO.resolve("rowan-brook.job"))
                        .replace("winterIntake=\"5 °C\"", "winterIntake=\"35 °C\""));
        Path form = folder.resolve("form.xlsx");
        Run written = Run.of("form", job, "--out", form);
        assertEquals(0, written.status(), written.err());
        assertTrue(written.err().contains("above the warmest month"), written.err());
        assertEquals("Written: " + form, written.out().strip());
        Path back = folder.resolve("back.job");
        Run read = Run.of("read", form, "--out", back);
        assertEquals(0, read.status(), read.err());
        assertTrue(read.err().contains("above the warmest month"), read.err());
        assertEquals("Written: " + back, read.out().strip());
    }

    private static Path written(Path form) {
        Run run = Run.of("form", Run.DEMO.resolve("rowan-brook.job"), "--out", form);
        assertEquals(0, run.status(), run.err());
        return form;
    }

    @Test
    void theNameOfAnOutputSaysItsKindAndNothingThatAJobNamesIsReplaced() throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        Path text = folder.resolve("form.txt");
        assertEquals(2, Run.of("form", "--out", text).status());
        Path form = written(folder.resolve("good.xlsx"));
        assertEquals(2, Run.of("read", form, "--out", text).status());
        assertFalse(Files.exists(text));
        Job house = JobFile.load(Run.DEMO.resolve("rowan-brook.job"));
        Photo photo = SurveyFactory.eINSTANCE.createPhoto();
        photo.setFile("plan.xlsx");
        house.getSurvey().getPhotos().add(photo);
        Path job = folder.resolve("house.job");
        JobFile.save(house, job);
        Path plan = Files.writeString(folder.resolve("plan.xlsx"), "somebody's plan");
        Run run = Run.of("form", job, "--out", plan);
        assertEquals(2, run.status(), run.out());
        assertEquals("somebody's plan", Files.readString(plan));
    }
}
