// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.model.io.InputException;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;
import twinfeed.quotes.Verification;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.UnusableException;

/** Quotes in the folder of an office: issued, revised, answered, verified and printed again. */
final class IssuedQuotesTest {
    private static final LocalDate DAY = JudgedHouse.DAY;

    @TempDir
    private Path office;

    private IssuedQuote issued() {
        return IssuedQuotes.issue(JudgedHouse.JUDGED, JudgedHouse.draft(), JudgedHouse.BOOK, office);
    }

    private static IssuedQuote revised(IssuedQuote before) {
        return IssuedQuotes.revise(JudgedHouse.JUDGED, JudgedHouse.draft(), JudgedHouse.BOOK, before.file());
    }

    private static String first(IssuedQuote issued) {
        return issued.quote().getOptions().get(0).getName();
    }

    /** Somebody opens the file and changes a letter. */
    private static void change(IssuedQuote issued) throws IOException {
        assertTrue(issued.file().toFile().setWritable(true));
        Files.writeString(issued.file(), Files.readString(issued.file()).replace("Rowan Brook", "Rowan Crook"));
    }

    @Test
    void anIssuedQuoteHasANumberAndIsFoundAgain() {
        assertEquals(List.of(), IssuedQuotes.in(office));
        IssuedQuote issued = issued();
        assertEquals("2026-0001-r1", issued.name());
        assertEquals("Netherquill Lettings (invented)", issued.customer());
        assertEquals("Rowan Brook, flat 2", issued.site());
        assertTrue(issued.unchanged());
        assertEquals(64, issued.digest().length());
        assertEquals(List.of(issued.file()), IssuedQuotes.in(office));
        IssuedQuote opened = IssuedQuotes.open(issued.file());
        assertEquals(issued.digest(), opened.digest());
        assertTrue(EcoreUtil.equals(issued.quote(), opened.quote()));
        assertEquals(
                "Rowan Brook, flat 2",
                IssuedQuotes.survey(issued.file()).getSite().getName());
        assertEquals("2026-0002-r1", issued().name());
    }

    @Test
    void anIssuedQuoteLapsesAfterItsLastDay() {
        IssuedQuote issued = issued();
        LocalDate last = issued.quote().getValidUntil();
        assertEquals(QuoteState.ISSUED, issued.stateOn(last));
        assertEquals(QuoteState.LAPSED, issued.stateOn(last.plusDays(1)));
    }

    private static AssessedJob nobodys() {
        OpenedJob opened = JudgedHouse.JUDGED.opened();
        OpenedJob nobodys =
                new OpenedJob(opened.file(), EcoreUtil.copy(opened.job()), opened.catalogue(), opened.warnings());
        nobodys.job().getSurvey().setCustomer(null);
        nobodys.job().getSurvey().setSite(null);
        return new AssessedJob(
                nobodys, JudgedHouse.JUDGED.assessed(), JudgedHouse.JUDGED.plans(), JudgedHouse.JUDGED.record());
    }

    @Test
    void whatMustNotBeIssuedTakesNoNumber() {
        Quote draft = JudgedHouse.draft();
        assertThrows(InputException.class, () -> IssuedQuotes.issue(nobodys(), draft, JudgedHouse.BOOK, office));
        assertEquals(List.of(), IssuedQuotes.in(office));
        IssuedQuote first = issued();
        assertEquals("2026-0001-r1", first.name(), "no number was lost");
        assertThrows(InputException.class, () -> IssuedQuotes.revise(nobodys(), draft, JudgedHouse.BOOK, first.file()));
        assertEquals(List.of(first.file()), IssuedQuotes.in(office));
    }

    @Test
    void aRevisionSupersedesTheQuoteThatItRevises() {
        IssuedQuote first = issued();
        IssuedQuote second = revised(first);
        assertEquals("2026-0001-r2", second.name());
        assertEquals(List.of(first.file(), second.file()), IssuedQuotes.in(office));
        assertEquals(QuoteState.SUPERSEDED, IssuedQuotes.open(first.file()).stateOn(DAY));
        assertEquals("revision 1", "revision " + first.quote().getRevision());
        UnusableException late = assertThrows(UnusableException.class, () -> revised(first));
        assertTrue(late.getMessage().startsWith(first.file().toString()), late.getMessage());
    }

