// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.assessment.Finding;
import twinfeed.model.survey.CableSegment;
import twinfeed.units.Length;
import twinfeed.usecase.OpenedJob;
import twinfeed.workbook.Recalculation;

/**
 * LibreOffice, set to recalculate always and with every written value poisoned, as judge of the workbooks: what it computes from the
 * formulas is what the program wrote, to 1e-9.
 */
class RecalculationTest {
    private static final int AT_ONCE = 25;
    /** A sample in every run; all 200 by the profile "whole-judges". A multiple of {@link #AT_ONCE}. */
    private static final int SURVEYS = Integer.getInteger("twinfeed.surveys", AT_ONCE);

    private final Books books = new Books();

    @TempDir
    private Path folder;

    private int judge(String name, Map<String, byte[]> some) throws Exception {
        Map<String, Recalculation.Outcome> outcomes =
                Recalculation.judge(Files.createDirectories(folder.resolve(name)), some);
        int formulas = 0;
        for (Map.Entry<String, Recalculation.Outcome> outcome : outcomes.entrySet()) {
            assertEquals(List.of(), outcome.getValue().differences(), outcome.getKey());
            formulas += outcome.getValue().formulas();
        }
        return formulas;
    }

    @Test
    void theDemonstrationJobs() throws Exception {
        twinfeed.workbook.Office.assumePresent();
        Map<String, byte[]> demo = new LinkedHashMap<>();
        for (String job : List.of("alder-beck", "rowan-brook", "hazel-ghyll", "willow-mere", "birch-syke")) {
            demo.put(job + ".xlsx", books.of(books.opened(job + ".job")));
        }
        int formulas = judge("demo", demo);
        System.out.println("demonstration: " + formulas + " formulas");
        assertTrue(formulas > 5_000, "formulas: " + formulas);
    }

    @Test
    void randomSurveys() throws Exception {
        twinfeed.workbook.Office.assumePresent();
        int formulas = 0;
        for (int first = 0; first < SURVEYS; first += AT_ONCE) {
            Map<String, byte[]> some = new LinkedHashMap<>();
            for (int seed = first; seed < first + AT_ONCE; seed++) {
                some.put("survey-" + seed + ".xlsx", books.random(seed));
            }
            formulas += judge("random-" + first, some);
        }
        System.out.println(SURVEYS + " random surveys: " + formulas + " formulas");
        assertTrue(formulas > SURVEYS * 100, "formulas: " + formulas);
    }

    /** A length changed in the workings and a length changed in the survey come to the same voltage drop. */
    @Test
    void aLengthChangedInTheWorkingsGivesWhatTheProgramGives() throws Exception {
        twinfeed.workbook.Office.assumePresent();
        OpenedJob job = books.opened("alder-beck.job");
        CableSegment segment = segment(job);
        Finding before = drop(job);
        double was = segment.getLength().si();
        Path changed = Files.write(folder.resolve("changed.xlsx"), withLength(books.of(job), was, was + 3.3));
        twinfeed.workbook.Office.convert(folder, "xlsx", changed);
        segment.setLength(Length.valueOf(was + 3.3 + " m"));
        Finding after = drop(job);
        assertTrue(after.getValue() > before.getValue() + 0.5, "the length bears on the drop");
        try (XSSFWorkbook book =
                new XSSFWorkbook(new ByteArrayInputStream(Files.readAllBytes(folder.resolve("out/changed.xlsx"))))) {
            assertEquals(after.getValue(), value(book.getSheet("Workings"), "Value of the check"), 1e-9);
            assertEquals(after.getMargin(), value(book.getSheet("Workings"), "Margin"), 1e-9);
        }
    }

    private static CableSegment segment(OpenedJob job) {
        return job.job().getSurvey().getElectricity().getCircuit().getSegments().get(1);
    }

    /** The drop with the heater whose working stands first in the book: the unit that is there. */
    private Finding drop(OpenedJob job) {
        OpenedJob copy = new OpenedJob(job.file(), EcoreUtil.copy(job.job()), job.catalogue(), List.of());
        return books.judged(copy).record().getOptions().get(0).getFindings().stream()
                .filter(finding -> "circuit.voltageDrop".equals(finding.getKey()))
                .findFirst()
                .orElseThrow();
    }

    private static byte[] withLength(byte[] written, double was, double now) throws Exception {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            Row row = dropRows(book.getSheet("Workings"))
                    .filter(one -> text(one, 0).equals("L2") && one.getCell(2).getNumericCellValue() == was)
                    .findFirst()
                    .orElseThrow();
            row.getCell(2).setCellValue(now);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(out);
            return out.toByteArray();
        }
    }

    /** The rows of the first working of the voltage drop. */
    private static Stream<Row> dropRows(Sheet workings) {
        return StreamSupport.stream(workings.spliterator(), false)
                .dropWhile(row -> !text(row, 0).startsWith("Voltage drop"))
                .limit(40);
    }

    private static double value(Sheet workings, String label) {
        return dropRows(workings)
                .filter(row -> text(row, 0).equals(label))
                .findFirst()
                .orElseThrow()
                .getCell(2)
                .getNumericCellValue();
    }

    private static String text(Row row, int column) {
        return row.getCell(column) == null ? "" : row.getCell(column).toString();
    }
}
