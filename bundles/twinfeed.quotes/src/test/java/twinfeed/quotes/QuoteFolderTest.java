// SPDX-License-Identifier: EPL-2.0
package twinfeed.quotes;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.CyclicBarrier;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.assessment.Series;
import twinfeed.model.io.AtomicFile;
import twinfeed.model.quote.QuoteState;
import twinfeed.pricing.DemoBook;
import twinfeed.units.Current;
import twinfeed.units.Pressure;

class QuoteFolderTest {
    private static final LocalDate DAY = DemoBook.DAY;

    @TempDir
    private Path office = Path.of("");

    private QuoteFolder folder = new QuoteFolder(office);

    @BeforeEach
    void open() {
        folder = new QuoteFolder(office);
    }

    private static String refused(Executable step) {
        return assertThrows(LifeException.class, step).key();
    }

    @Test
    void issuesAReadOnlyFileWithItsDigestBesideIt() throws IOException {
        OpenedQuote issued = Issued.today().in(folder);
        assertEquals(office.resolve("quotes/2026-0001-r1.quote"), issued.file());
        assertEquals(Verification.UNCHANGED, issued.verification());
        assertEquals(QuoteState.ISSUED, issued.stateOn(DAY));
        assertEquals(QuoteState.LAPSED, issued.stateOn(DAY.plusDays(31)));
        assertTrue(readOnly(issued.file()));
        assertTrue(readOnly(office.resolve("quotes/2026-0001-r1.quote.sha256")));
        String kept = Files.readString(office.resolve("quotes/2026-0001-r1.quote.sha256"));
        assertEquals(issued.digest() + "  2026-0001-r1.quote\n", kept);
        assertTrue(Files.exists(office.resolve("numbers/2026/1")));
        try (var files = Files.list(office.resolve("quotes"))) {
            assertEquals(2, files.count(), "nothing half-written is left");
        }
    }

    /** By its rights where the drive has them, for a privileged user may write to everything. */
    private static boolean readOnly(Path file) throws IOException {
        return Files.getFileStore(file).supportsFileAttributeView("posix")
                ? java.util.Collections.disjoint(
                        Files.getPosixFilePermissions(file),
                        List.of(
                                PosixFilePermission.OWNER_WRITE,
                                PosixFilePermission.GROUP_WRITE,
                                PosixFilePermission.OTHERS_WRITE))
                : !Files.isWritable(file);
    }

    /** Anybody can check the digest without this program. */
    @Test
    void digestIsThatOfACommonChecksumProgram() throws Exception {
        OpenedQuote issued = Issued.today().in(folder);
        Path program = Path.of("/usr/bin/sha256sum");
        org.junit.jupiter.api.Assumptions.assumeTrue(Files.isExecutable(program), "there is no checksum program here");
        Process check = new ProcessBuilder(
                        program.toString(), "-c", issued.file().getFileName() + ".sha256")
                .directory(office.resolve("quotes").toFile())
                .start();
        assertEquals(
                "2026-0001-r1.quote: OK\n", new String(check.getInputStream().readAllBytes(), StandardCharsets.UTF_8));
        assertEquals(0, check.waitFor());
    }

    @Test
    void freezesAllItRestsOnAndReadsItBack() throws IOException {
        Issued input = Issued.today();
        input.survey().getElectricity().setServiceFuse(Current.valueOf("80 A ± 1 A"));
        input.survey().setWater(twinfeed.model.survey.SurveyFactory.eINSTANCE.createWaterFeed());
        input.survey().getWater().setTest(twinfeed.model.survey.SurveyFactory.eINSTANCE.createWaterTest());
        input.survey().getWater().getTest().setStaticPressure(Pressure.valueOf("3.0 bar"));
        input.survey().setNotes("Quoted \"text\",\nnew line, Ärger \ud83d\ude00");
        Series series = twinfeed.model.assessment.AssessmentFactory.eINSTANCE.createSeries();
        series.getX().addAll(List.of(0.1, 1e-7, 1.0 / 3));
        series.getY().addAll(List.of(1e21, Double.POSITIVE_INFINITY, -0.25));
        input.assessment().getOptions().get(0).getFindings().get(0).getSeries().add(series);
        input.assessment().getOptions().get(0).getFindings().get(0).setMargin(Double.NaN);
        FrozenQuote frozen = input.in(folder).frozen();
        assertTrue(EcoreUtil.equals(input.survey(), frozen.survey()));
        assertTrue(EcoreUtil.equals(input.assessment(), frozen.assessment()));
        assertEquals(
                "3.0 bar",
                frozen.survey().getWater().getTest().getStaticPressure().toString());
        assertEquals("0.1.0", frozen.program());
        assertTrue(EcoreUtil.equals(QuoteLife.issue(input.draft(), new QuoteNumber(2026, 1)), frozen.quote()));
        assertArrayEquals(frozen.bytes(), FrozenQuote.read(frozen.bytes(), "x").bytes());
    }

