// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import twinfeed.model.pricebook.LocalText;
import twinfeed.model.pricebook.PaymentTerm;
import twinfeed.model.pricebook.PriceBook;
import twinfeed.model.pricebook.PricebookFactory;
import twinfeed.model.pricebook.TaxRate;
import twinfeed.model.rows.Row;
import twinfeed.pricing.Rounding;
import twinfeed.pricing.Shares;
import twinfeed.pricing.TaxClass;

/** The head of a price book: lines {@code # key: value}, more values in the cells that follow. */
final class BookHead {
    private static final Pattern KEYED = Pattern.compile("#\\s*([\\p{L}-]+):(.*)", Pattern.DOTALL);
    private static final List<String> REQUIRED = List.of("title", "currency", "date", "labour-rate", "valid-days");
    private static final List<String> REPEATED = List.of("tax-rate", "payment", "term", "exclusion", "translation");
    private static final List<String> SINGLE = List.of(
            "title",
            "currency",
            "date",
            "note",
            "labour-rate",
            "labour-cost",
            "labour-tax-class",
            "minimum-minutes",
            "valid-days",
            "energy-price",
            "contingency",
            "rounding",
            "markup");

    private final CellReader cells;
    private final PriceBook book;
    private final Map<String, Integer> seen = new LinkedHashMap<>();

    BookHead(CellReader cells, PriceBook book) {
        this.cells = cells;
        this.book = book;
    }

    static List<String> keys() {
        List<String> keys = new ArrayList<>(SINGLE);
        keys.addAll(REPEATED);
        return keys;
    }

    /** Takes a row that begins with #; one that begins with ## or is no {@code key: value} is a remark for people. */
    void take(Row row) {
        Matcher keyed = KEYED.matcher(row.cells().get(0));
        if (!keyed.matches()) {
            return;
        }
        String key = keyed.group(1).toLowerCase(Locale.ROOT);
        List<String> values = values(keyed.group(2).strip(), row.cells());
        if (!keys().contains(key)) {
            cells.refuse(row.number(), keyed.group(1), "unknownHead", String.join(", ", keys()));
        } else if (REPEATED.contains(key)) {
            repeated(row.number(), key, values);
        } else if (seen.putIfAbsent(key, row.number()) != null) {
            cells.refuse(row.number(), key, "headTwice", String.valueOf(seen.get(key)));
        } else {
            single(row.number(), key, values);
        }
    }

    /** Looks at the head as a whole. */
    void finish() {
        for (String key : REQUIRED) {
            if (!seen.containsKey(key)) {
                cells.refuse(0, key, "headMissing", key);
            }
        }
        if (!book.getPayments().isEmpty()) {
            BigDecimal sum = book.getPayments().stream()
                    .map(term -> Shares.exact(term.getShare()))
                    .reduce(BigDecimal.ZERO, BigDecimal::add);
            if (sum.compareTo(BigDecimal.ONE) != 0) {
                cells.refuse(0, "payment", "paymentSum", Shares.percent(sum));
            }
        }
    }

    /** The values of a line: what stands behind the colon, then further cells; blank cells at the end are none. */
    private static List<String> values(String first, List<String> cells) {
        List<String> values = new ArrayList<>();
        if (!first.isEmpty()) {
            values.add(first);
        }
        values.addAll(cells.subList(1, cells.size()));
        while (!values.isEmpty() && values.get(values.size() - 1).isEmpty()) {
            values.remove(values.size() - 1);
        }
        return values;
    }

    private void repeated(int row, String key, List<String> values) {
        switch (key) {
            case "tax-rate" -> taxRate(row, values);
            case "payment" -> payment(row, values);
            case "translation" -> translation(row, values);
            case "term" -> book.getTerms().add(text(row, key, values));
            default -> book.getExclusions().add(text(row, key, values));
        }
    }

