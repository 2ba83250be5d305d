// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.jspecify.annotations.Nullable;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.units.Ratio;

/** A price book on one day, with its price rules worked out. Immutable: a later change of the book is not seen. */
final class PriceList {
    private final CurrencyUnit currency;
    private final Map<String, PricedItem> items = new LinkedHashMap<>();
    private final BigMoney labourRate;
    private final @Nullable BigMoney labourCost;
    private final TaxClass labourTax;
    private final BigDecimal minimumMinutes;
    private final TaxTable taxes;
    private final Rounding rounding;
    private final LocalDate date;

    /** @throws QuoteException if the book cannot be used on that day */
    PriceList(PriceBook book, LocalDate day) {
        if (book.getDate() == null) {
            throw new QuoteException("bookUndated");
        }
        if (day.isBefore(book.getDate())) {
            throw new QuoteException("bookDate", book.getDate(), day);
        }
        if (book.getLabourRate() == null) {
            throw new QuoteException("labourRate");
        }
        currency = currency(book.getCurrency());
        date = book.getDate();
        labourRate = exact(currency, book.getLabourRate());
        labourCost = money(book.getLabourCost());
        labourTax = taxClass(Objects.requireNonNullElse(book.getLabourTaxClass(), TaxClass.STANDARD.key()));
        minimumMinutes = BigDecimal.valueOf(Objects.requireNonNullElse(book.getMinimumMinutes(), 0));
        taxes = new TaxTable(book, day);
        rounding = rounding(book.getRounding());
        for (PriceItem item : book.getItems()) {
            items.put(item.getCode(), item(item, book, day));
        }
    }

    private static CurrencyUnit currency(@Nullable String code) {
        try {
            return CurrencyUnit.of(code == null ? "" : code);
        } catch (IllegalCurrencyException none) {
            throw new QuoteException("currency", code == null ? "" : code);
        }
    }

    private static TaxClass taxClass(String key) {
        return TaxClass.of(key).orElseThrow(() -> new QuoteException("taxClass", key, TaxClass.keys()));
    }

    private static Rounding rounding(@Nullable String key) {
        return key == null
                ? Rounding.LINE
                : Rounding.of(key).orElseThrow(() -> new QuoteException("rounding", key, Rounding.keys()));
    }

    private PricedItem item(PriceItem item, PriceBook book, LocalDate day) {
        boolean over = item.getHoldsUntil() != null && day.isAfter(item.getHoldsUntil());
        return new PricedItem(
                item.getCode(),
                Objects.requireNonNullElse(item.getDescription(), item.getCode()),
                Objects.requireNonNullElse(item.getUnit(), ""),
                over ? null : price(item, book.getMarkup()),
                money(item.getCost()),
                taxClass(Objects.requireNonNullElse(item.getTaxClass(), "")),
                // Labour alone would read as the whole price: what is over is on enquiry as a whole.
                over ? BigDecimal.ZERO : Objects.requireNonNullElse(item.getMinutes(), BigDecimal.ZERO),
                item.getWholeLength(),
                Shares.orZero(item.getWaste()),
                Objects.requireNonNullElse(item.getLeadDays(), 0),
                Objects.requireNonNullElse(item.getDate(), date));
    }

    /** The price given, or from cost by markup or margin, rounded half up to the currency's smallest unit as it is printed. */
    private @Nullable BigMoney price(PriceItem item, @Nullable Ratio bookMarkup) {
        if (item.getPrice() != null) {
            return money(item.getPrice());
        }
        if (item.getCost() == null) {
            return null;
        }
        Ratio markup = item.getMarkup() == null ? bookMarkup : item.getMarkup();
        if (item.getMargin() != null) {
            BigDecimal kept = BigDecimal.ONE.subtract(Shares.exact(item.getMargin()));
            return rounded(item.getCost().divide(kept, currency.getDecimalPlaces() + 12, RoundingMode.HALF_UP));
        }
        if (markup == null) {
            throw new QuoteException("noRule", item.getCode());
        }
        return rounded(item.getCost().multiply(BigDecimal.ONE.add(Shares.exact(markup))));
    }

    private BigMoney rounded(BigDecimal amount) {
        return Rounding.halfUp(BigMoney.of(currency, amount)).toBigMoney();
    }

    private @Nullable BigMoney money(@Nullable BigDecimal amount) {
        return amount == null ? null : exact(currency, amount);
    }

    /** With the places of the currency at least, so that 126 in a sheet and 126.00 in a text print alike; more places stay. */
    private static BigMoney exact(CurrencyUnit currency, BigDecimal amount) {
        int places = Math.max(
                currency.getDecimalPlaces(), amount.stripTrailingZeros().scale());
        return BigMoney.of(currency, amount.setScale(places));
    }

    CurrencyUnit currency() {
        return currency;
    }

    Optional<PricedItem> find(String code) {
        return Optional.ofNullable(items.get(code));
    }

    BigMoney labourRate() {
        return labourRate;
    }

    @Nullable
    BigMoney labourCost() {
        return labourCost;
    }

    TaxClass labourTax() {
        return labourTax;
    }

    /** Least labour charged for a visit, in minutes; 0 if there is no such rule. */
    BigDecimal minimumMinutes() {
        return minimumMinutes;
    }

    TaxTable taxes() {
        return taxes;
    }

    Rounding rounding() {
        return rounding;
    }

    /** Date of the book. */
    LocalDate date() {
        return date;
    }
}
