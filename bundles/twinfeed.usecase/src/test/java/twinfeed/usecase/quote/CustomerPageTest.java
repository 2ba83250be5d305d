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
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.document.QuoteLetter;
import twinfeed.document.QuoteLetter.Acceptance;
import twinfeed.document.QuoteLetter.Day;
import twinfeed.document.QuoteLetter.Part;
import twinfeed.document.QuoteLetter.PriceLine;
import twinfeed.document.QuoteLetter.PriceLine.Role;
import twinfeed.document.QuoteLetter.PriceTable;
import twinfeed.document.QuoteLetter.Row;
import twinfeed.document.QuoteLetter.Said;
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

    private static QuoteLetter letter(
            List<QuoteLetter.Option> options, @Nullable Acceptance acceptance, @Nullable PriceTable prices) {
        return new QuoteLetter(
                "Quote 2026-0001",
                "Issued",
                List.of(new Day("Date", null, "25 Nov 2026")),
                new Said("For", "A. Tenant\n1 Mill Row"),
                new Said("The shower at", "Flat 2"),
                new Part("Danger", List.of("Do not use it."), true),
                new Said("What we found", "It is worn."),
                new Part("Still to be measured", List.of("The pressure"), false),
                options,
                List.of(new Row(
                        QuoteLetter.Kind.TOTAL,
                        0,
                        "To pay",
                        List.of(new QuoteLetter.Value("\u00a3382.20", null, null)))),
                "We can offer nothing.",
                List.of(new Part("Heater 8.5 kW", List.of("The cable is too thin."), false)),
                acceptance,
                prices,
                List.of(new Part("For your safety", List.of("Electricity can kill."), true)));
    }

    private static List<String> written(QuoteLetter letter) {
        return CustomerPage.of(letter).lines().stream()
                .map(line -> line.kind() + " " + line.what() + (line.values().isEmpty() ? "" : " " + line.values()))
                .toList();
    }

    @Test
    void everythingIsInTheOrderOfTheLetter() {
        assertEquals(
                List.of(
                        "HEADING Quote 2026-0001",
                        "TEXT Issued",
                        "TEXT Date: 25 Nov 2026",
                        "HEADING For",
                        "TEXT A. Tenant",
                        "TEXT 1 Mill Row",
                        "HEADING The shower at",
                        "TEXT Flat 2",
                        "DANGER Danger",
                        "DANGER Do not use it.",
                        "HEADING What we found",
                        "TEXT It is worn.",
                        "HEADING Still to be measured",
                        "TEXT The pressure",
                        "SUM  [Option 1: Heater 9.5 kW]",
                        "ROW To pay [\u00a3382.20]",
                        "HEADING Heater 8.5 kW",
                        "TEXT The cable is too thin.",
                        "HEADING Acceptance",
                        "TEXT Please carry out:   \u25a1 Option 1   \u25a1 Option 2",
                        "TEXT Name   Date",
                        "HEADING What the price is made of",
                        "SUM  [Option 1]",
                        "SUM Unit",
                        "PRICE Heater 9.5 kW [\u00a3158.00]",
                        "SUM Price without tax [\u00a3318.50]",
                        "SUM To pay [\u00a3382.20]",
                        "HEADING For your safety",
                        "TEXT Electricity can kill."),
                written(letter(
                        List.of(new QuoteLetter.Option("Option 1", "Heater 9.5 kW")),
                        new Acceptance(
                                "Acceptance",
                                "Please carry out:",
                                List.of("Option 1", "Option 2"),
                                List.of("Name", "Date")),
                        new PriceTable(
                                "What the price is made of",
                                List.of("Option 1"),
                                List.of(
                                        new PriceLine("Unit", List.of(), Role.SECTION),
                                        new PriceLine("Heater 9.5 kW", List.of("\u00a3158.00"), Role.LINE),
                                        new PriceLine("Price without tax", List.of("\u00a3318.50"), Role.SUM),
                                        new PriceLine("To pay", List.of("\u00a3382.20"), Role.TOTAL))))));
    }

    @Test
    void whereNothingIsOfferedThatIsSaidInstead() {
        List<String> lines = written(letter(List.of(), null, null));
        assertTrue(lines.contains("HEADING What we found"), lines.toString());
        assertTrue(lines.contains("TEXT We can offer nothing."), lines.toString());
        assertTrue(
                lines.stream().noneMatch(line -> line.startsWith("ROW") || line.startsWith("SUM")), lines.toString());
    }
}
