// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FaultsVerbTest {
    private static final Path JOB = Run.DEMO.resolve("birch-syke.job");
    private static final Path BOOK = Run.DEMO.resolve("prices.csv");

    @TempDir
    private Path folder;

    /** The demonstration's job with a change, beside the catalogue that it names. */
    private Path changed(String job, String before, String after) throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        String text = Files.readString(Run.DEMO.resolve(job));
        assertTrue(text.contains(before), before);
        return Files.writeString(folder.resolve(job), text.replace(before, after));
    }

    private static String done(Run run) {
        assertEquals(0, run.status(), run.err());
        return run.out();
    }

    @Test
    void theDemonstrationsOpenElementIsFoundAndPriced() {
        String out = done(Run.of("faults", JOB, "--book", BOOK));
        assertTrue(out.contains("Most likely the heating elements"), out);
        assertTrue(out.contains("[NO] Element 4.0 kW"), out);
        assertTrue(out.contains("[ok] Element 4.5 kW"), out);
        assertTrue(out.contains("[x] Cover off, nothing touched: prove the tester again"), out);
        assertTrue(out.contains("Steps taken:"), out);
        assertTrue(out.contains("Expected after the repair:"), out);
        assertTrue(out.contains("We advise"), out);
        assertTrue(out.contains("GBP"), out);
    }

    @Test
    void cautionsArePrintedAlways() throws IOException {
        for (String job : List.of("birch-syke.job", "hazel-ghyll.job")) {
            String out = done(Run.of("faults", Run.DEMO.resolve(job)));
            for (String words : List.of("can kill", "local codes", "competent", "prove the tester again")) {
                assertTrue(out.contains(words), job + ": " + words);
            }
        }
    }

    @Test
    void aMissingTickIsNotSkipped() throws IOException {
        String out =
                done(Run.of("faults", changed("birch-syke.job", "step=\"deadAtTerminals\"", "step=\"provedDead\"")));
        assertTrue(out.contains("! The ticks are from an earlier procedure"), out);
        assertTrue(
                out.contains(
                        "[ ] Cover off, nothing touched: test dead at the incoming terminals, between all conductors and earth"),
                out);
    }

    @Test
    void theSupplyIsNamedWhereItExplainsTheSymptom() {
        String out = done(Run.of("faults", Run.DEMO.resolve("alder-beck.job"), "--book", BOOK));
        assertTrue(out.contains("Most likely the water or electricity supply, not a part of the unit"), out);
        assertFalse(out.contains("We advise"), out);
    }

    @Test
    void aHouseWithoutAUnitIsRefused() throws IOException {
        Run run = Run.of(
                "faults",
                changed(
                        "hazel-ghyll.job",
                        "<unit heaterId=\"h85\" age=\"6\" measuredFlow=\"6.5 L/min ± 0.5 L/min\"/>",
                        ""));
        assertEquals(2, run.status());
        assertTrue(run.err().contains("survey.unit"), run.err());
    }

    @Test
    void aUnitOfUnknownDataIsSoughtByWhatIsSaidOfIt() throws IOException {
        Path job = changed("hazel-ghyll.job", "<unit heaterId=\"h85\"", "<unit");
        String out = done(enter(job, "--answer", "littleFlowDifference=yes"));
        assertTrue(out.contains("Unit with no known data"), out);
        assertTrue(out.contains("most likely is the flow control valve"), out);
    }

    /** A firm's own data: used where they are sound, refused with the row where they are not. */
    @Test
    void aFirmsOwnDataAreUsedOrRefused() throws IOException {
        String own;
        try (java.io.InputStream stream = twinfeed.diagnosis.data.FaultData.class.getResourceAsStream("faults.csv")) {
            own = new String(stream.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
        Path good = Files.writeString(
                folder.resolve("own.csv"), own.replace("# status: judgement", "# status: our visits"));
        Path bad = Files.writeString(folder.resolve("bad.csv"), own.replace("part,relief,,3,", "part,relief,,three,"));
        try {
            System.setProperty("twinfeed.faults", good.toString());
            assertTrue(done(Run.of("faults", JOB)).contains("our visits"));
            for (Path wrong : List.of(bad, folder.resolve("absent.csv"))) {
                System.setProperty("twinfeed.faults", wrong.toString());
                Run run = Run.of("faults", JOB);
                assertEquals(2, run.status());
                assertTrue(run.err().contains(wrong.getFileName().toString()), run.err());
            }
        } finally {
            System.clearProperty("twinfeed.faults");
        }
    }

    @Test
    void theAssessmentCarriesTheFindings() {
        String out = done(Run.of("assess", JOB, "--brief"));
        assertTrue(out.contains("Likeliest cause"), out);
        assertTrue(out.contains("4.5 of 8.5 kW"), out);
    }

    @Test
    void whatIsTickedOrAnsweredIsDoneOnNoDayThatIsStillToCome() throws IOException {
        Path job = Files.copy(JOB, folder.resolve("ahead.job"));
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        byte[] before = Files.readAllBytes(job);
        for (String time : List.of("2031-10-06", "2031-10-06 09:40", "2026-11-27T00:00")) {
            Run run = Run.of("faults", job, "--answer", "kettling=yes", "--by", "A. Fitter", "--at", time);
            assertEquals(2, run.status(), run.err());
            assertTrue(
                    run.err()
                            .contains(
                                    "--at " + time + ": this day is still to come, today is 2026-11-25; give the day on"
                                            + " which it was done"),
                    run.err());
        }
        assertArrayEquals(before, Files.readAllBytes(job));
    }

    /**
     * The check knows less of the supplies than the fault-finding: that the voltage drop of this house is small takes a little from the supply's
     * chance. Two figures for one cause stand beside each other only where it is said what sets them apart.
     */
    @Test
    void theCheckSaysWhyItsChanceIsNotThatOfTheFaultFinding() {
        Path job = Run.DEMO.resolve("alder-beck.job");
        String sheet = done(Run.of("faults", job));
        assertTrue(sheet.contains("not a part of the unit (about 50 %)"), sheet);
        assertTrue(sheet.contains("Does the circuit drop too much voltage, by calculation? No."), sheet);
        String check = done(Run.of("assess", job, "--brief"))
                .lines()
                .filter(line -> line.contains("Likeliest cause: What was reported"))
                .findFirst()
                .orElse("");
        assertTrue(check.contains("electricity supply (54 %)"), check);
        assertTrue(
                check.endsWith("Of the supplies it knows the pressure at the switch only; the fault-finding weighs the"
                        + " voltage and the tolerances of the readings too, and its chances take precedence."),
                check);
    }

    private Run enter(Path job, String... more) {
        List<Object> words = new java.util.ArrayList<>(List.of("faults", job, "--by", "A. Fitter", "--at", "10:00"));
        words.addAll(List.of(more));
        return Run.of(words.toArray());
    }

    private Path firm() throws IOException {
        return Files.writeString(folder.resolve("own.properties"), "name=Own Firm (invented)\n");
    }

    private static String cells(Path book) throws IOException {
        StringBuilder text = new StringBuilder();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(book))) {
            workbook.forEach(sheet ->
                    sheet.forEach(row -> row.forEach(cell -> text.append(cell).append('\n'))));
        }
        return text.toString();
    }

    /** The firm beside the price book, another one that is named, or none. */
    @Test
    void theJobSheetBearsTheFirmsName() throws IOException {
        Path sheet = folder.resolve("sheet.xlsx");
        assertTrue(done(Run.of("faults", JOB, "--book", BOOK, "--out", sheet)).contains("Written: " + sheet));
        assertTrue(cells(sheet).contains("Netherquill Showers (invented)"), cells(sheet));
        done(Run.of("faults", JOB, "--book", BOOK, "--firm", firm(), "--out", sheet));
        assertTrue(
                cells(sheet).contains("Own Firm (invented)")
                        && !cells(sheet).contains("Netherquill Showers (invented)"),
                cells(sheet));
        done(Run.of("faults", JOB, "--out", sheet));
        assertFalse(cells(sheet).contains("Netherquill Showers (invented)"), cells(sheet));
        Path pdf = folder.resolve("sheet.pdf");
        assertTrue(done(Run.of("faults", JOB, "--pdf", pdf)).contains("Written: " + pdf));
        assertTrue(Files.exists(pdf));
    }

    @Test
    void aNoticeAndARecordBearTheFirmsNameToo() throws IOException {
        Path job = changed("birch-syke.job", "condition=\"sound\"", "condition=\"scorched\"");
        Path notice = folder.resolve("notice.xlsx");
        done(Run.of("notice", job, "--book", BOOK, "--out", notice));
        assertTrue(cells(notice).contains("Netherquill Showers (invented)"), cells(notice));
        done(Run.of("notice", job, "--firm", firm(), "--out", notice));
        assertTrue(cells(notice).contains("Own Firm (invented)"), cells(notice));
        done(Run.of("notice", job, "--out", notice));
        assertFalse(cells(notice).contains("Netherquill Showers (invented)"), cells(notice));
    }

    /** From a complaint to the cover, on the command line alone. */
    @Test
    void aVisitIsRecordedStepByStep() throws IOException {
        Path job = changed("hazel-ghyll.job", "Hazel Ghyll 5", "Hazel Ghyll 5");
        assertTrue(
                done(enter(job, "--answer", "coldOnEverySettingFlowGood=yes")).contains("thermal cut-out"));
        Run early = enter(job, "--answer", "cutOutOpen=yes");
        assertEquals(2, early.status());
        assertTrue(early.err().contains("showerOff"), early.err());
        Run skipped = enter(job, "--tick", "showerOff", "--tick", "noticeUp");
        assertEquals(2, skipped.status());
        assertTrue(skipped.err().contains("breakerLocked comes before it"), skipped.err());
        assertFalse(Files.readString(job).contains("showerOff"), "nothing is saved where one step is refused");
        List<String> ticks = new java.util.ArrayList<>();
        for (String step : List.of(
                "showerOff",
                "breakerLocked",
                "noticeUp",
                "isolatorOpen",
                "waterShut",
                "testerProvedBefore",
                "deadAtTerminals",
                "testerProvedAfter")) {
            ticks.addAll(List.of("--tick", step));
        }
        done(enter(job, ticks.toArray(new String[0])));
        String out = done(enter(job, "--answer", "cutOutOpen=yes"));
        assertTrue(out.contains("Most likely the thermal cut-out"), out);
        assertTrue(out.contains("[x] Cover on: shut the water at the servicing valve (A. Fitter; 10:00)"), out);
    }

    @Test
    void whatIsEnteredWrongIsRefused() throws IOException {
        Path job = changed("hazel-ghyll.job", "Hazel Ghyll 5", "Hazel Ghyll 5");
        String before = Files.readString(job);
        for (List<String> wrong : List.of(
                List.of("--answer", "singsAtNight=yes"),
                List.of("--answer", "otherTapsWeak=perhaps"),
                List.of("--tick", "hope"))) {
            Run run = enter(job, wrong.toArray(new String[0]));
            assertEquals(2, run.status(), wrong + run.out());
        }
        Run nobody = Run.of("faults", job, "--answer", "otherTapsWeak=no");
        assertEquals(2, nobody.status());
        assertTrue(nobody.err().contains("nobody"), nobody.err());
        assertEquals(before, Files.readString(job));
    }

    /** Whoever has to give the command again would answer twice. */
    @Test
    void noAnswerIsSavedWhereTheSheetCannotBeWritten() throws IOException {
        Path job = changed("hazel-ghyll.job", "Hazel Ghyll 5", "Hazel Ghyll 5");
        String before = Files.readString(job);
        Run run = enter(
                job,
                "--answer",
                "otherTapsWeak=no",
                "--out",
                folder.resolve("no/such/sheet.xlsx").toString());
        assertEquals(2, run.status(), run.out());
        assertEquals(before, Files.readString(job));
    }

    @Test
    void theSameInputGivesTheSameText() {
        assertEquals(done(Run.of("faults", JOB, "--book", BOOK)), done(Run.of("faults", JOB, "--book", BOOK)));
    }
}
