// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.survey.Confidence;
import twinfeed.pricing.texts.FigureText;

/** Every language says all that English says, with the same values in it. */
class LanguagesTest {
    private static final Pattern VALUE = Pattern.compile("\\{[a-zA-Z0-9]+}");
    private static final Set<String> SAME = Set.of("source.contingency");

    private static Properties file(String name) throws IOException {
        Properties properties = new Properties();
        try (var in = Objects.requireNonNull(LanguagesTest.class.getResourceAsStream(name), name)) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return properties;
    }

    private static Set<String> values(String text) {
        return VALUE.matcher(text).results().map(one -> one.group()).collect(Collectors.toCollection(TreeSet::new));
    }

    @ParameterizedTest
    @ValueSource(strings = {"messages", "texts/messages", "texts/standing-texts"})
    void germanSaysAllThatEnglishSays(String base) throws IOException {
        Properties english = file(base + ".properties");
        Properties german = file(base + "_de.properties");
        assertTrue(english.size() > 5);
        assertEquals(new TreeSet<>(english.stringPropertyNames()), new TreeSet<>(german.stringPropertyNames()));
        for (String key : english.stringPropertyNames()) {
            assertEquals(values(english.getProperty(key)), values(german.getProperty(key)), key);
            if (!SAME.contains(key)) {
                assertNotEquals(english.getProperty(key), german.getProperty(key), key);
            }
        }
    }

    /** Items, stages of the payment, labels of the tax and the remark of the book are in German where the book has them. */
    @Test
    void theTextsOfTheBookAreInTheLanguage() throws Exception {
        QuoteRequest request =
                QuoteRequest.of(Samples.survey(Confidence.SEEN), Samples.assessment(), DemoBook.read(), DemoBook.DAY);
        Quote german = QuoteBuilder.draft(request.in(Locale.GERMANY));
        QuoteOption first = german.getOptions().get(0);
        assertEquals(
                "Durchlauferhitzer für die Dusche 7,5 kW, zwei Heizelemente",
                first.getSections().get(0).getLines().get(0).getDescription());
        assertEquals("Stück", first.getSections().get(0).getLines().get(0).getUnit());
        assertEquals("bei Auftragserteilung", first.getPayments().get(0).getTitle());
        assertEquals("Regelsatz 20\u00a0%", first.getTaxes().get(0).getLabel());
        assertTrue(german.getBookNote().startsWith("Erfundene Preise"), german.getBookNote());
        Quote english = QuoteBuilder.draft(request.in(Locale.UK));
        assertEquals(
                "on acceptance",
                english.getOptions().get(0).getPayments().get(0).getTitle());
        assertEquals(english.getOptions().get(0).getTotal(), first.getTotal());
    }

    @Test
    void quotesInGerman() throws Exception {
        QuoteRequest request = QuoteRequest.of(
                        Samples.survey(Confidence.CONCEALED), Samples.assessment(), DemoBook.read(), DemoBook.DAY)
                .in(Locale.GERMAN);
        Quote quote = QuoteBuilder.draft(request);
        QuoteOption cable = quote.getOptions().get(1);
        String lines = cable.getSections().stream()
                .flatMap(section -> section.getLines().stream())
                .map(line -> line.getDescription() + " | " + line.getSource() + " | " + line.getNote())
                .collect(Collectors.joining("\n"));
        assertTrue(lines.contains("task-run-cable: 12,5 × 8 min zu 54,00 GBP je Stunde, 1. September 2026"), lines);
        assertTrue(
                quote.getTerms().get(0).endsWith("bis zum 25. Dezember 2026 angenommen werden."),
                quote.getTerms().get(0));
        assertTrue(String.join(" ", quote.getAssumptions()).contains("„board to shower“ ist verdeckt"));
        assertTrue(String.join(" ", quote.getCautions()).contains("Strom kann töten"));
    }

    @Test
    void writesFiguresAsTheReaderDoes() {
        LocalDate day = LocalDate.of(2026, 3, 9);
        java.math.BigDecimal number = new java.math.BigDecimal("1234.500");
        assertEquals("9 March 2026", new FigureText(Locale.ROOT).day(day));
        assertEquals("9. März 2026", new FigureText(Locale.GERMAN).day(day));
        assertEquals("1234.5", new FigureText(Locale.ENGLISH).number(number));
        assertEquals("1234,5", new FigureText(Locale.GERMAN).number(number));
        assertEquals("17,5\u00a0%", new FigureText(Locale.GERMANY).percent(new java.math.BigDecimal("0.175")));
        assertEquals("12,30 EUR", new FigureText(Locale.GERMAN).amount(org.joda.money.BigMoney.parse("EUR 12.30")));
    }
}
