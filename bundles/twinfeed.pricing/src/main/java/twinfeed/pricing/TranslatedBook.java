// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.jspecify.annotations.Nullable;
import twinfeed.model.pricebook.LocalText;
import twinfeed.model.pricebook.PriceBook;

/** A price book in the language of a quote. */
public final class TranslatedBook {
    private final Map<String, String> texts = new HashMap<>();

    private TranslatedBook(PriceBook book, Locale locale) {
        for (LocalText text : book.getTranslations()) {
            if (locale.getLanguage().equals(text.getLanguage())) {
                texts.put(text.getOriginal(), text.getText());
            }
        }
    }

    /** A copy whose texts are in the language, as far as the book has them; the book itself where it has none. */
    static PriceBook of(PriceBook book, Locale locale) {
        TranslatedBook translated = new TranslatedBook(book, locale);
        return translated.texts.isEmpty() ? book : translated.copy(book);
    }

    /** A text in the language, as far as the book has it there; the text itself otherwise. */
    public static String text(PriceBook book, Locale locale, String original) {
        return new TranslatedBook(book, locale).texts.getOrDefault(original, original);
    }

    private PriceBook copy(PriceBook book) {
        PriceBook copy = EcoreUtil.copy(book);
        copy.setTitle(text(copy.getTitle()));
        copy.setNote(text(copy.getNote()));
        copy.getItems().forEach(item -> item.setDescription(text(item.getDescription())));
        copy.getPayments().forEach(term -> term.setTitle(text(term.getTitle())));
        copy.getTaxRates().forEach(rate -> rate.setLabel(text(rate.getLabel())));
        translate(copy.getTerms());
        translate(copy.getExclusions());
        return copy;
    }

    private void translate(List<String> all) {
        all.replaceAll(this::text);
    }

    private @Nullable String text(@Nullable String original) {
        return original == null ? null : texts.getOrDefault(original, original);
    }
}