    private void single(int row, String key, List<String> values) {
        String text = text(row, key, values);
        if (text.isEmpty()) {
            return;
        }
        switch (key) {
            case "title" -> book.setTitle(text);
            case "note" -> book.setNote(text);
            case "currency" -> currency(row, text);
            case "date" -> book.setDate(cells.date(row, key, text));
            case "labour-rate" -> book.setLabourRate(cells.positive(row, key, text, "labourFree"));
            case "labour-cost" -> book.setLabourCost(cells.number(row, key, text));
            case "labour-tax-class" -> book.setLabourTaxClass(oneOf(row, key, text, TaxClass.keys()));
            case "minimum-minutes" -> book.setMinimumMinutes(cells.whole(row, key, text));
            case "valid-days" -> book.setValidDays(cells.whole(row, key, text));
            case "energy-price" -> book.setEnergyPrice(cells.number(row, key, text));
            case "contingency" -> book.setContingency(cells.ratio(row, key, text, "1"));
            case "rounding" -> book.setRounding(oneOf(row, key, text, Rounding.keys()));
            default -> book.setMarkup(cells.ratio(row, key, text, "10"));
        }
    }

    private String text(int row, String key, List<String> values) {
        String text = String.join(", ", values);
        if (text.isEmpty()) {
            cells.refuse(row, key, "headBlank", key);
        }
        return text;
    }

    private void currency(int row, String code) {
        try {
            book.setCurrency(CurrencyUnit.of(code).getCode());
        } catch (IllegalCurrencyException | NullPointerException none) {
            cells.refuse(row, "currency", "unknownCurrency", code);
        }
    }

    private String oneOf(int row, String key, String text, List<String> allowed) {
        if (!allowed.contains(text)) {
            cells.refuse(row, key, "notOneOf", text, String.join(", ", allowed));
        }
        return text;
    }

    private void taxRate(int row, List<String> values) {
        if (values.size() < 3 || values.size() > 5) {
            cells.refuse(row, "tax-rate", "taxRateForm");
            return;
        }
        TaxRate rate = PricebookFactory.eINSTANCE.createTaxRate();
        rate.setTaxClass(oneOf(row, "tax-rate", values.get(0), TaxClass.keys()));
        rate.setRate(cells.ratio(row, "tax-rate", values.get(1), "1"));
        rate.setFrom(cells.date(row, "tax-rate", values.get(2)));
        rate.setUntil(values.size() > 3 ? cells.date(row, "tax-rate", values.get(3)) : null);
        rate.setLabel(values.size() > 4 ? values.get(4) : null);
        if (rate.getRate() == null || rate.getFrom() == null) {
            cells.refuse(row, "tax-rate", "taxRateForm");
        } else if (rate.getUntil() != null && rate.getUntil().isBefore(rate.getFrom())) {
            cells.refuse(row, "tax-rate", "taxRateEnds", rate.getFrom().toString());
        } else {
            overlap(row, rate);
            book.getTaxRates().add(rate);
        }
    }

    private void overlap(int row, TaxRate rate) {
        for (TaxRate other : book.getTaxRates()) {
            boolean apart = before(rate.getUntil(), other.getFrom()) || before(other.getUntil(), rate.getFrom());
            if (other.getTaxClass().equals(rate.getTaxClass()) && !apart) {
                cells.refuse(
                        row,
                        "tax-rate",
                        "taxRateOverlap",
                        rate.getTaxClass(),
                        other.getFrom().toString());
            }
        }
    }

    private static boolean before(@org.jspecify.annotations.Nullable LocalDate until, LocalDate from) {
        return until != null && until.isBefore(from);
    }

    private void payment(int row, List<String> values) {
        if (values.size() != 2) {
            cells.refuse(row, "payment", "paymentForm");
            return;
        }
        PaymentTerm term = PricebookFactory.eINSTANCE.createPaymentTerm();
        term.setTitle(values.get(0));
        term.setShare(cells.ratio(row, "payment", values.get(1), "1"));
        if (term.getShare() == null || term.getShare().si() == 0) {
            cells.refuse(row, "payment", "paymentForm");
        } else {
            book.getPayments().add(term);
        }
    }

    private void translation(int row, List<String> values) {
        boolean language = !values.isEmpty() && values.get(0).matches("[a-z]{2}");
        if (values.size() != 3 || !language || values.get(1).isEmpty()) {
            cells.refuse(row, "translation", "translationForm");
            return;
        }
        LocalText text = PricebookFactory.eINSTANCE.createLocalText();
        text.setLanguage(values.get(0));
        text.setOriginal(values.get(1));
        text.setText(values.get(2));
        book.getTranslations().add(text);
    }
}