    @Test
    void freezesOnlyThePricesThatTookPart() throws IOException {
        Issued input = Issued.today();
        FrozenQuote frozen = input.in(folder).frozen();
        List<String> codes =
                frozen.book().getItems().stream().map(item -> item.getCode()).toList();
        assertEquals(
                List.of(
                        "h75",
                        "h95",
                        "cable-10",
                        "clips-cable",
                        "remove-cable",
                        "task-isolate",
                        "task-replace-unit",
                        "task-run-cable",
                        "task-test-certify",
                        "certificate",
                        "notification",
                        "travel",
                        "disposal"),
                codes);
        assertEquals(1, frozen.book().getTaxRates().size());
        assertEquals(new BigDecimal("54.00"), frozen.book().getLabourRate());
        assertEquals(DemoBook.read().getItems().size(), input.book().getItems().size());
    }

    @Test
    void sameInputGivesTheSameBytes() {
        Issued one = Issued.today();
        Issued two = Issued.today();
        QuoteNumber number = new QuoteNumber(2026, 7);
        byte[] first = FrozenQuote.of(
                        QuoteLife.issue(one.draft(), number), one.survey(), one.assessment(), one.book(), "1")
                .bytes();
        byte[] second = FrozenQuote.of(
                        QuoteLife.issue(two.draft(), number), two.survey(), two.assessment(), two.book(), "1")
                .bytes();
        assertArrayEquals(first, second);
    }

    @Test
    void seesAChangeOfOneDigit() throws IOException {
        Path file = Issued.today().in(folder).file();
        change(file, "\"net\":\"126.00\"", "\"net\":\"116.00\"");
        OpenedQuote opened = QuoteFolder.open(file);
        assertEquals(Verification.CHANGED, opened.verification());
        assertEquals("changed since it was issued", opened.verification().text(java.util.Locale.ENGLISH));
        assertEquals("changedFile", refused(() -> folder.accept(file, "h95", DAY)));
        assertEquals("changedFile", refused(() -> Issued.today().revising(folder, file)));
    }

    @Test
    void cannotTellWithoutADigest() throws IOException {
        Path file = Issued.today().in(folder).file();
        Path digest = file.resolveSibling(file.getFileName() + ".sha256");
        assertTrue(digest.toFile().setWritable(true));
        Files.writeString(digest, "garbled");
        assertEquals(Verification.UNKNOWN, QuoteFolder.open(file).verification());
        Files.delete(digest);
        assertEquals(Verification.UNKNOWN, QuoteFolder.open(file).verification());
    }

    private static void change(Path file, String from, String to) throws IOException {
        assertTrue(file.toFile().setWritable(true));
        String text = Files.readString(file);
        assertTrue(text.contains(from), "the text to be changed is there");
        Files.writeString(file, text.replace(from, to));
    }

    @Test
    void refusesWhatIsNoQuote() throws IOException {
        Path file = Issued.today().in(folder).file();
        Path other = office.resolve("other.quote");
        Files.writeString(other, "no JSON");
        assertEquals("notAQuote", refused(() -> QuoteFolder.open(other)));
        Files.writeString(other, "{\"form\":\"twinfeed-quote-9\"}");
        assertEquals("unknownForm", refused(() -> QuoteFolder.open(other)));
        Files.writeString(other, "[]");
        assertEquals("notAQuote", refused(() -> QuoteFolder.open(other)));
        String good = Files.readString(file);
        for (String broken : List.of(
                good.replace("\"date\":\"2026-11-25\"", "\"date\":\"2026-13-25\""),
                good.replace("\"bookTitle\"", "\"bookTitel\""),
                good.replace("\"state\":\"issued\"", "\"state\":\"lost\""),
                good.replace("\"revision\":1", "\"revision\":1.5"),
                good.replace("\"options\":[", "\"options\":7,\"x\":["),
                good.replace("\"currency\":\"GBP\"", "\"currency\":true"))) {
            assertNotEquals(good, broken);
            Files.writeString(other, broken);
            assertEquals("notAQuote", refused(() -> QuoteFolder.open(other)));
        }
    }

