// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.quote;

import java.util.Set;

/** Columns of the sheet of items. */
final class ItemColumns {
    static final int WHAT = 0;
    static final int QUANTITY = 1;
    static final int UNIT = 2;
    static final int PRICE = 3;
    static final int NET = 4;
    static final int CLASS = 5;
    static final int RATE = 6;
    static final int TAX = 7;
    static final int GROSS = 8;
    static final int SOURCE = 9;
    static final int NOTE = 10;
    static final int LAST = NOTE;

    /** The last one that is printed: where a price comes from is for the screen, and without it the letters on paper are half as large again. */
    static final int PRINTED = 8;

    static final Set<Integer> NUMERIC = Set.of(QUANTITY, PRICE, NET, RATE, TAX, GROSS);

    private ItemColumns() {}

    /** The letter of a column. */
    static String letter(int column) {
        return String.valueOf((char) ('A' + column));
    }
}
