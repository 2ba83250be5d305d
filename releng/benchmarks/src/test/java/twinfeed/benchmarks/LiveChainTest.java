// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Name;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.usecase.OpenedJob;
import twinfeed.workbook.Office;

/**
 * An input changed in the workbook comes to what the program gives for the changed house, to 1e-9 (the hottest moment to 1e-3), on the sheet of checks: as found and
 * with the work done. The judge is LibreOffice, told to recalculate everything.
 */
class LiveChainTest {
    private static final double NEAR = 1e-9;

    /** Its flow can lie where the friction in a pipe jumps (Re = 2000): the rounds go to and fro over the jump at which the search stops. */
    private static final String AT_A_JUMP = "pressure.scald";

    private static final double NEAR_A_JUMP = 1e-3;

    /** What the workbook does not follow: the static pressure of a house of which too little is known for a working. */
    private static final String ONLY_THE_PROGRAM = "pressure.static";

    private static final List<String> HOUSES =
            List.of("alder-beck", "rowan-brook", "hazel-ghyll", "willow-mere", "birch-syke");

    /** In every run each house has every third of its inputs changed, its neighbours the others; all of them by the profile "whole-judges". */
    private static final int EVERY = Integer.getInteger("twinfeed.changes.every", 3);

    private static final int LEAST = 6;

    private final Books books = new Books();

    @TempDir
    private Path folder;

    private static List<String> houses() {
        return HOUSES;
    }

    @ParameterizedTest
    @MethodSource("houses")
    void aChangedInputGivesWhatTheProgramGives(String name) throws Exception {
        Office.assumePresent();
        OpenedJob job = books.opened(name + ".job");
        byte[] written = books.of(job);
        Map<ChangedInput, Path> files = new LinkedHashMap<>();
        List<ChangedInput> inputs = inputs(written, job);
        assertTrue(inputs.size() >= LEAST, inputs::toString);
        for (int at = HOUSES.indexOf(name) % EVERY; at < inputs.size(); at += EVERY) {
            ChangedInput change = inputs.get(at);
            files.put(change, Files.write(folder.resolve(change + ".xlsx"), withInput(written, change, job)));
        }
        Office.convert(folder, "xlsx", files.values().toArray(new Path[0]));
        List<String> differences = new ArrayList<>();
        int compared = 0;
        List<OptionAssessment> before = books.judged(job).record().getOptions();
        for (ChangedInput change : files.keySet()) {
            OpenedJob copy =
                    new OpenedJob(job.file(), EcoreUtil.copy(job.job()), EcoreUtil.copy(job.catalogue()), List.of());
            change.set(copy);
            List<OptionAssessment> expected = books.judged(copy).record().getOptions();
            byte[] recalculated = Files.readAllBytes(folder.resolve("out").resolve(change + ".xlsx"));
            try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(recalculated))) {
                compared += compare(change, before, expected, book, differences);
            }
        }
        System.out.println(name + ": " + files.keySet() + ", " + compared + " figures");
        differences.stream().limit(40).forEach(System.out::print);
        assertEquals(List.of(), differences);
        assertTrue(compared > files.size() * 10, "compared: " + compared);
    }

    /** The inputs that the house has and its workings use. */
    private static List<ChangedInput> inputs(byte[] written, OpenedJob job) throws Exception {
        List<ChangedInput> inputs = new ArrayList<>();
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            for (ChangedInput input : ChangedInput.values()) {
                if (input.in(job) && book.getName(input.cellName(job)) != null) {
                    inputs.add(input);
                }
            }
        }
        return inputs;
    }

    /** The book with one input changed. */
    private static byte[] withInput(byte[] written, ChangedInput change, OpenedJob job) throws Exception {
        try (XSSFWorkbook book = new XSSFWorkbook(new ByteArrayInputStream(written))) {
            Name named = book.getName(change.cellName(job));
            CellReference place = new CellReference(named.getRefersToFormula());
            Cell cell =
                    book.getSheet(place.getSheetName()).getRow(place.getRow()).getCell(place.getCol());
            cell.setCellValue(change.typed(cell.getNumericCellValue()));
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            book.write(out);
            return out.toByteArray();
        }
    }

    private static int compare(
            ChangedInput change,
            List<OptionAssessment> before,
            List<OptionAssessment> expected,
            XSSFWorkbook book,
            List<String> differences) {
        int compared = 0;
        Map<String, Map<String, Row>> sheet = CheckRows.of(book.getSheet("Checks"));
        List<Map<String, Row>> blocks = new ArrayList<>(sheet.values());
        int block = 0;
        for (int at = 0; at < expected.size(); at++) {
            OptionAssessment option = expected.get(at);
            compared += compare(
                    change + ", " + option.getTitle(),
                    before.get(at).getFindings(),
                    option.getFindings(),
                    blocks.get(block++),
                    differences);
            if (!before.get(at).getAfterWork().isEmpty()) {
                Map<String, Row> done = blocks.get(block++);
                if (works(before.get(at)).equals(works(option))) {
                    compared += compare(
                            change + ", " + option.getTitle() + " done",
                            before.get(at).getAfterWork(),
                            option.getAfterWork(),
                            done,
                            differences);
                }
            }
        }
        return compared;
    }

    private static List<String> works(OptionAssessment option) {
        return option.getRemedies().stream().map(Remedy::getId).toList();
    }

    private static int compare(
            String where,
            List<Finding> before,
            List<Finding> findings,
            Map<String, Row> rows,
            List<String> differences) {
        int compared = 0;
        for (Finding finding : findings) {
            Row row = rows.get(finding.getTitle());
            Double value = finding.getValue();
            if (value == null || row == null || row.getCell(2).getCellType() == CellType.BLANK) {
                continue;
            }
            if (ONLY_THE_PROGRAM.equals(finding.getKey())) {
                continue;
            }
            if (!sameCondition(before, finding)) {
                continue; // another month or tap became the worst: the sheet says that it stays at the one that was
            }
            compared++;
            check(where, finding, "value", value, row.getCell(2), differences);
            if (finding.getMargin() != null) {
                check(where, finding, "margin", finding.getMargin(), row.getCell(4), differences);
            }
        }
        return compared;
    }

    private static boolean sameCondition(List<Finding> before, Finding finding) {
        return before.stream()
                .filter(each -> each.getKey().equals(finding.getKey()))
                .anyMatch(each -> Objects.equals(condition(each), condition(finding)));
    }

    /** The condition without its figures, which change with the readings. */
    private static String condition(Finding finding) {
        return String.valueOf(finding.getCondition()).replaceAll("[0-9.]+", "");
    }

    private static void check(
            String where, Finding finding, String what, double expected, Cell cell, List<String> differences) {
        double found = cell.getNumericCellValue();
        double scale = Math.max(Math.abs(expected), Objects.requireNonNullElse(finding.getLimit(), 0.0));
        double near = finding.getKey().equals(AT_A_JUMP) ? NEAR_A_JUMP : NEAR;
        if (Math.abs(found - expected) > near * Math.max(1e-3, scale)) {
            differences.add(where + ": " + finding.getKey() + " " + what + " " + found + " instead of " + expected
                    + ", " + finding.getCondition() + "\n");
        }
    }
}
