// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.model.pricebook.PriceBook;

class TaxTableTest {
    private final PriceBook book = DemoBook.read();

    @Test
    void aRateOfAClassThatNobodyKnowsIsRefusedByItsName() {
        book.getTaxRates().get(0).setTaxClass("luxury");
        QuoteException refused = assertThrows(QuoteException.class, () -> new TaxTable(book, DemoBook.DAY));
        assertEquals("taxClass", refused.key());
        assertTrue(refused.wrong(Locale.ENGLISH).contains("luxury"), refused.wrong(Locale.ENGLISH));
        assertTrue(refused.right(Locale.ENGLISH).contains("customer-accounts"), refused.right(Locale.ENGLISH));
    }
}
