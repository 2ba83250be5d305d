// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.read;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.xssf.model.SharedStrings;
import org.apache.poi.xssf.model.StylesTable;
import org.apache.poi.xssf.usermodel.XSSFCellStyle;

/** Turns the raw value of a cell into text, the same in every language. */
final class CellText {
    /** The zeros that a number format always shows behind the point. */
    private static final Pattern DECIMALS = Pattern.compile("^0\\.(0+)(?![0-9E%])");

    private static final LocalDate DAY_ZERO = LocalDate.of(1899, 12, 30);
    private static final LocalDate DAY_ZERO_1904 = LocalDate.of(1904, 1, 1);

    private final SharedStrings strings;
    private final StylesTable styles;
    private final boolean from1904;
    private final SheetReader.Place place;
    private final boolean asShown;

    /**
     * Of one book.
     *
     * @param asShown whether a number keeps the decimals that its cell shows, zeros at its end included
     */
    CellText(SharedStrings strings, StylesTable styles, boolean from1904, SheetReader.Place place, boolean asShown) {
        this.strings = strings;
        this.styles = styles;
        this.from1904 = from1904;
        this.place = place;
        this.asShown = asShown;
    }

    /**
     * The text of a cell.
     *
     * @param type its type as the file has it
     * @param style number of its style, negative for none
     * @param raw its value as the file has it
     * @param cell its address, for messages
     */
    String of(String type, int style, String raw, String cell) {
        return switch (type) {
            case "s" -> shared(raw, cell);
            case "str", "inlineStr" -> raw;
            case "b" -> raw.equals("1") ? "true" : "false";
            case "e" -> throw place.refuse("errorCell", cell);
            case "d" -> raw.length() >= 10 ? raw.substring(0, 10) : raw;
            default -> number(style, raw, cell);
        };
    }

    private String shared(String raw, String cell) {
        try {
            int index = Integer.parseInt(raw.strip());
            if (index >= 0 && index < strings.getUniqueCount()) {
                return strings.getItemAt(index).getString();
            }
        } catch (NumberFormatException damaged) {
            // Refused below like every other number that is none.
        }
        throw place.refuse("damagedCell", cell);
    }

    private String number(int style, String raw, String cell) {
        if (raw.isBlank()) {
            return "";
        }
        try {
            double value = Double.parseDouble(raw.strip());
            return isDate(style) ? day(value, cell) : asShown ? shown(value, style) : plain(value);
        } catch (NumberFormatException damaged) {
            throw place.refuse("damagedCell", cell);
        }
    }

    private String shown(double value, int style) {
        BigDecimal number = new BigDecimal(plain(value));
        Matcher zeros = style < 0 || style >= styles.getNumCellStyles()
                ? DECIMALS.matcher("")
                : DECIMALS.matcher(String.valueOf(styles.getStyleAt(style).getDataFormatString()));
        return zeros.find() && zeros.group(1).length() > number.scale()
                ? number.setScale(zeros.group(1).length()).toPlainString()
                : number.toPlainString();
    }

    /** The shortest decimal that denotes the number: files carry 6.155 as 6.1550000000000002. */
    private static String plain(double value) {
        return BigDecimal.valueOf(value)
                .add(BigDecimal.ZERO)
                .stripTrailingZeros()
                .toPlainString();
    }

    private boolean isDate(int style) {
        if (style < 0 || style >= styles.getNumCellStyles()) {
            return false;
        }
        XSSFCellStyle found = styles.getStyleAt(style);
        return DateUtil.isADateFormat(found.getDataFormat(), found.getDataFormatString());
    }

    private String day(double value, String cell) {
        try {
            return (from1904 ? DAY_ZERO_1904 : DAY_ZERO)
                    .plusDays((long) Math.floor(value))
                    .toString();
        } catch (DateTimeException impossible) {
            throw place.refuse("damagedCell", cell);
        }
    }
}