    @Test
    void takesNoNumberForWhatCannotBeIssued() {
        Issued input = Issued.today();
        input.draft().getOptions().clear();
        assertEquals("nothingOffered", refused(() -> input.in(folder)));
        assertFalse(Files.exists(office.resolve("numbers")));
    }

    @Test
    void recordsAnAcceptanceBesideTheFrozenFile() throws IOException {
        OpenedQuote issued = Issued.today().in(folder);
        byte[] before = Files.readAllBytes(issued.file());
        OpenedQuote accepted = folder.accept(issued.file(), "h95", DAY.plusDays(3));
        assertEquals(QuoteState.ACCEPTED, accepted.current().getState());
        assertEquals("h95", accepted.current().getChosen());
        assertEquals(DAY.plusDays(3), accepted.current().getDecidedOn());
        assertEquals(QuoteState.ISSUED, accepted.frozen().quote().getState());
        assertEquals(Verification.UNCHANGED, accepted.verification());
        assertArrayEquals(before, Files.readAllBytes(issued.file()));
        assertEquals("notOpen", refused(() -> folder.decline(issued.file(), DAY.plusDays(4))));
        assertEquals("accepted", refused(() -> Issued.today().revising(folder, issued.file())));
    }

    @Test
    void declinesAndLapses() throws IOException {
        Path one = Issued.today().in(folder).file();
        Path two = Issued.today().in(folder).file();
        assertEquals(QuoteState.DECLINED, folder.decline(one, DAY).current().getState());
        assertEquals("stillHolds", refused(() -> folder.lapse(two, DAY)));
        assertEquals(
                QuoteState.LAPSED, folder.lapse(two, DAY.plusDays(31)).current().getState());
        assertEquals(List.of(one, two), folder.files());
    }

    @Test
    void supersedesByTheNextRevision() throws IOException {
        Path first = Issued.today().in(folder).file();
        OpenedQuote second = Issued.on(DAY.plusDays(1)).revising(folder, first);
        assertEquals("2026-0001-r2.quote", second.file().getFileName().toString());
        assertEquals("2026-0001-r1", second.current().getSupersedes());
        assertEquals(QuoteState.SUPERSEDED, QuoteFolder.open(first).current().getState());
        assertEquals("notOpen", refused(() -> folder.accept(first, "h95", DAY.plusDays(2))));
        assertEquals("notLatest", refused(() -> Issued.on(DAY.plusDays(2)).revising(folder, first)));
        assertEquals(2, Issued.today().in(folder).current().getNumber().charAt(8) - '0');
    }

    @Test
    void leavesALapsedQuoteLapsedWhenItIsRevised() throws IOException {
        Path first = Issued.today().in(folder).file();
        Issued.on(DAY.plusDays(60)).revising(folder, first);
        assertEquals(QuoteState.LAPSED, QuoteFolder.open(first).current().getState());
    }

    @Test
    void revisesAgainWhereAProgramStoppedInBetween() throws IOException {
        Path first = Issued.today().in(folder).file();
        Path second = Issued.today().revising(folder, first).file();
        assertTrue(second.toFile().delete());
        OpenedQuote again = Issued.today().revising(folder, first);
        assertEquals(second, again.file());
        assertEquals(Verification.UNCHANGED, again.verification());
    }

    @Test
    void saysThatAnOutcomeCannotBeRead() throws IOException {
        Path first = Issued.today().in(folder).file();
        Path outcome = first.resolveSibling(first.getFileName() + ".outcome");
        for (String broken : List.of(
                "", "{}", "{\"state\":\"issued\",\"on\":\"2026-11-25\"}", "{\"state\":\"declined\",\"on\":\"x\"}")) {
            Files.writeString(outcome, broken);
            assertEquals("brokenOutcome", refused(() -> QuoteFolder.open(first)), broken);
        }
    }

    /** Of many who decide at once just one wins, and the others are told. */
    @Test
    void letsOnlyOneDecide() throws Exception {
        Path file = Issued.today().in(folder).file();
        int people = 8;
        CyclicBarrier start = new CyclicBarrier(people);
        ExecutorService pool = Executors.newFixedThreadPool(people);
        List<Future<String>> results = new ArrayList<>();
        for (int i = 0; i < people; i++) {
            boolean accept = i % 2 == 0;
            Callable<String> decision = () -> {
                start.await();
                try {
                    OpenedQuote done = accept ? folder.accept(file, "h95", DAY) : folder.decline(file, DAY);
                    return done.current().getState().getLiteral();
                } catch (LifeException tooLate) {
                    return tooLate.key();
                }
            };
            results.add(pool.submit(decision));
        }
        List<String> said = new ArrayList<>();
        for (Future<String> result : results) {
            said.add(result.get());
        }
        pool.shutdown();
        assertEquals(people - 1, said.stream().filter("notOpen"::equals).count(), said::toString);
        assertTrue(said.contains(QuoteFolder.open(file).current().getState().getLiteral()));
    }

