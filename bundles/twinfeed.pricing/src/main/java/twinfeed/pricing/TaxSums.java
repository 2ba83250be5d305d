// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.TaxSum;
import twinfeed.pricing.texts.FigureText;

/** Adds up the printed lines of an option by tax class. */
final class TaxSums {
    private final PriceList prices;
    private final Locale locale;

    TaxSums(PriceList prices, Locale locale) {
        this.prices = prices;
        this.locale = locale;
    }

    List<TaxSum> of(List<QuoteLine> lines) {
        Map<TaxClass, List<QuoteLine>> byClass = new EnumMap<>(TaxClass.class);
        for (QuoteLine line : lines) {
            TaxClass taxClass = TaxClass.of(line.getTaxClass()).orElseThrow();
            byClass.computeIfAbsent(taxClass, key -> new ArrayList<>()).add(line);
        }
        return byClass.entrySet().stream()
                .map(entry -> sum(entry.getKey(), entry.getValue()))
                .toList();
    }

    private TaxSum sum(TaxClass taxClass, List<QuoteLine> lines) {
        TaxTable.Rate rate = prices.taxes().rate(taxClass);
        CurrencyUnit currency = prices.currency();
        Money net = total(currency, lines.stream().map(QuoteLine::getNet).toList());
        Money tax = prices.rounding() == Rounding.LINE
                ? total(currency, lines.stream().map(QuoteLine::getTax).toList())
                : Rounding.share(net, rate.charged());
        TaxSum sum = QuoteFactory.eINSTANCE.createTaxSum();
        sum.setTaxClass(taxClass.key());
        sum.setLabel(rate.label().isEmpty() ? label(rate) : rate.label());
        sum.setRate(rate.charged());
        sum.setNet(net.getAmount());
        sum.setTax(tax.getAmount());
        if (taxClass == TaxClass.CUSTOMER_ACCOUNTS) {
            sum.setCustomerAccounts(Rounding.share(net, rate.rate()).getAmount());
        }
        return sum;
    }

    private String label(TaxTable.Rate rate) {
        return QuoteException.MESSAGES.inOrder(
                locale, "tax." + rate.taxClass().key(), new FigureText(locale).percent(rate.rate()));
    }

    /** The sum of printed amounts. */
    static Money total(CurrencyUnit currency, List<BigDecimal> amounts) {
        Money sum = Money.zero(currency);
        for (BigDecimal amount : amounts) {
            sum = sum.plus(amount);
        }
        return sum;
    }
}
