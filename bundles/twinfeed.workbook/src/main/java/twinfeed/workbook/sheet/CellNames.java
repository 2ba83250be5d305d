// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.sheet;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import twinfeed.workbook.writer.WorkbookWriter;

/**
 * Names of cells. They begin with {@code v_}, because R1 and T1 are addresses; spreadsheets do not tell capitals from small letters
 * in names, so a name that differs only by them gets a number.
 */
public final class CellNames {
    private final WorkbookWriter book;
    private final Set<String> taken = new HashSet<>();

    public CellNames(WorkbookWriter book) {
        this.book = book;
    }

    /**
     * Names a cell.
     *
     * @param wanted name wanted; letters, digits and underscores are kept, everything else becomes an underscore
     * @param address address with sheet
     * @return the name given
     */
    public String add(String wanted, String address) {
        String plain = plain(wanted);
        String name = plain;
        for (int number = 2; !taken.add(name.toLowerCase(Locale.ROOT)); number++) {
            name = plain + "_" + number;
        }
        book.name(name, address);
        return name;
    }

    private static String plain(String wanted) {
        StringBuilder plain = new StringBuilder(wanted);
        for (int at = 0; at < plain.length(); at++) {
            if (!Character.isLetterOrDigit(plain.charAt(at))) {
                plain.setCharAt(at, '_');
            }
        }
        return plain.length() > 200 ? plain.substring(0, 200) : plain.toString();
    }
}