    @Test
    void twoQuotesAreComparedLineByLine() {
        IssuedQuote before = issued();
        assertEquals(List.of(), IssuedQuotes.compare(before.file(), issued().file()));
        Quote draft =
                QuotingService.draft(JudgedHouse.JUDGED, JudgedHouse.BOOK, DAY.plusDays(1), FirmFile.none(), Locale.UK);
        draft.getOptions().get(0).setTitle("Another heater");
        IssuedQuote after = IssuedQuotes.revise(JudgedHouse.JUDGED, draft, JudgedHouse.BOOK, before.file());
        List<QuoteDifference> found = IssuedQuotes.compare(before.file(), after.file());
        assertTrue(
                found.contains(new QuoteDifference(
                        "changed",
                        first(before),
                        "",
                        "",
                        "title",
                        before.quote().getOptions().get(0).getTitle(),
                        "Another heater")),
                found.toString());
    }

    @Test
    void theAnswerOfTheCustomerIsKept() {
        IssuedQuote accepted = IssuedQuotes.accept(issued().file(), "h85", DAY.plusDays(2));
        assertEquals(QuoteState.ACCEPTED, accepted.stateOn(DAY.plusYears(1)));
        assertEquals("h85", IssuedQuotes.open(accepted.file()).quote().getChosen());
        IssuedQuote declined = IssuedQuotes.decline(issued().file(), DAY.plusDays(3));
        assertEquals(QuoteState.DECLINED, IssuedQuotes.open(declined.file()).stateOn(DAY.plusDays(3)));
        UnusableException none =
                assertThrows(UnusableException.class, () -> IssuedQuotes.accept(issued().file(), "h999", DAY));
        assertTrue(none.getMessage().contains(".quote: "), none.getMessage());
    }

    @Test
    void anAnswerRecordedByMistakeIsTakenBackAndStaysOnRecord() {
        IssuedQuote quote = IssuedQuotes.accept(issued().file(), "h85", DAY.plusDays(2));
        assertEquals(List.of(), IssuedQuotes.corrections(quote.file()));
        IssuedQuote open = IssuedQuotes.correct(quote.file(), DAY.plusDays(3), "the other flat");
        assertEquals(QuoteState.ISSUED, open.stateOn(DAY.plusDays(3)));
        assertNull(open.quote().getChosen());
        assertEquals(
                List.of(new QuoteCorrection(
                        QuoteState.ACCEPTED, DAY.plusDays(2), "h85", DAY.plusDays(3), "the other flat")),
                IssuedQuotes.corrections(quote.file()));
    }

    @Test
    void theVisitIsWrittenWithTheAnswer() throws IOException {
        IssuedQuote issued = issued();
        Visit visit = new Visit(DAY.plusDays(9).atTime(9, 0), Duration.ofHours(3), office.resolve("visit.ics"));
        IssuedQuote accepted = IssuedQuotes.accept(issued.file(), "h95", DAY, visit, FirmFile.none(), Locale.UK);
        assertEquals("h95", accepted.quote().getChosen());
        String calendar = Files.readString(visit.calendar());
        assertTrue(calendar.contains("DTSTART:20261204T090000"), calendar);
        assertTrue(calendar.contains("LOCATION:Flat 2\\, 8 Rowan Brook\\, Netherquill\r\n"), calendar);
    }

    private static String value(Path calendar, String name) throws IOException {
        return Files.readAllLines(calendar).stream()
                .filter(line -> line.startsWith(name + ":"))
                .map(line -> line.substring(name.length() + 1))
                .findFirst()
                .orElse("none");
    }

