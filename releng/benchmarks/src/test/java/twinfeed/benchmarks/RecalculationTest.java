// SPDX-License-Identifier: EPL-2.0
package twinfeed.benchmarks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.workbook.Recalculation;

/**
 * LibreOffice, set to recalculate always and with every written value poisoned, as judge of the workbooks: what it computes from the
 * formulas is what the program wrote, to 1e-9.
 */
class RecalculationTest {
    private static final int AT_ONCE = 10;
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
}
