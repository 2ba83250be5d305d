// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.DemoFiles;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuotingService;

/** The parts to pack come from an accepted quote alone. */
final class PartsToPackTest {
    @TempDir
    Path folder;

    @AfterEach
    void makeRemovable() throws Exception {
        // What was issued is read-only, which keeps some systems from removing it.
        try (Stream<Path> files = Files.walk(folder)) {
            files.forEach(file -> file.toFile().setWritable(true));
        }
    }

    @Test
    void listIsWrittenOnceTheCustomerHasAccepted() throws Exception {
        DemoFiles.copyInto(folder);
        Clock clock = Clock.fixed(Instant.parse("2026-11-25T09:30:00Z"), ZoneOffset.UTC);
        JobServices services = new JobServices(DemoFiles.service(), clock, Locale.UK);
        Path prices = folder.resolve("prices.csv");
        PriceBook book = services.service().book(prices);
        OpenedJob opened = services.service().open(folder.resolve("alder-beck.job"), null);
        opened.job().getSurvey().getCandidates().clear();
        opened.job().getSurvey().getCandidates().add("h85");
        AssessedJob judged = services.service().judge(opened, book, null, Locale.UK);
        Quote quote = QuotingService.draft(judged, book, services.today(), FirmFile.beside(prices), Locale.UK);
        IssuedQuote issued = IssuedQuotes.issue(judged, quote, book, folder.resolve("office"));
        Path out = folder.resolve("parts.pdf");
        RuntimeException early = assertThrows(RuntimeException.class, () -> services.writeParts(issued, out));
        assertTrue(early.getMessage().contains("was not accepted"), early.getMessage());
        assertFalse(Files.exists(out));
        IssuedQuotes.accept(issued.file(), issued.quote().getOptions().get(0).getName(), services.today());
        services.writeParts(IssuedQuotes.open(issued.file()), out);
        assertTrue(Files.size(out) > 1000);
        assertThrows(
                RuntimeException.class, () -> services.writeParts(IssuedQuotes.open(issued.file()), issued.file()));
    }
}
