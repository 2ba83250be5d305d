// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.pages;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.QuoteLine;
import twinfeed.workbook.WorkbookException;

/**
 * The amounts of a line as its formulas give them: {@code ROUND(quantity * price)} and {@code ROUND(net * rate)}, half up.
 *
 * @param net without tax; 0 on enquiry
 * @param tax tax; 0 where none is charged
 * @param taxed whether a rate applies
 * @param onEnquiry whether there is no price yet
 */
record LineAmount(BigDecimal net, BigDecimal tax, boolean taxed, boolean onEnquiry) {
    private static final Set<String> WITHOUT_TAX = Set.of("outside", "customer-accounts");

    static LineAmount of(QuoteLine line, int decimals, String place) throws WorkbookException {
        if (line.getUnitPrice() == null) {
            return new LineAmount(BigDecimal.ZERO, BigDecimal.ZERO, false, true);
        }
        if (line.getQuantity() == null) {
            throw new WorkbookException(place + ": quantity is not set; a priced line needs one");
        }
        boolean taxed = line.getTaxRate() != null && !WITHOUT_TAX.contains(String.valueOf(line.getTaxClass()));
        BigDecimal net = line.getQuantity().multiply(line.getUnitPrice()).setScale(decimals, RoundingMode.HALF_UP);
        BigDecimal tax = taxed
                ? net.multiply(line.getTaxRate()).setScale(decimals, RoundingMode.HALF_UP)
                : BigDecimal.ZERO.setScale(decimals);
        same(line.getNet(), net, place, "net amount");
        same(line.getTax(), tax, place, "tax");
        return new LineAmount(net, tax, taxed, false);
    }

    /** An inspector recomputes the sheet, so a figure that its formula does not give must not be printed. */
    static void same(@Nullable BigDecimal stated, BigDecimal computed, String place, String what)
            throws WorkbookException {
        if (stated != null && stated.compareTo(computed) != 0) {
            throw new WorkbookException(place + ": " + what + " is " + stated.toPlainString()
                    + ", but the line's figures give " + computed.toPlainString());
        }
    }
}
