// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook.form;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import twinfeed.workbook.sheet.SheetStyles;
import twinfeed.workbook.writer.SheetWriter;
import twinfeed.workbook.writer.WorkbookWriter;

/** The words of closed lists, a column for each, on a hidden sheet: a list in a cell's own check may hold no more than 255 letters. */
final class FormLists {
    private static final String SHEET = "lists";

    private final Map<List<String>, Integer> columns = new LinkedHashMap<>();

    /** The range of a list, as a cell's check names it. */
    String range(List<String> words) {
        int at = columns.computeIfAbsent(List.copyOf(words), all -> columns.size());
        String column = CellReference.convertNumToColString(at);
        return SHEET + "!$" + column + "$1:$" + column + "$" + words.size();
    }

    /** Writes them as the last sheet. */
    void write(WorkbookWriter book) throws IOException {
        SheetWriter page = book.page(SHEET);
        List<List<String>> lists = new ArrayList<>(columns.keySet());
        int longest = lists.stream().mapToInt(List::size).max().orElse(0);
        for (int row = 0; row < longest; row++) {
            page.row();
            for (int at = 0; at < lists.size(); at++) {
                if (row < lists.get(at).size()) {
                    page.text(at, lists.get(at).get(row), SheetStyles.BODY.single());
                }
            }
        }
        book.under().setSheetHidden(book.under().getSheetIndex(SHEET), true);
    }
}
