// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuotingService;

/** What the verbs say of a quote with two options and of its revision with one, in the folder of an office. */
class OfficeVerbsTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();
    private static final PriceBook PRICES = SERVICE.book(Run.DEMO.resolve("prices.csv"));
    private static final AssessedJob JUDGED =
            SERVICE.judge(SERVICE.open(Run.DEMO.resolve("rowan-brook.job"), null), PRICES, null, Locale.ROOT);

    /** The folder's files by their paths; issued once, as every test begins with the same ones. */
    private static final Map<String, byte[]> ISSUED = new TreeMap<>();

    @TempDir
    Path folder;

    private Path first;
    private Path second;

    @BeforeAll
    static void issue(@TempDir Path office) throws IOException {
        if (ISSUED.isEmpty()) {
            Path first =
                    IssuedQuotes.issue(JUDGED, draft(List.of()), PRICES, office).file();
            IssuedQuotes.revise(JUDGED, draft(List.of("h95")), PRICES, first);
            try (Stream<Path> files = Files.walk(office)) {
                for (Path file : files.filter(Files::isRegularFile).toList()) {
                    ISSUED.put(office.relativize(file).toString(), Files.readAllBytes(file));
                }
            }
        }
    }

    @BeforeEach
    void copyOffice() throws IOException {
        for (Map.Entry<String, byte[]> each : ISSUED.entrySet()) {
            Path file = folder.resolve(each.getKey());
            Files.createDirectories(file.getParent());
            Files.write(file, each.getValue());
        }
        first = folder.resolve("quotes/2026-0001-r1.quote");
        second = folder.resolve("quotes/2026-0001-r2.quote");
    }

    private static Quote draft(List<String> heaters) {
        return QuotingService.draft(JUDGED, PRICES, Run.DAY, FirmFile.none(), Locale.ROOT, heaters);
    }

    private static Run done(Object... words) {
        Run run = Run.of(words);
        assertEquals(0, run.status(), run.err());
        return run;
    }

    private static void done(LocalDate day, Object... words) {
        Run run = Run.on(day, words);
        assertEquals(0, run.status(), run.err());
    }

    private static void change(Path file) throws IOException {
        Files.writeString(file, Files.readString(file).replace("Rowan Brook", "Rowan Brock"));
    }

    @Test
    void aComparisonSaysWhatWentWhatCameAndWhatIsOther() {
        List<String> there = done("compare", first, second).out().lines().toList();
        assertTrue(there.contains("- h85: 359.40"), there.toString());
        assertTrue(
                there.get(0).startsWith("~ summary: We recommend")
                        && there.get(0).contains(" -> We checked"),
                there.get(0));
        assertTrue(done("compare", first, second, "--json").out().contains("\"before\" : \"359.40\""));
        List<String> back = done("compare", second, first).out().lines().toList();
        assertTrue(back.contains("+ h85: 359.40"), back.toString());
        assertEquals(
                "The two quotes say the same.",
                done("compare", first, first).out().strip());
    }

    @Test
    void aQuoteThatWasChangedIsComparedButNotSilently() throws IOException {
        change(second);
        Run run = Run.of("compare", first, second);
        assertEquals(1, run.status());
        assertTrue(run.out().contains("- h85: 359.40"), run.out());
        assertEquals(1, run.err().lines().count(), run.err());
        assertTrue(run.err().startsWith(second + ": changed since it was issued"), run.err());
    }

    @Test
    void theListHasWhatIsStillToBeChosenAndOfAnAcceptedQuoteWhatWas() {
        List<String> open = done("issued", folder).out().lines().toList();
        assertTrue(open.get(0).contains("  superseded 2026-11-25  "), open.get(0));
        assertTrue(open.get(0).endsWith(", flat 2  h95 382.20 GBP, h85 359.40 GBP"), open.get(0));
        assertTrue(open.get(1).contains("  open  Netherquill Lettings (invented), Rowan Brook, flat 2  "), open.get(1));
        Run answer = done("accept", second, "--option", "h95", "--date", "2026-11-26");
        assertEquals("2026-0001-r2 is accepted: " + second, answer.out().strip());
        String accepted = done("issued", second).out();
        assertTrue(accepted.contains("  accepted 2026-11-26  "), accepted);
        assertEquals(1, accepted.lines().count());
    }

    @Test
    void ofTwoOptionsTheListNamesTheOneThatWasAccepted() {
        Path single =
                IssuedQuotes.issue(JUDGED, draft(List.of()), PRICES, folder).file();
        done("accept", single, "--option", "h85");
        String line = done("issued", single).out();
        assertTrue(line.contains("  accepted 2026-11-25  "), line);
        assertTrue(line.stripTrailing().endsWith("  h85 359.40 GBP") && !line.contains("h95"), line);
        assertEquals("{", done("issued", single, "--json").out().substring(0, 1));
    }

    @Test
    void theListSaysOnAnotherDayThatAQuoteHasLapsed() {
        assertTrue(done("issued", second).out().contains("  open  "));
        assertTrue(done("issued", second, "--date", "2027-01-31").out().contains("  lapsed  "));
    }

    @Test
    void oneBadFileHidesNoOther() throws IOException {
        change(first);
        Run changed = Run.of("issued", folder);
        assertEquals(1, changed.status());
        assertEquals(2, changed.out().lines().count(), changed.out());
        assertTrue(changed.err().startsWith(first + ": changed since it was issued"), changed.err());
        Files.writeString(first, "no quote");
        Run unreadable = Run.of("issued", folder);
        assertEquals(1, unreadable.status());
        assertEquals(1, unreadable.out().lines().count(), unreadable.out());
        assertTrue(unreadable.err().contains(first.getFileName().toString()), unreadable.err());
        Run alone = Run.of("issued", first);
        assertEquals(2, alone.status());
        assertEquals("", alone.out());
    }

    @Test
    void anOfficeIsVerifiedQuoteByQuote() throws IOException {
        List<String> sound = done("verify", folder).out().lines().toList();
        assertEquals(
                List.of(
                        first + ": unchanged since it was issued",
                        second + ": unchanged since it was issued",
                        "Everything is as it was issued."),
                sound);
        assertTrue(done("verify", folder, "--json").out().contains("\"sound\" : true"));
        change(first);
        Run run = Run.of("verify", folder);
        assertEquals(1, run.status());
        List<String> told = run.out().lines().toList();
        assertTrue(told.get(0).startsWith(first + ": changed since it was issued"), run.out());
        assertEquals("Not everything is as it was issued.", told.get(2));
        Files.writeString(first, "no quote");
        String broken = Run.of("verify", folder).out();
        assertEquals(1, broken.split("2026-0001-r1.quote", -1).length - 1, "its file is named once: " + broken);
        Files.delete(second);
        Files.delete(first);
        String missing = Run.of("verify", folder).out();
        assertTrue(missing.startsWith("2026-0001: the number was taken"), missing);
    }

    /** A visit takes between a quarter of an hour and a day. */
    @ParameterizedTest
    @CsvSource({"0.25, 0", "24, 0", "0.2, 2", "24.1, 2"})
    void aVisitTakesAQuarterOfAnHourToADay(String hours, int status) throws IOException {
        Path calendar = folder.resolve("visit.ics");
        Run run = Run.of(
                "accept",
                second,
                "--option",
                "h95",
                "--visit",
                "2026-12-03T09:00",
                "--hours",
                hours,
                "--calendar",
                calendar);
        assertEquals(status, run.status(), run.err());
        assertEquals(status == 0, Files.exists(calendar));
        if (status == 0) {
            assertTrue(run.err().contains("Written: " + calendar), run.err());
            assertTrue(Files.readString(calendar).contains("DTSTART:20261203T090000"), Files.readString(calendar));
            assertTrue(run.out().contains("2026-0001-r2 is accepted: " + second), run.out());
        } else {
            assertTrue(run.err().contains("takes 0.25 to 24 hours"), run.err());
            assertTrue(done("issued", second).out().contains("  open  "), "nothing was accepted");
        }
    }

    @Test
    void aVisitWithoutAFileAndAFileWithoutAVisitAreRefused() {
        Run visit = Run.of("accept", second, "--option", "h95", "--visit", "2026-12-03 09:00");
        assertEquals(2, visit.status());
        assertTrue(visit.err().contains("give both"), visit.err());
        assertEquals(
                2,
                Run.of("accept", second, "--option", "h95", "--calendar", folder.resolve("visit.ics"))
                        .status());
    }

    @Test
    void aVisitIsMovedByTheSameVerb() throws IOException {
        Path calendar = folder.resolve("visit.ics");
        List<Object> words = new ArrayList<>(
                List.of("accept", second, "--option", "h95", "--calendar", calendar, "--visit", "2026-12-03 09:00"));
        done(words.toArray());
        String first = Files.readString(calendar);
        words.set(7, "2026-12-10 13:30");
        Run moved = Run.on(LocalDate.of(2026, 12, 1), words.toArray());
        assertEquals(0, moved.status(), moved.err());
        assertTrue(moved.out().contains("2026-0001-r2 is accepted: " + second), moved.out());
        String later = Files.readString(calendar);
        // It is the second revision, so that the first visit is its entry's first revision.
        assertTrue(first.contains("SEQUENCE:1\r\n") && first.contains("DTSTART:20261203T090000"), first);
        assertTrue(later.contains("SEQUENCE:2\r\n") && later.contains("DTSTART:20261210T133000"), later);
        assertTrue(done("issued", second).out().contains("  accepted 2026-11-25  "), "the day of the answer stays");
        words.set(7, "2026-11-24 09:00");
        Run early = Run.of(words.toArray());
        assertEquals(2, early.status());
        assertTrue(early.err().contains("before the day of the answer, 2026-11-25"), early.err());
        assertEquals(later, Files.readString(calendar));
    }

    @Test
    void anEntryOfTheCalendarSpeaksTheLanguageThatIsAskedFor() throws IOException {
        Path calendar = folder.resolve("visit.ics");
        Run run = done(
                "accept",
                second,
                "--option",
                "h95",
                "--visit",
                "2026-12-03 09:00",
                "--calendar",
                calendar,
                "--language",
                "de");
        assertTrue(run.out().contains("2026-0001-r2 ist angenommen"), run.out());
        assertFalse(run.err().contains("Written"), run.err());
    }

    /** Today where no day is given; what was taken back stays in the list, with what had been chosen, if anything was. */
    @Test
    void aDecisionHasItsDayAndStaysInTheListWhenItIsTakenBack() {
        done("decline", second, "--date", "2026-11-26");
        assertTrue(done("issued", second).out().contains("  declined 2026-11-26  "));
        Run reopened = done("reopen", second, "--reason", "A slip.", "--date", "2026-11-26");
        assertEquals("2026-0001-r2 is issued: " + second, reopened.out().strip());
        done(LocalDate.of(2026, 11, 28), "accept", second, "--option", "h95");
        done(LocalDate.of(2026, 11, 29), "reopen", second, "--reason", "Another flat.");
        Run declined = done("decline", second);
        assertTrue(declined.out().startsWith("2026-0001-r2 is declined: " + second), declined.out());
        List<String> lines = done("issued", second).out().lines().toList();
        assertTrue(lines.get(0).contains("  declined 2026-11-25  "), lines.get(0));
        assertEquals(
                List.of(
                        "    declined 2026-11-26, taken back 2026-11-26: A slip.",
                        "    accepted 2026-11-28 (h95), taken back 2026-11-29: Another flat."),
                lines.subList(1, 3));
    }

    /** The day after today has begun already in the east of the world; the one after that has nowhere. */
    @ParameterizedTest
    @CsvSource({"accept, 2026-11-26, 0", "accept, 2026-11-27, 2", "decline, 2026-11-27, 2", "decline, 2031-03-01, 2"})
    void anAnswerIsRecordedOnNoDayThatIsStillToCome(String verb, String day, int status) {
        Object[] words = verb.equals("accept")
                ? new Object[] {verb, second, "--option", "h95", "--date", day}
                : new Object[] {verb, second, "--date", day};
        Run run = Run.of(words);
        assertEquals(status, run.status(), run.err());
        if (status != 0) {
            assertTrue(
                    run.err()
                            .contains("--date " + day
                                    + ": this day is still to come, today is 2026-11-25; give the day on"
                                    + " which the customer answered"),
                    run.err());
            assertTrue(done("issued", second).out().contains("  open  "), "nothing was recorded");
        }
    }

    @Test
    void aDecisionIsTakenBackOnNoDayThatIsStillToCome() {
        done("decline", second);
        Run run = Run.of("reopen", second, "--reason", "A slip.", "--date", "2026-12-24");
        assertEquals(2, run.status());
        assertTrue(run.err().contains("2026-12-24: this day is still to come"), run.err());
        assertTrue(done("issued", second).out().contains("  declined 2026-11-25  "));
    }

    @Test
    void aQuoteIsWrittenAgainUnderTheNamesThatAreGiven() throws IOException {
        Run nothing = Run.of("reprint", second);
        assertEquals(2, nothing.status());
        assertTrue(nothing.err().contains("name at least one file"), nothing.err());
        assertEquals(
                2,
                Run.of("reprint", second, "--ubl", folder.resolve("quote.txt")).status());
        Path ubl = folder.resolve("quote.xml");
        Run run = done("reprint", second, "--ubl", ubl);
        assertTrue(run.out().startsWith("2026-0001-r2 is issued: " + second), run.out());
        assertTrue(run.out().contains("Written: " + ubl), run.out());
        assertTrue(Files.readString(ubl).contains("2026-0001-r2"));
        Run german = done("reprint", second, "--ubl", ubl, "--language", "de");
        assertFalse(german.out().contains("Written"), german.out());
        assertTrue(done("reprint", second, "--ubl", ubl, "--json").out().contains("\"ubl\" : \"" + ubl));
    }

    @Test
    void anOfficeInWhichNothingWasIssuedHasAnEmptyList() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertEquals("Nothing was issued there.", done("issued", empty).out().strip());
        assertFalse(done("issued", empty, "--json").out().contains("Nothing"));
    }

    @Test
    void thePartsOfAnAcceptedQuoteAreTickedOff() throws IOException {
        done("accept", second, "--option", "h95");
        Path sheet = folder.resolve("parts.xlsx");
        Run list = done("parts", second, "--out", sheet);
        assertEquals(
                "  [ ]        1 each  Heater 9.5 kW, two-element" + " ".repeat(33) + "h95\n" + "Written: " + sheet
                        + "\n",
                list.out().replace(System.lineSeparator(), "\n"));
        assertTrue(Files.exists(sheet));
        String json = done("parts", second, "--json").out();
        assertTrue(json.contains("\"quote\" : \"2026-0001-r2\"") && json.contains("\"code\" : \"h95\""), json);
        byte[] before = Files.readAllBytes(second);
        assertEquals(2, Run.of("parts", second, "--out", second).status(), "a quote is not replaced by its parts");
        assertEquals(List.of(before.length), List.of(Files.readAllBytes(second).length));
        Path firm = Files.writeString(folder.resolve("own.properties"), "name=Own Firm (invented)\n");
        Path link = Files.createSymbolicLink(folder.resolve("link.xlsx"), firm);
        assertEquals(2, Run.of("parts", second, "--firm", firm, "--out", link).status());
        assertTrue(Files.readString(firm).startsWith("name="), "nor is the firm's file");
        Run german = done("parts", second, "--language", "de");
        assertTrue(german.out().contains("[ ]"), german.out());
    }
}
