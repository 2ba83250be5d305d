// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.usecase.quote.IssuedQuotes;

/** The readings after the work, the notice of an unsafe unit, the parts of an accepted quote. */
class AfterWorkVerbsTest {
    private static final Path BOOK = Run.DEMO.resolve("prices.csv");

    /** What an engineer reads after the elements of the demonstration's unit were renewed: 8.5 kW at 240 V, B40, 9 m of 10/4 mm2, TN-C-S. */
    private static final List<String> READINGS = List.of(
            "cpcContinuous=true",
            "line=0.07 ohm",
            "bonding=0.03 ohm",
            "insulation=200 Mohm",
            "elements=6.78 ohm",
            "polaritySupply=true",
            "polarity=true",
            "externalLoop=0.21 ohm",
            "loop=0.28 ohm",
            "prospectiveFault=1.2 kA",
            "residualTime=24 ms",
            "residualButton=true",
            "loadedVoltage=235 V",
            "runningPressure=1.6 bar",
            "flow=4.3 L/min",
            "intake=12 C",
            "outlet=40 C",
            "tight=true",
            "shutsDown=true",
            "work=Heating can with elements renewed.",
            "settings=Full power, knob at two thirds.",
            "instruments=Multifunction tester 0001 (invented)");

    @TempDir
    private Path folder;

