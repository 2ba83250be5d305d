// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.dnd.Transfer;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Scrollable;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;

/**
 * Copies the rows of a table or tree by the key for copying, cells parted by tabs, as spreadsheets take them: all rows with the names of
 * the columns while one is selected, else those that are selected. Of rows that can be ticked the tick stands in a cell before the others.
 */
final class TableCopy {
    private final Scrollable table;

    private TableCopy(Scrollable table) {
        this.table = table;
    }

    static void of(Scrollable table) {
        TableCopy copy = new TableCopy(table);
        table.addListener(SWT.KeyDown, copy::press);
    }

    private void press(Event event) {
        if (event.stateMask == SWT.MOD1 && (event.keyCode == 'c' || event.keyCode == 'C')) {
            event.doit = !copy();
        }
    }

    /** Copies at once; the answer is whether there was something to copy. */
    static boolean copy(Scrollable table) {
        return new TableCopy(table).copy();
    }

    private boolean copy() {
        String text = text();
        if (text.isEmpty()) {
            return false;
        }
        Clipboard clipboard = new Clipboard(table.getDisplay());
        clipboard.setContents(new Object[] {text}, new Transfer[] {TextTransfer.getInstance()});
        clipboard.dispose();
        return true;
    }

    private String text() {
        List<String> rows = new ArrayList<>();
        if (table instanceof Table list) {
            int columns = Math.max(1, list.getColumnCount());
            TableItem[] chosen = list.getSelectionCount() > 1 ? list.getSelection() : list.getItems();
            boolean ticked = (list.getStyle() & SWT.CHECK) != 0;
            if (list.getSelectionCount() <= 1 && list.getColumnCount() > 0) {
                rows.add((ticked ? "\t" : "")
                        + row(columns, column -> list.getColumn(column).getText()));
            }
            for (TableItem item : chosen) {
                String tick = item.getChecked() ? "\u2713\t" : "\t";
                rows.add((ticked ? tick : "") + row(columns, item::getText));
            }
        } else if (table instanceof Tree tree) {
            int columns = Math.max(1, tree.getColumnCount());
            if (tree.getSelectionCount() <= 1 && tree.getColumnCount() > 0) {
                rows.add(row(columns, column -> tree.getColumn(column).getText()));
            }
            for (TreeItem item : tree.getSelectionCount() > 1 ? tree.getSelection() : tree.getItems()) {
                add(item, columns, rows, tree.getSelectionCount() <= 1);
            }
        }
        return String.join("\n", rows);
    }

    private static void add(TreeItem item, int columns, List<String> rows, boolean below) {
        rows.add(row(columns, item::getText));
        if (below) {
            Arrays.stream(item.getItems()).forEach(child -> add(child, columns, rows, true));
        }
    }

    private static String row(int columns, java.util.function.IntFunction<String> cell) {
        return IntStream.range(0, columns)
                .mapToObj(cell)
                .map(text -> text.replaceAll("[\\t\\r\\n]+", " "))
                .collect(Collectors.joining("\t"));
    }
}
