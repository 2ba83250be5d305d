// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.model.pricebook.LocalText;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PricebookFactory;

class TranslatedBookTest {
    private final PriceBook book = PricebookFactory.eINSTANCE.createPriceBook();

    TranslatedBookTest() {
        book.setTitle("Small book");
        book.getTerms().addAll(List.of("Keys at the office", "Ring first"));
        book.getExclusions().addAll(List.of("Parking", "Scaffolding"));
        translate("de", "Small book", "Kleines Buch");
        translate("de", "Keys at the office", "Die Schlüssel liegen im Büro");
        translate("de", "Parking", "Parkgebühren");
        translate("fr", "Parking", "Stationnement");
    }

    private void translate(String language, String original, String translation) {
        LocalText text = PricebookFactory.eINSTANCE.createLocalText();
        text.setLanguage(language);
        text.setOriginal(original);
        text.setText(translation);
        book.getTranslations().add(text);
    }

    @Test
    void titleTermsAndExclusionsAreInTheLanguageWhereTheBookHasThem() {
        PriceBook german = TranslatedBook.of(book, Locale.GERMANY);
        assertEquals("Kleines Buch", german.getTitle());
        assertEquals(List.of("Die Schlüssel liegen im Büro", "Ring first"), german.getTerms());
        assertEquals(List.of("Parkgebühren", "Scaffolding"), german.getExclusions());
        assertNull(german.getNote(), "a text that is not there stays away");
    }

    @Test
    void theBookItselfStaysAsItIs() {
        TranslatedBook.of(book, Locale.GERMAN);
        assertEquals("Small book", book.getTitle());
        assertEquals(List.of("Keys at the office", "Ring first"), book.getTerms());
    }

    @Test
    void aLanguageThatTheBookDoesNotHaveIsTheBookItself() {
        assertSame(book, TranslatedBook.of(book, Locale.ITALIAN));
    }

    @Test
    void aSingleTextIsInTheLanguageOrElseAsItIs() {
        assertEquals("Parkgebühren", TranslatedBook.text(book, Locale.GERMAN, "Parking"));
        assertEquals("Stationnement", TranslatedBook.text(book, Locale.FRENCH, "Parking"));
        assertEquals("Scaffolding", TranslatedBook.text(book, Locale.GERMAN, "Scaffolding"));
    }
}
