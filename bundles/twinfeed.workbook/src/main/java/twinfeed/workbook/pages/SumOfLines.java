// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.math.BigDecimal;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.workbook.WorkbookException;

/** Adds up the lines of a section or an option as they are printed. */
final class SumOfLines {
    private final int decimals;
    private final String place;
    private final @Nullable SumOfLines whole;
    private BigDecimal net;
    private BigDecimal tax;

    SumOfLines(int decimals, String place) {
        this(decimals, place, null);
    }

    private SumOfLines(int decimals, String place, @Nullable SumOfLines whole) {
        this.decimals = decimals;
        this.place = place;
        this.whole = whole;
        this.net = BigDecimal.ZERO.setScale(decimals);
        this.tax = net;
    }

    SumOfLines section(String title) {
        return new SumOfLines(decimals, place + ", " + title, this);
    }

    LineAmount add(QuoteLine line) throws WorkbookException {
        LineAmount amount = LineAmount.of(line, decimals, place + ", " + line.getDescription());
        add(amount);
        return amount;
    }

    private void add(LineAmount amount) {
        net = net.add(amount.net());
        tax = tax.add(amount.tax());
        if (whole != null) {
            whole.add(amount);
        }
    }

    BigDecimal net() {
        return net;
    }

    BigDecimal tax() {
        return tax;
    }

    void compare(QuoteOption option) throws WorkbookException {
        LineAmount.same(option.getNet(), net, place, "sum without tax");
        LineAmount.same(option.getTax(), tax, place, "sum of tax");
        LineAmount.same(option.getTotal(), net.add(tax), place, "total");
    }
}
