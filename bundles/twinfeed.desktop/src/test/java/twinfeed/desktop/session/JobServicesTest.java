// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.calculator.cache.AnswerCache;
import twinfeed.desktop.DemoFiles;
import twinfeed.model.io.InputException;
import twinfeed.units.Pressure;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.firm.FirmFolder;
import twinfeed.usecase.quote.CustomerPage;
import twinfeed.usecase.quote.IssuedQuote;

/** Prices, firm, day and language of all jobs that are open. */
final class JobServicesTest {
    @TempDir
    Path folder;

    private final AtomicInteger told = new AtomicInteger();
    private JobServices services;
    private OpenedJob opened;
    private Path book;

    @BeforeEach
    void open() throws Exception {
        DemoFiles.copyInto(folder);
        // The other checks take time and say nothing of what is tested here.
        TwinfeedService service = new TwinfeedService(DemoFiles.service().calculators().stream()
                .filter(each -> each.descriptor().id().equals("demand"))
                .toList());
        services =
                new JobServices(service, Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC), Locale.UK);
        services.changed().listen(told::incrementAndGet);
        book = folder.resolve("prices.csv");
        opened = service.open(folder.resolve("alder-beck.job"), null);
        opened.job().getSurvey().getCandidates().retainAll(List.of("h85"));
    }

    @Test
    void everybodyIsToldOfOtherPricesLanguageAndFirm() {
        assertEquals(LocalDate.of(2026, 11, 25), services.today());
        assertEquals("2026-11-25 09:30", services.now());
        assertEquals(Locale.UK, services.papers());
        services.papers(Locale.GERMANY);
        assertEquals(Locale.GERMANY, services.papers());
        assertEquals(Locale.UK, services.locale());
        assertEquals(1, told.get());
        services.usePrices(book);
        assertEquals(book, services.prices().file());
        assertEquals(2, told.get());
        JobServices.Prices read = services.prices();
        services.noPrices();
        assertNull(services.prices());
        assertEquals(3, told.get());
        services.usePrices(read);
        assertEquals(read, services.prices());
        assertEquals(4, told.get());
        services.useFirm(new FirmFolder(folder.resolve("firm")));
        assertEquals(5, told.get());
        services.demonstrationPrices(book);
        assertEquals(6, told.get());
        assertThrows(InputException.class, () -> services.usePrices(folder.resolve("none.csv")));
        assertEquals(read, services.prices(), "the one before stays in force");
        assertEquals(6, told.get());
    }

    @Test
    void firmOfTheSettingsGoesBeforeTheOneBesideThePrices() throws Exception {
        assertEquals("", services.firm(null).firm().name());
        services.usePrices(book);
        assertEquals(
                "Netherquill Showers (invented)",
                services.firm(services.prices()).firm().name());
        Path own = Files.createDirectories(folder.resolve("firm"));
        services.useFirm(new FirmFolder(own));
        assertEquals(
                "Netherquill Showers (invented)",
                services.firm(services.prices()).firm().name(),
                "nothing was entered in the settings yet");
        Files.writeString(own.resolve("firm.properties"), "name=Own Showers\n", StandardCharsets.UTF_8);
        assertEquals("Own Showers", services.firm(services.prices()).firm().name());
        assertEquals("Own Showers", services.firm(null).firm().name());
        Path other = Files.copy(book, own.resolve("other.csv"));
        services.demonstrationPrices(other);
        assertEquals("Own Showers", services.firm(services.prices()).firm().name());
        services.demonstrationPrices(book);
        assertEquals(
                "Netherquill Showers (invented)",
                services.firm(services.prices()).firm().name(),
                "an invented price is never quoted in a real firm's name");
    }

    @Test
    void firmThatCannotBeReadLeavesTheFindingsWithoutAQuote() throws Exception {
        services.usePrices(book);
        Files.writeString(folder.resolve("firm.properties"), "nmae=Misspelt\n");
        JobResult result = services.result(7, opened, () -> true, new AnswerCache());
        assertNotNull(result.judged());
        assertNull(result.quote());
        assertEquals(7, result.revision());
        assertTrue(result.complete());
        assertTrue(result.trouble().contains("nmae"), result.trouble());
        assertTrue(
                services.page(result, new AnswerCache()).isEmpty(),
                "without a quote there is no page for the customer");
    }

    @Test
    void impossibleReadingIsNamedWithItsValue() {
        opened.job().getSurvey().getWater().getTest().setStaticPressure(Pressure.valueOf("1 bar"));
        JobResult result = services.quickAssess(3, opened);
        assertEquals(3, result.revision());
        assertNull(result.judged());
        assertTrue(result.trouble().startsWith("Running pressure 1.8 bar"), result.trouble());
        FaultResult faults = services.faults(3, opened);
        assertEquals(result.trouble(), faults.trouble());
        CompletionResult completion = services.completion(3, new CompletionJudge(services), opened);
        assertEquals(result.trouble(), completion.trouble());
        assertEquals(3, completion.revision());
    }

    @Test
    void customersPageIsInTheLanguageOfThePapers() {
        assertTrue(
                services.page(services.result(1, opened, () -> true, new AnswerCache()), new AnswerCache())
                        .isEmpty(),
                "no prices, no page");
        services.usePrices(book);
        JobResult result = services.result(1, opened, () -> true, new AnswerCache());
        CustomerPage english = services.page(result, new AnswerCache()).orElseThrow();
        assertTrue(text(english).contains("Heater 8.5 kW, two-element"), text(english));
        assertFalse(text(english).contains("Zu zahlen"), text(english));
        services.papers(Locale.GERMANY);
        CustomerPage german = services.page(result, new AnswerCache()).orElseThrow();
        assertTrue(text(german).contains("Zu zahlen, mit Steuer"), text(german));
        assertTrue(text(german).contains("Heizelemente"), text(german));
    }

    private static String text(CustomerPage page) {
        return page.lines().toString();
    }

    private QuoteWork computed() {
        services.usePrices(book);
        QuoteWork work = new QuoteWork(services, opened, new AnswerCache());
        work.compute();
        return work;
    }

    @Test
    void quoteIsWrittenOnceItWasComputed() throws Exception {
        Path pdf = folder.resolve("quote.pdf");
        QuoteWork early = new QuoteWork(services, opened, new AnswerCache());
        assertThrows(IllegalStateException.class, () -> early.write(pdf));
        PrintedPages pages = new PrintedPages(services, opened, new AnswerCache());
        assertThrows(IllegalStateException.class, () -> pages.quote(pdf), "there are no prices");
        assertFalse(Files.exists(pdf));
        services.usePrices(book);
        pages.quote(pdf);
        assertTrue(Files.size(pdf) > 1000);
    }

    @Test
    void jobSheetIsPrintedWithAndWithoutPrices() throws Exception {
        Path pdf = folder.resolve("sheet.pdf");
        new PrintedPages(services, opened, new AnswerCache()).jobSheet(pdf);
        assertTrue(Files.size(pdf) > 1000);
    }

    @Test
    void issuedQuoteIsWrittenAgainButNeverOverItself() throws Exception {
        QuoteWork work = computed();
        IssuedQuote issued = work.issue(folder.resolve("office"), null, "The customer wants a figure first.");
        IssuedQuote revised = work.issue(folder.resolve("office"), issued.file(), "The same again.");
        try {
            assertEquals("The customer wants a figure first.", issued.quote().getEstimateReason());
            assertFalse(revised.name().equals(issued.name()));
            work.write(issued, folder.resolve("first.xlsx"));
            assertTrue(Files.size(folder.resolve("first.xlsx")) > 1000);
            services.reprint(issued, folder.resolve("again.xlsx"));
            assertTrue(Files.size(folder.resolve("again.xlsx")) > 1000);
            byte[] frozen = Files.readAllBytes(issued.file());
            assertThrows(RuntimeException.class, () -> services.reprint(issued, issued.file()));
            assertArrayEquals(frozen, Files.readAllBytes(issued.file()));
        } finally {
            issued.file().toFile().setWritable(true);
            revised.file().toFile().setWritable(true);
        }
    }
}
