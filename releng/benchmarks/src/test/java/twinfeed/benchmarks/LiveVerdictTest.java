// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.Check;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.units.Current;
import twinfeed.usecase.OpenedJob;
import twinfeed.workbook.Office;

/** A reading changed in the workbook so that a check fails takes the verdict away, and the quote says that it is no longer the one drawn up. */
class LiveVerdictTest {
    private final Books books = new Books();

    @TempDir
    private Path folder;

    /** An isolator rated 20 A carries none of the heaters, at 30 A and more. */
    @Test
    void aFailureTakesTheVerdictAway() throws Exception {
        Office.assumePresent();
        OpenedJob job = books.opened("rowan-brook.job");
        Path changed = folder.resolve("changed.xlsx");
        Files.write(changed, withSmallIsolator(books.of(job)));
        Office.convert(folder, "xlsx", changed);
        byte[] recalculated = Files.readAllBytes(folder.resolve("out").resolve("changed.xlsx"));
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(recalculated))) {
            List<String> verdicts = texts(row(book.getSheet("Checks"), "In this house"));
            List<OptionAssessment> expected = judgedWithSmallIsolator(job);
            List<OptionAssessment> before = books.judged(job).record().getOptions();
            assertEquals(before.size(), verdicts.size(), verdicts::toString);
            int taken = 0;
            for (int at = 0; at < verdicts.size(); at++) {
                boolean fails = failsNow(before.get(at), expected.get(at));
                assertEquals(
                        fails,
                        verdicts.get(at).equals("✗ does not suit, with the readings changed here"),
                        verdicts.get(at));
                taken += fails ? 1 : 0;
            }
            assertTrue(taken > 0, verdicts::toString);
            assertTrue(allTexts(book.getSheet("Quote")).stream()
                    .anyMatch(text -> text.startsWith("Readings in this workbook were changed")));
        }
    }

    @Test
    void anUntouchedWorkbookKeepsItsVerdicts() throws Exception {
        try (XSSFWorkbook book =
                new XSSFWorkbook(new ByteArrayInputStream(books.of(books.opened("rowan-brook.job"))))) {
            assertFalse(texts(row(book.getSheet("Checks"), "In this house"))
                    .contains("✗ does not suit, with the readings changed here"));
        }
    }

    private static byte[] withSmallIsolator(byte[] written) throws Exception {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            CellReference place = new CellReference(
                    book.getName("v_survey_electricity_circuit_isolator_rating").getRefersToFormula());
            book.getSheet(place.getSheetName())
                    .getRow(place.getRow())
                    .getCell(place.getCol())
                    .setCellValue(20);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(out);
            return out.toByteArray();
        }
    }

    private List<OptionAssessment> judgedWithSmallIsolator(OpenedJob job) {
        OpenedJob copy = new OpenedJob(job.file(), EcoreUtil.copy(job.job()), job.catalogue(), List.of());
        copy.job().getSurvey().getElectricity().getCircuit().getIsolator().setRating(Current.valueOf("20 A"));
        return books.judged(copy).record().getOptions();
    }

    /** Whether the changed house fails a check on which the verdict rested: as found, or with the work of the quote where it has any. */
    private static boolean failsNow(OptionAssessment before, OptionAssessment now) {
        List<Finding> rested = before.getAfterWork().isEmpty() ? now.getFindings() : now.getAfterWork();
        return rested.stream().anyMatch(each -> Check.deciding(each.getKind()) && each.getOutcome() == Outcome.FAILS);
    }

    private static Row row(Sheet sheet, String label) {
        return StreamSupport.stream(sheet.spliterator(), false)
                .filter(row -> row.getCell(0) != null
                        && row.getCell(0).getCellType() == CellType.STRING
                        && row.getCell(0).getStringCellValue().equals(label))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> allTexts(Sheet sheet) {
        List<String> all = new ArrayList<>();
        sheet.forEach(row -> all.addAll(texts(row)));
        return all;
    }

    /** The texts of a row, without its label. */
    private static List<String> texts(Row row) {
        List<String> texts = new ArrayList<>();
        for (Cell cell : row) {
            boolean text = cell.getCellType() == CellType.STRING
                    || (cell.getCellType() == CellType.FORMULA && cell.getCachedFormulaResultType() == CellType.STRING);
            if (text
                    && !cell.getStringCellValue().isEmpty()
                    && !cell.getStringCellValue().equals("In this house")) {
                texts.add(cell.getStringCellValue());
            }
        }
        return texts;
    }
}
