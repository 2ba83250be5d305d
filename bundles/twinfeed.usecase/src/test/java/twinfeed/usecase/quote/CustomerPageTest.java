// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.units.text.NumberText;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.Demo;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.TwinfeedService;
import twinfeed.usecase.quote.CustomerPage.Kind;

/** What the customer reads, on a screen. */
final class CustomerPageTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 29);

    @ParameterizedTest
    @ValueSource(strings = {"en-GB", "de-DE"})
    void pageHasWhatTheQuoteSays(String language) {
        Locale locale = Locale.forLanguageTag(language);
        TwinfeedService service = TwinfeedService.onClassPath();
        Path book = Demo.FOLDER.resolve("prices.csv");
        PriceBook prices = service.book(book);
        AssessedJob judged =
                service.judge(service.open(Demo.FOLDER.resolve("rowan-brook.job"), null), prices, null, locale);
        FirmFile firm = FirmFile.beside(book);
        Quote quote = QuotingService.draft(judged, prices, DAY, firm, locale);
        CustomerPage page = QuotingService.page(judged, quote, firm, locale);
        String all = page.lines().stream()
                .flatMap(line -> Stream.concat(Stream.of(line.what()), line.values().stream()))
                .collect(Collectors.joining("\n"));
        assertTrue(all.contains(judged.opened().job().getSurvey().getCustomer().getName()), all);
        for (QuoteOption option : quote.getOptions()) {
            assertTrue(all.contains(option.getTitle()), option.getTitle());
            String total = new NumberText(locale).money(option.getTotal(), quote.getCurrency());
            assertTrue(all.replace('\u00a0', ' ').contains(total.replace('\u00a0', ' ')), total + " in " + all);
        }
        assertTrue(page.lines().stream().anyMatch(line -> line.kind() == Kind.PRICE));
        List<String> lacking = all.lines()
                .filter(line -> line.matches(".*\\[[a-z]+\\.[a-zA-Z.]+].*"))
                .toList();
        assertEquals(List.of(), lacking, "no text is lacking");
        page.lines().stream()
                .filter(line -> line.kind() == Kind.ROW)
                .forEach(line ->
                        assertEquals(quote.getOptions().size(), line.values().size(), line.what()));
    }
}
