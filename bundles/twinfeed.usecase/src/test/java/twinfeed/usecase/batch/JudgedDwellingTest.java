// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.survey.Survey;
import twinfeed.usecase.Demo;

/** What a screen is told of a list of dwellings while it is judged. */
final class JudgedDwellingTest {
    private static final Path LIST = Demo.FOLDER.resolve("dwellings.csv");

    @TempDir
    private Path folder;

    /** The screen has the order of the workbook's sheet, whose second column is the dwelling. */
    @Test
    void orderIsThatOfTheWorkbook() throws Exception {
        Path out = folder.resolve("out.xlsx");
        List<JudgedDwelling> told = new ArrayList<>();
        BatchReport report =
                DemoBatch.like("alder-beck", DemoBatch.DAY).write(LIST, out, (rows, all, before) -> {}, told::add);
        assertEquals(report.judged(), told.size());
        List<String> sorted = told.stream()
                .sorted(JudgedDwelling.MOST_URGENT_FIRST)
                .map(JudgedDwelling::name)
                .toList();
        List<String> written = new ArrayList<>();
        try (InputStream in = Files.newInputStream(out);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            book.getSheet("Dwellings").forEach(row -> {
                if (row.getCell(1) != null && sorted.contains(row.getCell(1).toString())) {
                    written.add(row.getCell(1).toString());
                }
            });
        }
        assertEquals(written, sorted);
    }

    @Test
    void stoppedWorkWritesNothing() {
        Path out = folder.resolve("out.xlsx");
        BatchWriting writing = DemoBatch.like("alder-beck", DemoBatch.DAY);
        assertThrows(
                CancellationException.class,
                () -> writing.write(
                        LIST,
                        out,
                        (rows, all, before) -> {
                            throw new CancellationException();
                        },
                        dwelling -> {}));
        assertFalse(Files.exists(out));
    }

    @Test
    void surveyOfOneRowHasItsOwnReadings() {
        Survey survey = DemoBatch.like("alder-beck", DemoBatch.DAY).survey(LIST, 3);
        assertEquals("Alder Beck 2", survey.getSite().getName());
        assertEquals(
                "3.0 bar ± 0.05 bar",
                survey.getWater().getTest().getStaticPressure().toString());
        assertEquals(
                List.of("someHeatButWeak"),
                survey.getSymptoms().stream().map(symptom -> symptom.getKey()).toList(),
                "what is complained of is the row's own");
        assertNull(survey.getTakenBy(), "nothing is taken over that is of the template's house alone");
        assertThrows(RuntimeException.class, () -> DemoBatch.like("alder-beck", DemoBatch.DAY)
                .survey(LIST, 4000));
    }
}