    @Test
    void passesOverNumbersOfQuotesThatAreThere() throws IOException {
        Issued.today().in(folder);
        Issued.today().in(folder);
        Files.delete(office.resolve("numbers/2026/1"));
        Files.delete(office.resolve("numbers/2026/2"));
        assertEquals("2026-0003", Issued.today().in(folder).current().getNumber());
    }

    @Test
    void replacesADigestThatAStoppedProgramLeftBehind() throws IOException {
        Files.createDirectories(office.resolve("quotes"));
        Files.writeString(
                office.resolve("quotes/2026-0001-r1.quote.sha256"), "0".repeat(64) + "  2026-0001-r1.quote\n");
        Files.writeString(office.resolve("quotes/.2026-0001-r1.quote.new-1"), "half");
        assertEquals(Verification.UNCHANGED, Issued.today().in(folder).verification());
    }

    @Test
    void neverWritesOverAFile() throws IOException {
        Path file = office.resolve("there");
        Files.writeString(file, "old");
        assertThrows(
                java.nio.file.FileAlreadyExistsException.class, () -> AtomicFile.create(file, new byte[] {1, 2, 3}));
        assertEquals("old", Files.readString(file));
        try (var files = Files.list(office)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void hasNoQuotesAtFirst() throws IOException {
        assertEquals(List.of(), folder.files());
    }

    @Test
    void givesTheCustomersJsonWithoutCosts() {
        String json = QuoteJson.forCustomer(Issued.today().draft());
        assertTrue(json.startsWith("{\"form\":\"twinfeed-customer-quote-1\",\"quote\":{"));
        assertTrue(json.contains("\"total\":\"348.66\""));
        assertFalse(json.contains("\"cost\""));
    }

    @Test
    void decisionThatWasRecordedByMistakeIsTakenBackAndStaysOnRecord() throws IOException {
        OpenedQuote issued = Issued.today().in(folder);
        String option = issued.current().getOptions().get(0).getName();
        folder.accept(issued.file(), option, DAY);
        OpenedQuote open = folder.correct(issued.file(), DAY.plusDays(1), " It was the other customer. ");
        assertEquals(QuoteState.ISSUED, open.stateOn(DAY.plusDays(1)));
        assertEquals(null, open.current().getChosen());
        assertEquals(
                List.of(new Correction(
                        QuoteState.ACCEPTED, DAY, option, DAY.plusDays(1), "It was the other customer.")),
                QuoteFolder.corrections(issued.file()));
        assertEquals(Verification.UNCHANGED, open.verification());
        folder.decline(issued.file(), DAY.plusDays(2));
        folder.correct(issued.file(), DAY.plusDays(2), "asked again");
        assertEquals(2, QuoteFolder.corrections(issued.file()).size());
        assertEquals(
                QuoteState.ACCEPTED,
                folder.accept(issued.file(), option, DAY.plusDays(3)).current().getState());
    }

    @Test
    void onlyADecisionOfTheLatestRevisionIsTakenBackAndOnlyWithAReason() throws IOException {
        OpenedQuote issued = Issued.today().in(folder);
        assertEquals("notDecided", refused(() -> folder.correct(issued.file(), DAY, "why")));
        folder.decline(issued.file(), DAY.plusDays(1));
        assertEquals("correctionWithoutReason", refused(() -> folder.correct(issued.file(), DAY.plusDays(1), " ")));
        assertEquals("beforeDecision", refused(() -> folder.correct(issued.file(), DAY, "why")));
        Issued again = Issued.today();
        folder.revise(
                issued.file(),
                new QuoteDraft(
                        again.draft(), again.survey(), again.assessment(), again.book(), "test", java.util.Map.of()));
        assertEquals("notLatest", refused(() -> folder.correct(issued.file(), DAY.plusDays(1), "why")));
        assertEquals(
                QuoteState.DECLINED, QuoteFolder.open(issued.file()).current().getState());
        assertTrue(QuoteFolder.corrections(issued.file()).isEmpty());
    }
}