    /** The same entry with a higher number (RFC 5545, 3.8.7.4): an entry of the same UID with a lower one is older. */
    @Test
    void aLaterVisitTakesThePlaceOfTheFirst() throws IOException {
        IssuedQuote issued = issued();
        Path calendar = office.resolve("visit.ics");
        Path later = office.resolve("later.ics");
        Visit visit = new Visit(DAY.plusDays(9).atTime(9, 0), Duration.ofHours(3), calendar);
        Visit moved = new Visit(DAY.plusDays(12).atTime(14, 0), Duration.ofHours(2), later);
        assertThrows(
                UnusableException.class,
                () -> IssuedQuotes.moveVisit(issued.file(), "h95", DAY, moved, FirmFile.none(), Locale.UK),
                "what is not accepted has no visit");
        IssuedQuotes.accept(issued.file(), "h95", DAY, visit, FirmFile.none(), Locale.UK);
        UnusableException other = assertThrows(
                UnusableException.class,
                () -> IssuedQuotes.moveVisit(issued.file(), "h85", DAY, moved, FirmFile.none(), Locale.UK));
        assertTrue(other.getMessage().contains("the option h95 was accepted, not h85"), other.getMessage());
        assertFalse(Files.exists(later));
        IssuedQuote accepted =
                IssuedQuotes.moveVisit(issued.file(), "h95", DAY.plusDays(5), moved, FirmFile.none(), Locale.UK);
        assertEquals(DAY, accepted.quote().getDecidedOn());
        assertEquals(value(calendar, "UID"), value(later, "UID"));
        assertEquals(List.of("0", "1"), List.of(value(calendar, "SEQUENCE"), value(later, "SEQUENCE")));
        assertEquals(
                List.of("20261125T000000Z", "20261130T000000Z"),
                List.of(value(calendar, "DTSTAMP"), value(later, "DTSTAMP")));
        assertEquals("20261207T140000", value(later, "DTSTART"));
        assertEquals("20261207T160000", value(later, "DTEND"));
        assertTrue(IssuedQuotes.verify(issued.file()).sound(), "the quote is as it was issued");
    }

    /** Accepted by mistake with a visit, taken back, and accepted again: the new visit is the newer entry. */
    @Test
    void aVisitAfterACorrectionIsNewerThanTheOneBefore() throws IOException {
        IssuedQuote issued = issued();
        Path calendar = office.resolve("visit.ics");
        Visit visit = new Visit(DAY.plusDays(9).atTime(9, 0), Duration.ofHours(3), calendar);
        IssuedQuotes.accept(issued.file(), "h85", DAY, visit, FirmFile.none(), Locale.UK);
        IssuedQuotes.correct(issued.file(), DAY, "the other one");
        IssuedQuotes.accept(issued.file(), "h95", DAY, visit, FirmFile.none(), Locale.UK);
        assertEquals("1", value(calendar, "SEQUENCE"));
    }

    @Test
    void aVisitThatCannotBeWrittenThereLeavesTheQuoteOpen() {
        IssuedQuote issued = issued();
        for (Path wrong : List.of(office.resolve("visit.txt"), issued.file())) {
            Visit visit = new Visit(DAY.plusDays(9).atTime(9, 0), Duration.ofHours(3), wrong);
            assertThrows(
                    InputException.class,
                    () -> IssuedQuotes.accept(issued.file(), "h95", DAY, visit, FirmFile.none(), Locale.UK));
            assertEquals(QuoteState.ISSUED, IssuedQuotes.open(issued.file()).stateOn(DAY));
        }
        Visit visit = new Visit(DAY.plusDays(9).atTime(9, 0), Duration.ofHours(3), office.resolve("visit.ics"));
        assertThrows(
                UnusableException.class,
                () -> IssuedQuotes.accept(issued.file(), "h999", DAY, visit, FirmFile.none(), Locale.UK));
        assertFalse(Files.exists(visit.calendar()), "what is not accepted has no visit");
    }

    @Test
    void aVisitTakesTime() {
        Path file = office.resolve("visit.ics");
        assertThrows(IllegalArgumentException.class, () -> new Visit(DAY.atTime(9, 0), Duration.ZERO, file));
        assertThrows(IllegalArgumentException.class, () -> new Visit(DAY.atTime(9, 0), Duration.ofHours(-1), file));
    }

