// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.model.catalogue.CataloguePackage;
import twinfeed.model.pricebook.PricebookPackage;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.usecase.TwinfeedService;

/** How a value is written is said with its unit or words and an example. */
final class FieldTextTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();

    private final FieldText text = new FieldText(SERVICE.calculators(), Locale.ROOT);

    @Test
    void aReadingHasItsUnitAnExampleAndItsUsualRange() {
        assertEquals("bar", text.unit(Literals.WATER_TEST__STATIC_PRESSURE));
        String example = text.example(Literals.WATER_TEST__STATIC_PRESSURE);
        assertTrue(example.matches("[0-9.]+ bar.*"), example);
        assertTrue(
                text.form(Literals.WATER_TEST__STATIC_PRESSURE).startsWith("for example " + example + "; units bar, "),
                text.form(Literals.WATER_TEST__STATIC_PRESSURE));
        String meaning = text.meaning(Literals.WATER_TEST__STATIC_PRESSURE);
        assertTrue(meaning.length() > 20 && meaning.contains(" bar"), meaning);
        assertFalse(text.meaning(Literals.CUSTOMER__NAME).contains("  "), "no range where there is none");
    }

    @Test
    void wordsOfAListAreNamed() {
        assertTrue(text.form(Literals.ELECTRICAL_FEED__EARTHING).startsWith("one of TN-S, "), "of the model");
        assertTrue(text.form(Literals.PROTECTIVE_DEVICE__KIND).startsWith("one of breaker-b, "), "of the rule set");
        assertEquals(text.form(Literals.PROTECTIVE_DEVICE__KIND), text.unit(Literals.PROTECTIVE_DEVICE__KIND));
        assertEquals("breaker-b", text.example(Literals.PROTECTIVE_DEVICE__KIND));
        assertTrue(
                text.form(Literals.CABLE_SEGMENT__METHOD).contains(text.example(Literals.CABLE_SEGMENT__METHOD)),
                "an example is one of the words");
        assertTrue(text.form(Literals.ELECTRICAL_FEED__EARTHING)
                .contains(text.example(Literals.ELECTRICAL_FEED__EARTHING)));
    }

    @Test
    void aWordIsExplainedWhereItDoesNotSayItself() {
        assertTrue(
                text.meanings(Literals.PROTECTIVE_DEVICE__KIND).contains("breaker-b \u2013 circuit-breaker, type B"));
        assertTrue(text.meanings(Literals.FITTING__KIND).contains("elbow-soldered \u2013 soldered elbow"));
        assertFalse(text.meanings(Literals.FITTING__KIND).stream().anyMatch(each -> each.startsWith("bend ")));
        assertEquals(List.of(), text.meanings(Literals.CABLE_SEGMENT__CABLE));
        assertEquals(List.of(), text.meanings(Literals.CUSTOMER__VULNERABLE), "yes and no");
    }

    @Test
    void daysNumbersAndTextsAreSaid() {
        assertEquals("a day, YYYY-MM-DD", text.form(Literals.SURVEY__TAKEN_ON));
        assertEquals("2026-10-06", text.example(Literals.SURVEY__TAKEN_ON));
        assertEquals("text", text.form(Literals.CUSTOMER__NAME));
        assertEquals("", text.unit(Literals.CUSTOMER__NAME), "nothing to say of a text");
        assertFalse(text.example(Literals.CUSTOMER__NAME).isBlank());
        assertEquals("a whole number", text.form(PricebookPackage.Literals.PRICE_ITEM__LEAD_DAYS));
        assertEquals("a number with a decimal point", text.form(PricebookPackage.Literals.PRICE_ITEM__PRICE));
        assertEquals("a whole number", text.form(CataloguePackage.Literals.HEATER__GUARANTEE_YEARS));
    }

    @Test
    void whatMayBeRepeatedSaysSo() {
        assertTrue(text.form(Literals.SURVEY__CANDIDATES).endsWith(", may be repeated"));
        assertFalse(text.form(Literals.CUSTOMER__NAME).contains("repeated"));
        assertEquals("h85; h95", text.example(Literals.SURVEY__CANDIDATES), "codes are the same in every language");
        assertEquals(
                "h85; h95", new FieldText(SERVICE.calculators(), Locale.GERMANY).example(Literals.SURVEY__CANDIDATES));
    }

    private static List<String> page(FileKind kind) {
        return new FileGuide(SERVICE, Locale.ROOT).page(kind);
    }

    @Test
    void everyKindHasItsPage() {
        assertTrue(page(FileKind.CATALOGUE).stream().anyMatch(line -> line.startsWith("  stabilisedMinimum")));
        assertTrue(page(FileKind.FIRM).contains("  accent"), "the keys of a firm");
        assertTrue(page(FileKind.TEXTS).contains("  term.valid"), "the standing texts");
        List<String> quote = page(FileKind.QUOTE);
        assertTrue(quote.stream().anyMatch(line -> line.startsWith("QuoteLine \u2013 ")));
        assertTrue(quote.stream().anyMatch(line -> line.startsWith("Finding \u2013 ")), "with its assessment");
        for (FileKind kind : FileKind.values()) {
            List<String> page = page(kind);
            assertFalse(page.get(0).isBlank() || page.get(2).isBlank(), "title and introduction");
            assertEquals("", page.get(1));
        }
    }

    @Test
    void theListsPageExplainsWordsOnceForComplaints() {
        List<String> list = page(FileKind.DWELLINGS);
        assertEquals(
                1,
                list.stream()
                        .filter(line -> line.startsWith("        rcdTrips \u2013 "))
                        .count());
        assertTrue(list.contains("        breaker-b \u2013 circuit-breaker, type B"));
        assertTrue(page(FileKind.PRICE_BOOK).stream()
                .anyMatch(line -> line.contains("tax-class, rate, from, until, label")));
    }
}
