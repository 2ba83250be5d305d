// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing.book;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import twinfeed.units.Ratio;
import twinfeed.units.UnitException;

/** Reads single cells strictly; what cannot be read is put on the list of refusals and comes back as null. */
final class CellReader {
    private static final Pattern NUMBER = Pattern.compile("-?\\d{1,12}(\\.\\d{1,4})?");
    private static final Pattern COMMA = Pattern.compile("[-+]?[\\d.' \\u00a0\\u202f]*\\d,\\d+");
    private static final Pattern GROUPED = Pattern.compile("[-+]?\\d{1,3}([, '\\u00a0\\u202f]\\d{3})+(\\.\\d+)?");

    private final String file;
    private final List<RowRemark> refused;

    CellReader(String file, List<RowRemark> refused) {
        this.file = file;
        this.refused = refused;
    }

    void refuse(int row, String column, String key, String... arguments) {
        refused.add(new RowRemark(file, row, column, key, List.of(arguments)));
    }

    /** A number of 0 or more with a decimal point; null for a blank cell. */
    @Nullable
    BigDecimal number(int row, String column, String cell) {
        if (cell.isEmpty()) {
            return null;
        }
        if (!NUMBER.matcher(cell).matches()) {
            refuse(row, column, notANumber(cell), cell);
            return null;
        }
        BigDecimal number = new BigDecimal(cell);
        if (number.signum() < 0) {
            refuse(row, column, "negative", cell);
            return null;
        }
        return number;
    }

    /**
     * The same, but more than 0.
     *
     * @param zero key of the refusal of 0
     */
    @Nullable
    BigDecimal positive(int row, String column, String cell, String zero) {
        BigDecimal number = number(row, column, cell);
        if (number != null && number.signum() == 0) {
            refuse(row, column, zero, cell);
            return null;
        }
        return number;
    }

    /** A whole number of 0 or more. */
    @Nullable
    Integer whole(int row, String column, String cell) {
        if (cell.isEmpty()) {
            return null;
        }
        if (!cell.matches("\\d{1,6}")) {
            refuse(row, column, "notWhole", cell);
            return null;
        }
        return Integer.valueOf(cell);
    }

    /** A ratio from 0 to a largest one, written 0.2 or 20 %. */
    @Nullable
    Ratio ratio(int row, String column, String cell, String largest) {
        if (cell.isEmpty()) {
            return null;
        }
        Ratio ratio;
        try {
            ratio = Ratio.valueOf(cell);
        } catch (UnitException none) {
            refuse(row, column, "notARatio", cell, largest);
            return null;
        }
        if (ratio.hasTolerance() || ratio.si() < 0 || ratio.si() > Double.parseDouble(largest)) {
            refuse(row, column, "ratioRange", cell, largest);
            return null;
        }
        return ratio;
    }

    /** A day, YYYY-MM-DD. */
    @Nullable
    LocalDate date(int row, String column, String cell) {
        if (cell.isEmpty()) {
            return null;
        }
        try {
            if (cell.matches("\\d{4}-\\d{2}-\\d{2}")) {
                return LocalDate.parse(cell);
            }
        } catch (DateTimeException none) {
            // No such day: refused below like every other text that is none.
        }
        refuse(row, column, "notADate", cell);
        return null;
    }

    private static String notANumber(String cell) {
        if (GROUPED.matcher(cell).matches()) {
            return "grouped";
        }
        if (COMMA.matcher(cell).matches()) {
            return "decimalComma";
        }
        return cell.matches("-?\\d+(\\.\\d+)?") ? "tooManyDigits" : "notANumber";
    }
}