    @Test
    void aFolderAsItWasIssuedIsSound() {
        IssuedQuote issued = issued();
        FolderCheck found = IssuedQuotes.verify(office);
        assertTrue(found.sound());
        assertEquals(List.of(), found.missing());
        assertEquals(1, found.quotes().size());
        assertEquals("2026-0001-r1", found.quotes().get(0).name());
        assertEquals("unchanged", found.quotes().get(0).status());
        assertEquals(
                Verification.UNCHANGED.text(Locale.ROOT), found.quotes().get(0).text());
        FolderCheck one = IssuedQuotes.verify(issued.file());
        assertTrue(one.sound());
        assertEquals(issued.file(), one.quotes().get(0).file());
    }

    @Test
    void whatWasChangedOrTakenAwayIsFound() throws IOException {
        IssuedQuote first = issued();
        IssuedQuote second = issued();
        IssuedQuote third = revised(second);
        issued();
        change(first);
        assertFalse(IssuedQuotes.open(first.file()).unchanged());
        Files.delete(third.file().resolveSibling(third.file().getFileName() + ".sha256"));
        Files.delete(second.file());
        Path photos = photo();
        Files.delete(photos);
        FolderCheck found = IssuedQuotes.verify(office);
        assertFalse(found.sound());
        assertEquals(
                List.of("2026-0001-r1 changed", "2026-0002-r2 unknown", "2026-0003-r1 unchanged"),
                found.quotes().stream()
                        .map(each -> each.name() + " " + each.status())
                        .toList());
        assertTrue(found.missing().contains(new FolderCheck.Missing("2026-0002-r1", "revision")));
        assertTrue(
                found.missing().contains(new FolderCheck.Missing("2026-0003-r1, " + JudgedHouse.PHOTO, "photograph")),
                found.missing().toString());
    }

    @Test
    void whatCannotBeReadIsNamedWithTheReason() throws IOException {
        IssuedQuote issued = issued();
        assertTrue(issued.file().toFile().setWritable(true));
        Files.writeString(issued.file(), "no quote");
        FolderCheck found = IssuedQuotes.verify(issued.file());
        assertFalse(found.sound());
        assertEquals("unreadable", found.quotes().get(0).status());
        assertEquals("", found.quotes().get(0).name());
        assertFalse(found.quotes().get(0).text().isBlank());
        assertThrows(UnusableException.class, () -> IssuedQuotes.open(issued.file()));
        Path nowhere = office.resolve("nowhere.quote");
        assertThrows(InputException.class, () -> IssuedQuotes.verify(nowhere));
        assertThrows(InputException.class, () -> IssuedQuotes.open(nowhere));
    }

