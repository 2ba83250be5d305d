// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.EAttribute;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import twinfeed.model.catalogue.Catalogue;
import twinfeed.model.catalogue.CatalogueFactory;
import twinfeed.model.catalogue.Heater;
import twinfeed.model.survey.SurveyPackage.Literals;
import twinfeed.usecase.TwinfeedService;
import twinfeed.workbook.form.FormWords.Word;

/** A form offers the words that the program knows, each with what it means. */
final class SurveyWordsTest {
    private static final TwinfeedService SERVICE = TwinfeedService.onClassPath();

    private static List<Word> words(EAttribute attribute, Locale locale, @Nullable Catalogue catalogue) {
        return new SurveyWords(SERVICE.calculators(), locale, null, catalogue).of(attribute);
    }

    private static List<Word> words(EAttribute attribute) {
        return words(attribute, Locale.UK, null);
    }

    private static List<String> values(List<Word> words) {
        return words.stream().map(Word::value).toList();
    }

    @Test
    void aWordIsOfferedWithItsMeaning() {
        assertTrue(words(Literals.PROTECTIVE_DEVICE__KIND)
                .contains(new Word("breaker-b", "breaker-b \u2013 circuit-breaker, type B")));
        assertTrue(words(Literals.CABLE_SEGMENT__METHOD)
                .contains(new Word("C", "C \u2013 clipped direct or buried in masonry")));
        assertTrue(words(Literals.FITTING__KIND).contains(new Word("elbow-soldered", "soldered elbow")));
    }

    @Test
    void theMeaningIsInTheLanguageOfTheForm() {
        assertTrue(
                words(Literals.FITTING__KIND, Locale.GERMANY, null).stream()
                        .noneMatch(word -> word.text().equals("soldered elbow")),
                "in German");
        assertEquals(
                values(words(Literals.FITTING__KIND)), values(words(Literals.FITTING__KIND, Locale.GERMANY, null)));
    }

    @Test
    void aWordThatIsItsOwnMeaningStandsAlone() {
        assertEquals(List.of(new Word("flat-70", "flat-70")), words(Literals.CABLE_SEGMENT__CABLE));
        assertTrue(words(Literals.SURVEY__RULES).contains(new Word("bs7671-2018-a2", "bs7671-2018-a2")));
        SurveyWords foreign = new SurveyWords(List.of(), Locale.UK, "iec60364-5-52", null);
        foreign.of(Literals.CABLE_SEGMENT__METHOD)
                .forEach(word -> assertTrue(
                        word.text().equals(word.value()) || word.text().startsWith(word.value() + " \u2013 "),
                        word.text()));
    }

    @Test
    void anUnknownRuleSetOffersTheWordsOfTheUsualOne() {
        assertEquals(
                words(Literals.CABLE_SEGMENT__METHOD),
                new SurveyWords(SERVICE.calculators(), Locale.UK, "of-another-land", null)
                        .of(Literals.CABLE_SEGMENT__METHOD));
    }

    @Test
    void theClimateMayBeComputedToo() {
        List<String> climates = values(words(Literals.SURVEY__CLIMATE));
        assertTrue(climates.contains("uk-mains"), climates.toString());
        assertEquals("model", climates.get(climates.size() - 1));
        assertTrue(words(Literals.SURVEY__CLIMATE).contains(new Word("uk-mains", "uk-mains")));
    }

    @Test
    void heatersAreThoseOfTheCatalogue() {
        assertEquals(List.of(), words(Literals.PRESENT_UNIT__HEATER_ID));
        Catalogue catalogue = CatalogueFactory.eINSTANCE.createCatalogue();
        for (String id : List.of("h85", "h95")) {
            Heater heater = CatalogueFactory.eINSTANCE.createHeater();
            heater.setId(id);
            catalogue.getHeaters().add(heater);
        }
        catalogue.getHeaters().get(0).setTitle("Heater 8.5 kW");
        assertEquals(
                List.of(new Word("h85", "h85 \u2013 Heater 8.5 kW"), new Word("h95", "h95")),
                words(Literals.PRESENT_UNIT__HEATER_ID, Locale.UK, catalogue));
    }

    @Test
    void whatIsTypedFreelyHasNoWords() {
        assertEquals(List.of(), words(Literals.CUSTOMER__NAME));
    }

    @Test
    void noWordIsOfferedTwice() {
        for (EAttribute attribute : List.of(
                Literals.FITTING__KIND,
                Literals.PROTECTIVE_DEVICE__KIND,
                Literals.CABLE_SEGMENT__METHOD,
                Literals.SURVEY__CLIMATE)) {
            List<String> values = values(words(attribute));
            assertEquals(values.stream().distinct().toList(), values, attribute.getName());
        }
    }
}
