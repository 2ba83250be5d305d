// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;

class QuantityTextTest {
    @ParameterizedTest
    @CsvSource({
        "labour, 0.8333, h, 50 min, 50 min",
        "labour, 1.25, h, 1 h 15 min, '1 Std. 15 min'",
        "labour, 2, Std., 2 h, 2 Std.",
        "contingency, 0.05, share, 5 %, 5 %",
        "heater, 1, each, 1, 1",
        "valve, 2, Stück, 2, 2",
        "cable-10, 10.2, m, 10.2 m, '10,2 m'",
        "certificate, 1, visit, 1 visit, 1 visit",
    })
    void aQuantityIsWrittenAsATradespersonWritesIt(
            String code, String quantity, String unit, String english, String german) {
        QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
        line.setCode(code);
        line.setQuantity(new BigDecimal(quantity));
        line.setUnit(unit);
        assertEquals(english, plain(new QuantityText(new DocumentTexts(Locale.UK)).of(line)));
        assertEquals(german, plain(new QuantityText(new DocumentTexts(Locale.GERMANY)).of(line)));
    }

    @Test
    void aLineWithoutAQuantityHasNone() {
        assertEquals("", new QuantityText(new DocumentTexts(Locale.UK)).of(QuoteFactory.eINSTANCE.createQuoteLine()));
    }

    private static String plain(String text) {
        return text.replace('\u00a0', ' ').replace('\u202f', ' ');
    }
}