    /** The one picture that the office keeps, by its digest. */
    private Path photo() throws IOException {
        byte[] picture = Files.readAllBytes(JudgedHouse.JUDGED.opened().file().resolveSibling(JudgedHouse.PHOTO));
        try (Stream<Path> files = Files.walk(office)) {
            List<Path> kept = files.filter(Files::isRegularFile)
                    .filter(file -> !file.toString().contains(".quote"))
                    .filter(file -> file.toFile().length() == picture.length)
                    .toList();
            assertEquals(1, kept.size(), kept.toString());
            assertArrayEquals(picture, Files.readAllBytes(kept.get(0)));
            return kept.get(0);
        }
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
        }
    }

    private static String cells(XSSFWorkbook book) {
        StringBuilder cells = new StringBuilder();
        DataFormatter format = new DataFormatter(Locale.ROOT);
        book.forEach(sheet -> sheet.forEach(row ->
                row.forEach(cell -> cells.append(format.formatCellValue(cell)).append('\n'))));
        return cells.toString();
    }

    @Test
    void anIssuedQuoteIsPrintedAgainAsItWasFrozen() throws IOException {
        IssuedQuote issued = issued();
        Path workbook = office.resolve("again.xlsx");
        Path pdf = office.resolve("again.pdf");
        Path ubl = office.resolve("again.xml");
        IssuedQuote again = IssuedQuotes.reprint(
                JudgedHouse.SERVICE,
                issued.file(),
                FirmFile.none(),
                Locale.UK,
                new OutputPaths(workbook, pdf).withUbl(ubl));
        assertEquals(issued.digest(), again.digest());
        assertTrue(text(pdf).contains("Quote 2026-0001 Issued"));
        int pictures;
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
            assertTrue(cells(book).contains(issued.digest()), "what tells whether it is the one that was issued");
            pictures = book.getAllPictures().size();
        }
        assertTrue(Files.readString(ubl).contains("<cbc:ID>2026-0001-r1</cbc:ID>"));
        Files.delete(photo());
        IssuedQuotes.reprint(
                JudgedHouse.SERVICE, issued.file(), FirmFile.none(), Locale.UK, OutputPaths.workbook(workbook));
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
            assertEquals(pictures - 1, book.getAllPictures().size(), "the photograph is lost");
        }
    }

    @Test
    void aChangedQuoteIsNotPrintedAgain() throws IOException {
        IssuedQuote issued = issued();
        change(issued);
        Path pdf = office.resolve("again.pdf");
        UnusableException refused = assertThrows(
                UnusableException.class,
                () -> IssuedQuotes.reprint(
                        JudgedHouse.SERVICE, issued.file(), FirmFile.none(), Locale.UK, OutputPaths.pdf(pdf)));
        assertTrue(refused.getMessage().contains("nothing was written"), refused.getMessage());
        assertFalse(Files.exists(pdf));
    }

    @Test
    void outputsAreReadyBeforeANumberIsTaken() throws IOException {
        Path pdf = office.resolve("quote.pdf");
        Path workbook = office.resolve("quote.xlsx");
        Quote draft = JudgedHouse.draft();
        try (IssuedQuoteWriting writing = QuotingService.prepare(
                JudgedHouse.JUDGED, draft, FirmFile.none(), Locale.UK, new OutputPaths(workbook, pdf))) {
            assertEquals(List.of(workbook, pdf), writing.files());
            assertFalse(Files.exists(pdf), "only room is taken");
            IssuedQuote issued = issued();
            writing.write(issued);
            assertTrue(text(pdf).contains("Quote 2026-0001 Issued"));
            try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(workbook))) {
                assertTrue(cells(book).contains(issued.digest()), "what tells whether it is the one that was issued");
            }
        }
        assertThrows(
                InputException.class,
                () -> QuotingService.prepare(
                        JudgedHouse.JUDGED,
                        draft,
                        FirmFile.none(),
                        Locale.UK,
                        OutputPaths.pdf(office.resolve("q.txt"))));
    }

    @Test
    void anIssuedQuoteIsWrittenWithItsDigest() throws IOException {
        IssuedQuote issued = issued();
        Path file = office.resolve("quote.xlsx");
        QuotingService.write(JudgedHouse.JUDGED, issued, FirmFile.none(), Locale.UK, OutputPaths.workbook(file));
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            assertTrue(cells(book).contains(issued.digest()));
        }
    }

    @Test
    void whatIsPreparedAndNotWrittenLeavesNothingBehind() throws IOException {
        Path out = Files.createDirectory(office.resolve("out"));
        QuotingService.prepare(
                        JudgedHouse.JUDGED,
                        JudgedHouse.draft(),
                        FirmFile.none(),
                        Locale.UK,
                        OutputPaths.workbook(out.resolve("quote.xlsx")))
                .close();
        try (Stream<Path> left = Files.list(out)) {
            assertEquals(List.of(), left.toList());
        }
    }

    @Test
    void aQuoteThatIsIssuedAndCannotBeWrittenSaysSo() throws IOException {
        Path out = Files.createDirectory(office.resolve("out"));
        Path workbook = out.resolve("quote.xlsx");
        try (IssuedQuoteWriting writing = QuotingService.prepare(
                JudgedHouse.JUDGED, JudgedHouse.draft(), FirmFile.none(), Locale.UK, OutputPaths.workbook(workbook))) {
            IssuedQuote issued = issued();
            Files.createDirectories(workbook.resolve("in the way"));
            UnusableException failed = assertThrows(UnusableException.class, () -> writing.write(issued));
            assertTrue(
                    failed.getMessage().contains("the quote is issued all the same: 2026-0001-r1"),
                    failed.getMessage());
            assertTrue(failed.getMessage().contains(issued.file().toString()), failed.getMessage());
            assertTrue(failed.getMessage().contains(workbook.toString()), failed.getMessage());
            assertEquals(workbook.toString(), failed.problems().get(0).file());
        }
    }
}
