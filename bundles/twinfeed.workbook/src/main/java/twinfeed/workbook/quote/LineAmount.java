// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import twinfeed.model.quote.QuoteLine;
import twinfeed.workbook.text.WorkbookException;

/**
 * The amounts of a line as its formulas give them: {@code ROUND(quantity * price)} and {@code ROUND(net * rate)}, half up.
 *
 * @param net without tax; 0 on enquiry
 * @param taxClass tax class
 * @param rate tax rate; 0 where no tax is charged
 * @param tax tax of the line; 0 where none is charged or the tax is rounded over the sum of lines
 * @param onEnquiry whether there is no price yet
 */
record LineAmount(BigDecimal net, String taxClass, BigDecimal rate, BigDecimal tax, boolean onEnquiry) {
    private static final Set<String> WITHOUT_TAX = Set.of("outside", "customer-accounts");

    static LineAmount of(QuoteLine line, TaxRounding rounding, String place) throws WorkbookException {
        BigDecimal zero = BigDecimal.ZERO.setScale(rounding.decimals());
        String taxClass = line.getTaxClass() == null ? "outside" : line.getTaxClass();
        if (line.getUnitPrice() == null) {
            return new LineAmount(zero, taxClass, BigDecimal.ZERO, zero, true);
        }
        if (line.getQuantity() == null) {
            throw new WorkbookException("noQuantity", Map.of("place", place));
        }
        boolean taxed = line.getTaxRate() != null && !WITHOUT_TAX.contains(taxClass);
        BigDecimal rate = taxed ? line.getTaxRate() : BigDecimal.ZERO;
        BigDecimal net = rounding.round(line.getQuantity().multiply(line.getUnitPrice()));
        BigDecimal tax = rounding.byLine() ? rounding.round(net.multiply(rate)) : zero;
        same(line.getNet(), net, place, "net");
        same(line.getTax(), tax, place, "tax");
        return new LineAmount(net, taxClass, rate, tax, false);
    }

    /** An inspector recomputes the sheet, so a figure that its formula does not give must not be printed. */
    static void same(@Nullable BigDecimal stated, BigDecimal computed, String place, String what)
            throws WorkbookException {
        if (stated != null && stated.compareTo(computed) != 0) {
            throw new WorkbookException(
                    "contradiction." + what,
                    Map.of("place", place, "stated", stated.toPlainString(), "computed", computed.toPlainString()));
        }
    }

    /**
     * Where tax is rounded, always half up as ROUND does.
     *
     * @param decimals decimals of an amount
     * @param byLine whether line by line; otherwise once for the sum of lines of one class and rate
     */
    record TaxRounding(int decimals, boolean byLine) {
        /**
         * The policy of a quote.
         *
         * @throws WorkbookException if a sheet cannot express it
         */
        static TaxRounding of(@Nullable String key, int decimals) throws WorkbookException {
            if (key == null || key.equals("line")) {
                return new TaxRounding(decimals, true);
            }
            if (key.equals("total-by-rate")) {
                return new TaxRounding(decimals, false);
            }
            throw new WorkbookException("rounding", Map.of("rounding", key));
        }

        BigDecimal round(BigDecimal exact) {
            return exact.setScale(decimals, RoundingMode.HALF_UP);
        }
    }
}
