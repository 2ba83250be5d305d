// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * A line without its texts and tax.
 *
 * @param kind what it is
 * @param section where it is printed
 * @param code price-book code, or a word for lines that no item stands behind
 * @param item its item; null if no item stands behind it
 * @param quantity how much is charged
 * @param unitPrice price of one
 * @param net quantity times price, rounded half up
 * @param cost cost of the line; null if it is not known
 * @param taxClass tax class
 * @param ask who asks for it; null if nobody does
 */
record PricedLine(
        Kind kind,
        Section section,
        String code,
        @Nullable PricedItem item,
        BigDecimal quantity,
        BigMoney unitPrice,
        Money net,
        @Nullable Money cost,
        TaxClass taxClass,
        @Nullable BillItem ask) {
    /** What a line is. */
    enum Kind {
        /** Something bought. */
        ITEM,
        /** Labour, in hours. */
        LABOUR,
        /** What the least labour of a visit lacks, one. */
        MINIMUM,
        /** A share of other lines for doubt. */
        CONTINGENCY,
        /** A discount; negative. */
        DISCOUNT
    }
}
