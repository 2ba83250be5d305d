// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.workbook.text.WorkbookException;

/** Adds up the lines of a section or an option as they are printed. */
final class LineTotals {
    /**
     * Lines of one tax class and rate.
     *
     * @param taxClass the class
     * @param rate the rate charged
     * @param net sum without tax
     * @param tax tax
     */
    record Group(String taxClass, BigDecimal rate, BigDecimal net, BigDecimal tax) {}

    private record Key(String taxClass, BigDecimal rate) {}

    private final LineAmount.TaxRounding rounding;
    private final String place;
    private final @Nullable LineTotals whole;
    private final Map<Key, List<LineAmount>> groups = new LinkedHashMap<>();
    private BigDecimal net;
    private BigDecimal lineTax;

    LineTotals(LineAmount.TaxRounding rounding, String place) {
        this(rounding, place, null);
    }

    private LineTotals(LineAmount.TaxRounding rounding, String place, @Nullable LineTotals whole) {
        this.rounding = rounding;
        this.place = place;
        this.whole = whole;
        this.net = rounding.round(BigDecimal.ZERO);
        this.lineTax = net;
    }

    LineTotals section(String title) {
        return new LineTotals(rounding, place + ", " + title, this);
    }

    LineAmount add(QuoteLine line) throws WorkbookException {
        LineAmount amount = LineAmount.of(line, rounding, place + ", " + line.getDescription());
        add(amount);
        return amount;
    }

    private void add(LineAmount amount) {
        net = net.add(amount.net());
        lineTax = lineTax.add(amount.tax());
        if (!amount.onEnquiry()) {
            Key key = new Key(amount.taxClass(), amount.rate().stripTrailingZeros());
            groups.computeIfAbsent(key, any -> new ArrayList<>()).add(amount);
        }
        if (whole != null) {
            whole.add(amount);
        }
    }

    /** Sum without tax. */
    BigDecimal net() {
        return net;
    }

    /** Sum of the taxes of the lines; 0 where lines carry none. */
    BigDecimal lineTax() {
        return lineTax;
    }

    /** Sums by tax class and rate, in the order of their first lines. */
    List<Group> groups() {
        return groups.entrySet().stream()
                .map(entry -> group(entry.getKey(), entry.getValue()))
                .toList();
    }

    private Group group(Key key, List<LineAmount> lines) {
        BigDecimal sum = total(lines.stream().map(LineAmount::net).toList());
        BigDecimal tax = rounding.byLine()
                ? total(lines.stream().map(LineAmount::tax).toList())
                : rounding.round(sum.multiply(key.rate()));
        return new Group(key.taxClass(), key.rate(), sum, tax);
    }

    private BigDecimal total(List<BigDecimal> amounts) {
        return amounts.stream().reduce(rounding.round(BigDecimal.ZERO), BigDecimal::add);
    }

    /** The tax of all lines by the rounding policy. */
    BigDecimal tax() {
        return total(groups().stream().map(Group::tax).toList());
    }

    void compare(QuoteOption option) throws WorkbookException {
        LineAmount.same(option.getNet(), net, place, "sumNet");
        LineAmount.same(option.getTax(), tax(), place, "sumTax");
        LineAmount.same(option.getTotal(), net.add(tax()), place, "total");
    }
}
