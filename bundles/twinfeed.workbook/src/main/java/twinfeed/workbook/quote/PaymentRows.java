// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import twinfeed.model.quote.Payment;
import twinfeed.workbook.sheet.NumberFormats;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.CellStyle;
import twinfeed.workbook.writer.SheetWriter;

/** Stage payments: shares of the total, the last one is what remains. */
final class PaymentRows {
    private final SheetWriter page;
    private final LineAmount.TaxRounding rounding;
    private final CellStyle money;

    PaymentRows(SheetWriter page, LineAmount.TaxRounding rounding, CellStyle money) {
        this.page = page;
        this.rounding = rounding;
        this.money = money;
    }

    /** Writes them; returns where their amounts stand. */
    List<String> write(List<Payment> payments, String totalCell, BigDecimal total) {
        List<String> cells = new ArrayList<>();
        int first = page.rowIndex() + 1;
        BigDecimal left = total;
        for (int at = 0; at < payments.size(); at++) {
            Payment payment = payments.get(at);
            page.row().text(ItemColumns.WHAT, payment.getTitle(), SheetStyles.LINE);
            for (int column = 1; column <= ItemColumns.LAST; column++) {
                page.blank(column, SheetStyles.LINE);
            }
            page.number(ItemColumns.RATE, payment.getShare(), SheetStyles.LINE.format(NumberFormats.PERCENT));
            BigDecimal computed = at == payments.size() - 1 || payment.getShare() == null
                    ? left
                    : rounding.round(total.multiply(payment.getShare()));
            amount(payment, computed, at == payments.size() - 1 ? remainder(totalCell, first, at) : share(totalCell));
            left = left.subtract(payment.getAmount() == null ? computed : payment.getAmount());
            cells.add(page.fullAddress(ItemColumns.GROSS));
        }
        return List.copyOf(cells);
    }

    /** Somebody may round a deposit by hand: then the amount stands as it is. */
    private void amount(Payment payment, BigDecimal computed, String formula) {
        BigDecimal stated = payment.getAmount();
        if (stated == null || stated.compareTo(computed) == 0) {
            page.formula(ItemColumns.GROSS, formula, computed, money);
        } else {
            page.number(ItemColumns.GROSS, stated, money);
        }
    }

    private String share(String totalCell) {
        return "ROUND(" + totalCell + "*" + page.address(ItemColumns.RATE) + "," + rounding.decimals() + ")";
    }

    private static String remainder(String totalCell, int first, int count) {
        String letter = ItemColumns.letter(ItemColumns.GROSS);
        return count == 0
                ? totalCell
                : totalCell + "-SUM(" + letter + (first + 1) + ":" + letter + (first + count) + ")";
    }
}
