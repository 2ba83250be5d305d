// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Scrollable;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;

/**
 * Widths of columns by what stands in them: each as wide as its texts need, up to a limit, and one that takes what is left.
 * Later texts can only widen a column, so that nothing jumps to and fro while somebody types.
 */
public final class Columns {
    private static final int MOST = 260;

    private final Scrollable table;
    private final int flexible;
    private final int least;
    private final int seen;
    private int natural;
    private boolean fitted;

    private Columns(Scrollable table, int flexible, int least, int seen) {
        this.table = table;
        this.flexible = flexible;
        this.least = least;
        this.seen = seen;
        table.addListener(SWT.Resize, event -> spread());
        FullTexts.of(table);
        TableCopy.of(table);
    }

    /**
     * For a table or a tree whose columns are there.
     *
     * @param flexible number of the column that takes what is left
     * @param least its least width
     * @param seen how many of the first columns are to be seen without scrolling, as long as there is room for that
     */
    public static Columns of(Scrollable table, int flexible, int least, int seen) {
        return new Columns(table, flexible, least, seen);
    }

    private Item[] items() {
        return table instanceof Tree tree ? tree.getColumns() : ((Table) table).getColumns();
    }

    /** Fits the columns to what stands in them now. */
    public void fit() {
        Item[] columns = items();
        for (int i = 0; i < columns.length; i++) {
            int before = fitted && i != flexible ? width(columns[i]) : 0;
            pack(columns[i]);
            if (i == flexible) {
                natural = Math.max(natural, width(columns[i]));
            } else {
                width(columns[i], Math.max(before, Math.min(MOST, width(columns[i]))));
            }
        }
        fitted = true;
        spread();
    }

    private void spread() {
        Item[] columns = items();
        int others = 0;
        int toBeSeen = 0;
        for (int i = 0; i < columns.length; i++) {
            int width = i == flexible ? 0 : width(columns[i]);
            others += width;
            toBeSeen += i < seen ? width : 0;
        }
        int room = table.getClientArea().width;
        int wanted = Math.max(room - others, Math.min(natural, room - toBeSeen));
        width(columns[flexible], Math.max(least, wanted));
    }

    private static void pack(Item column) {
        if (column instanceof TreeColumn tree) {
            tree.pack();
        } else {
            ((TableColumn) column).pack();
        }
    }

    private static int width(Item column) {
        return column instanceof TreeColumn tree ? tree.getWidth() : ((TableColumn) column).getWidth();
    }

    private static void width(Item column, int width) {
        if (column instanceof TreeColumn tree) {
            tree.setWidth(width);
        } else {
            ((TableColumn) column).setWidth(width);
        }
    }
}