    private Path job() throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        return Files.copy(Run.DEMO.resolve("birch-syke.job"), folder.resolve("birch-syke.job"));
    }

    private static Run complete(Path job, List<String> readings, Object... more) {
        List<Object> words = new ArrayList<>(
                List.of("complete", job, "--by", "Demonstration engineer", "--date", "2026-10-20", "--strict"));
        for (String reading : readings) {
            words.add("--reading");
            words.add(reading);
        }
        words.addAll(List.of(more));
        return Run.of(words.toArray());
    }

    private static List<String> with(String field, String value) {
        return READINGS.stream()
                .map(each -> each.startsWith(field + "=") ? field + "=" + value : each)
                .toList();
    }

    @Test
    void aFinishedHouseIsCompleteAndPrinted() throws IOException {
        Path job = job();
        Path record = folder.resolve("record.xlsx");
        Run run = complete(
                job,
                READINGS,
                "--out",
                record,
                "--record",
                folder.resolve("record.pdf"),
                "--customer",
                folder.resolve("page.pdf"));
        assertEquals(0, run.status(), run.out() + run.err());
        assertTrue(run.out().startsWith("Complete:"), run.out());
        assertTrue(
                run.out().contains("[ok] Loop impedance at the unit, Zs, cold: 0.28 Ω; should be at most 0.87 Ω"),
                run.out());
        assertTrue(
                run.out().contains("[ok] R1+R2 of the circuit, cold: 0.07 Ω; should be within 0.25 Ω of Zs - Ze"),
                run.out());
        assertTrue(run.out().contains("not the certificate"), run.out());
        assertTrue(pdf("record.pdf") && pdf("page.pdf"));
        List<String> end = run.out().lines().skip(run.out().lines().count() - 4).toList();
        assertTrue(end.get(0).startsWith("Caution: "), run.out());
        assertEquals(
                List.of(
                        "Written: " + record,
                        "Written: " + folder.resolve("record.pdf"),
                        "Written: " + folder.resolve("page.pdf")),
                end.subList(1, 4));
        assertTrue(Files.readString(job).contains("doneOn=\"2026-10-20\""), "the day that was given");
        String cells = cells(record);
        for (String words : List.of(
                "This is not that certificate",
                "TN-C-S",
                "circuit-breaker, type B, 40 A",
                "10 mm² / 4 mm²",
                "RCBO, type A, 30 mA",
                "automatic disconnection of supply",
                "Maximum demand",
                "Next inspection recommended by",
                "Multifunction tester 0001 (invented)",
                "Heating can with elements renewed.")) {
            assertTrue(cells.contains(words), words + "\n" + cells);
        }
        assertTrue(Files.readString(job).contains("loadedVoltage=\"235 V\""), "kept with the job");
        Run again = Run.of("complete", job, "--strict");
        assertEquals(0, again.status(), again.out());
        Run none = Run.of("notice", job);
        assertEquals(2, none.status());
        assertTrue(none.err().contains("nothing to warn of"), none.err());
        Run asked = Run.of("notice", job, "--finding", "circuit.rcd");
        assertEquals(2, asked.status());
        assertTrue(
                asked.err().strip().endsWith("circuit.rcd is no failed safety check here; failed: none"), asked.err());
    }

    private boolean pdf(String name) throws IOException {
        byte[] head = Files.readAllBytes(folder.resolve(name));
        return new String(head, 0, 5, StandardCharsets.US_ASCII).equals("%PDF-");
    }

    private static String cells(Path book) throws IOException {
        StringBuilder text = new StringBuilder();
        try (XSSFWorkbook workbook = new XSSFWorkbook(Files.newInputStream(book))) {
            for (Row row : workbook.getSheetAt(0)) {
                for (Cell cell : row) {
                    text.append(cell).append('\n');
                }
            }
        }
        return text.toString();
    }

    /**
     * Each reading beside a value that an inspector refuses. Zs: BS 7671 Table 41.3, B40 1.09 ohm, cold 80 %; insulation: Table 64, 1 Mohm;
     * trip time: 300 ms at the rated residual current (from memory); bonding 0.05 ohm (guidance, from memory); scald 44 degC (judgement).
     */
    @Test
    void eachReadingIsJudgedAgainstItsBand() throws IOException {
        Path job = job();
        for (String[] wrong : new String[][] {
            {"cpcContinuous", "false", "unsafe"},
            {"insulation", "0.5 Mohm", "unsafe"},
            {"polaritySupply", "false", "unsafe"},
            {"residualTime", "350 ms", "unsafe"},
            {"residualButton", "false", "unsafe"},
            {"loop", "1.30 ohm", "unsafe"},
            {"bonding", "0.30 ohm", "unsafe"},
            {"outlet", "46 C", "unsafe"},
            {"tight", "false", "unsafe"},
            {"loadedVoltage", "198 V", "wrong"},
            {"runningPressure", "0.3 bar", "wrong"},
            {"flow", "2.2 L/min", "wrong"},
            {"elements", "13.0 ohm", "wrong"}
        }) {
            Run run = complete(job, with(wrong[0], wrong[1]), "--json");
            assertEquals(1, run.status(), wrong[0] + run.err());
            assertTrue(run.out().contains("\"state\" : \"" + wrong[2] + "\""), wrong[0] + run.out());
        }
    }

    /** What was quoted with the new unit counts as done, and is said, so that nobody takes it for seen. */
    @Test
    void theWorkThatIsTakenAsDoneIsListed() throws IOException {
        Files.copy(Run.DEMO.resolve("heaters.catalogue"), folder.resolve("heaters.catalogue"));
        Path job = Files.copy(Run.DEMO.resolve("alder-beck.job"), folder.resolve("alder-beck.job"));
        Run run = Run.of("complete", job, "--by", "A. Fitter", "--reading", "heaterId=h95", "--book", BOOK);
        assertEquals(0, run.status(), run.err());
        assertTrue(
                run.out()
                        .contains("Work taken as done:" + System.lineSeparator()
                                + "  - Lift the cable out of the insulation"),
                run.out());
        assertTrue(Files.readString(job).contains("doneOn=\"" + Run.DAY + "\""), "today where no day is given");
    }

    @Test
    void workIsTestedOnNoDayThatIsStillToCome() throws IOException {
        Path job = job();
        String before = Files.readString(job);
        Run run = Run.of("complete", job, "--by", "A. Fitter", "--reading", "loop=0.42 ohm", "--date", "2026-12-25");
        assertEquals(2, run.status());
        assertTrue(
                run.err()
                        .contains(
                                "--date 2026-12-25: this day is still to come, today is 2026-11-25; give the day on which"
                                        + " the work was tested"),
                run.err());
        assertEquals(before, Files.readString(job));
    }

    /** Whoever has to give the command again would enter the readings twice. */
    @Test
    void noReadingIsSavedWhereTheRecordCannotBeWritten() throws IOException {
        Path job = job();
        byte[] before = Files.readAllBytes(job);
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), job);
        assertEquals(2, complete(job, READINGS, "--out", link).status());
        assertEquals(
                2,
                complete(job, READINGS, "--record", folder.resolve("no/such/r.pdf"))
                        .status());
        assertEquals(
                2,
                complete(job, READINGS, "--customer", folder.resolve("page.xlsx"))
                        .status());
        assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(job)));
    }

    @Test
    void whatIsMissingIsNamed() throws IOException {
        Run run = complete(job(), List.of("loop=0.28 ohm"));
        assertEquals(1, run.status());
        assertTrue(run.out().startsWith("Not complete"), run.out());
        assertTrue(run.out().contains("[??] Polarity at the origin of the supply: not entered"), run.out());
        assertFalse(run.out().contains("Work taken as done"), run.out());
    }

    @Test
    void aReadingThatIsNoneIsRefusedAndNothingSaved() throws IOException {
        Path job = job();
        byte[] before = Files.readAllBytes(job);
        for (String[] wrong : new String[][] {
            {"lop=0.3 ohm", "completion.lop"},
            {"loop=0.3 V", "completion.loop"},
            {"loop=-1 ohm", "completion.loop"},
            {"heaterId=nothing", "completion.heaterId"}
        }) {
            Run run = complete(job, List.of(wrong[0]));
            assertEquals(2, run.status(), run.out());
            assertTrue(run.err().contains(wrong[1]), run.err());
        }
        assertEquals(2, Run.of("complete", job, "--reading", "loop=0.3 ohm").status(), "somebody is named");
        assertEquals(2, Run.of("complete", job).status(), "nothing was entered yet");
        assertTrue(java.util.Arrays.equals(before, Files.readAllBytes(job)));
    }

    @Test
    void aFittedUnitIsJudgedByItsOwnData() throws IOException {
        Path job = job();
        List<String> fitted = new ArrayList<>(with("elements", "6.06 ohm"));
        fitted.add("heaterId=h95");
        fitted.removeIf(each -> each.startsWith("flow="));
        fitted.add("flow=4.8 L/min");
        Run run = complete(job, fitted, "--book", BOOK, "--customer", folder.resolve("page.pdf"));
        assertEquals(0, run.status(), run.out() + run.err());
        assertEquals(
                1, complete(job, with("elements", "7.6 ohm")).status(), "within the band of 8.5 kW, not of 9.5 kW");
    }

    @Test
    void aNoticeComesFromAReadingThatFailsOnSafety() throws IOException {
        Path job = job();
        complete(job, with("insulation", "0.02 Mohm"));
        Run notice = Run.of("notice", job, "--pdf", folder.resolve("n.pdf"), "--out", folder.resolve("n.xlsx"));
        assertEquals(0, notice.status(), notice.err());
        assertTrue(notice.out().contains("Insulation resistance"), notice.out());
        assertTrue(notice.out().startsWith("Unsafe, not to be used:"), notice.out());
        assertTrue(notice.out().contains("Caution: "), notice.out());
        assertTrue(notice.out().contains("Written: " + folder.resolve("n.xlsx")), notice.out());
        assertTrue(notice.out().contains("Written: " + folder.resolve("n.pdf")), notice.out());
        String cells = cells(folder.resolve("n.xlsx"));
        assertTrue(cells.contains("Nobody uses the shower"), cells);
        assertTrue(cells.contains("signature") && cells.contains("Do not use"), cells);
        assertTrue(pdf("n.pdf"));
    }

    @Test
    void aNoticeComesFromAFailedCheckOfSafety() throws IOException {
        Path job = job();
        Files.writeString(job, Files.readString(job).replace("condition=\"sound\"", "condition=\"scorched\""));
        Run all = Run.of("notice", job, "--json");
        assertEquals(0, all.status(), all.err());
        assertTrue(all.out().contains("circuit.isolatorCondition"), all.out());
        assertEquals(
                0,
                Run.of("notice", job, "--finding", "circuit.isolatorCondition").status());
        String before = Files.readString(job);
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), job);
        assertEquals(2, Run.of("notice", job, "--out", link).status());
        assertEquals(before, Files.readString(job), "no notice replaces the job");
        Run wrong = Run.of("notice", job, "--finding", "circuit.rcd");
        assertEquals(2, wrong.status());
        assertTrue(wrong.err().contains("circuit.isolatorCondition"), wrong.err());
    }

    /** What the quote names among the dangers, and sends the reader here for, is in the notice. */
    @Test
    void aNoticeComesFromAReportedDanger() throws IOException {
        Path job = job();
        Files.writeString(
                job,
                Files.readString(job)
                        .replaceFirst("<symptoms ", "<symptoms key=\"leakFromCase\" answer=\"yes\"/>\n    <symptoms "));
        Files.writeString(job, Files.readString(job).replace("condition=\"sound\"", "condition=\"scorched\""));
        Run english = Run.of("notice", job);
        assertEquals(0, english.status(), english.err());
        assertTrue(
                english.out().contains("Reported or seen: Water comes out of the case of the shower."), english.out());
        Run german = Run.of("notice", job, "--language", "de", "--finding", "leakFromCase");
        assertTrue(german.out().contains("Gemeldet oder gesehen: "), german.out() + german.err());
        assertEquals(
                1, german.out().lines().filter(line -> line.contains("[NO]")).count(), "only what was asked for");
        assertEquals(
                2, english.out().lines().filter(line -> line.contains("[NO]")).count(), english.out());
    }

    @Test
    void partsComeFromAnAcceptedQuoteAlone() throws IOException {
        Path office = folder.resolve("office");
        Run issued = Run.of(
                "quote",
                Run.DEMO.resolve("alder-beck.job"),
                "--book",
                BOOK,
                "--out",
                folder.resolve("q.xlsx"),
                "--issue",
                office);
        assertEquals(0, issued.status(), issued.err());
        Path quote = office.resolve("quotes/2026-0001-r1.quote");
        Run early = Run.of("parts", quote);
        assertEquals(2, early.status());
        assertTrue(early.err().contains("was not accepted"), early.err());
        String option = IssuedQuotes.open(quote).quote().getOptions().get(0).getName();
        IssuedQuotes.accept(quote, option, LocalDate.of(2026, 11, 26));
        Run list = Run.of("parts", quote, "--pdf", folder.resolve("p.pdf"), "--out", folder.resolve("p.xlsx"));
        assertEquals(0, list.status(), list.err());
        assertTrue(list.out().contains("[ ]"), list.out());
        assertFalse(list.out().contains("task-"), list.out());
        assertFalse(cells(folder.resolve("p.xlsx")).contains("labour"));
        assertTrue(pdf("p.pdf"));
    }
}
