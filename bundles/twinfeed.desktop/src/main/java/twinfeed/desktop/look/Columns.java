// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.Arrays;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Item;
import org.eclipse.swt.widgets.Scrollable;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeColumn;
import org.eclipse.swt.widgets.TreeItem;

/**
 * Widths of columns by what stands in them: each as wide as its texts need, up to a limit, and one, of the names, that takes what is left.
 * Where there is too little room, other texts are shortened first, then the names; figures never are, for one that is cut reads as another.
 * Later texts can only widen a column, so that nothing jumps to and fro while somebody types; a width that a person has dragged stays.
 */
public final class Columns {
    private static final int MOST = 260;

    /** To so many letters a text that is no name may be shortened. */
    private static final int SHORTENED = 14;

    /** A column of which fewer letters can be seen at the edge is not worth looking at. */
    private static final int READABLE = 8;

    /** Width of a letter in the typeface for which the widths given are meant. */
    private static final double USUAL_LETTER = 7;

    private final Scrollable table;
    private final int flexible;
    private final int least;
    private final int seen;
    private int whole = -1;
    private int counted = -1;
    private int counts;
    private int natural;
    private int rowsBefore = -1;
    private int[] wanted = {};
    private int[] given = {};

    private Columns(Scrollable table, int flexible, int least, int seen) {
        this.table = table;
        this.flexible = flexible;
        this.least = least;
        this.seen = seen;
        table.addListener(SWT.Resize, event -> spread());
        FullTexts.of(table);
        Ellipses.of(table, true);
    }

    /**
     * For a table or a tree whose columns are there.
     *
     * @param flexible number of the column that takes what is left
     * @param least its least width in letters of the usual size, in pixels
     * @param seen how many of the first columns are to be seen without scrolling, as long as there is room for that
     */
    public static Columns of(Scrollable table, int flexible, int least, int seen) {
        return new Columns(table, flexible, least, seen);
    }

    /** A column that is never shortened, because its answers begin alike. */
    public Columns whole(int column) {
        whole = column;
        return this;
    }

    /** A column of a tree in which the rows of groups count what is below them: a count that is cut reads as another one. */
    public Columns counted(int column) {
        counted = column;
        return this;
    }

    /** How wide the counts are. */
    private int counts() {
        if (counted < 0 || !(table instanceof Tree tree)) {
            return 0;
        }
        GC gc = new GC(table);
        try {
            int widest = 0;
            for (TreeItem group : tree.getItems()) {
                gc.setFont(group.getFont(counted));
                widest = Math.max(widest, gc.textExtent(group.getText(counted)).x);
            }
            return widest == 0 ? 0 : widest + letters(2);
        } finally {
            gc.dispose();
        }
    }

    /** Only the ellipses and tooltips, for a table whose widths are looked after elsewhere. */
    public static void shortened(Scrollable table) {
        FullTexts.of(table);
        Ellipses.of(table, true);
    }

    /** Makes a column of a shortened table as wide as its texts. */
    public static void pack(TableColumn column) {
        Ellipses.of(column.getParent(), false);
        column.pack();
        Ellipses.of(column.getParent(), true);
    }

    private Item[] items() {
        return table instanceof Tree tree ? tree.getColumns() : ((Table) table).getColumns();
    }

    private int letters(double count) {
        GC gc = new GC(table);
        try {
            return (int) Math.round(count * gc.getFontMetrics().getAverageCharacterWidth());
        } finally {
            gc.dispose();
        }
    }

    /** Fits the columns to what stands in them now. */
    public void fit() {
        Item[] columns = items();
        notice(columns);
        int[] wantedBefore = wanted.clone();
        int naturalBefore = natural;
        int most = Math.max(MOST, letters(MOST / USUAL_LETTER));
        Ellipses.of(table, false);
        for (int i = 0; i < columns.length; i++) {
            packed(columns[i]);
            if (i == flexible) {
                natural = Math.max(natural, width(columns[i]));
            } else {
                wanted[i] = Math.max(wanted[i], Math.min(most, width(columns[i])));
            }
        }
        Ellipses.of(table, true);
        counts = counts();
        boolean same = natural == naturalBefore && Arrays.equals(wanted, wantedBefore) && rows() == rowsBefore;
        if (same) {
            // Asking for the room lays everything out at once and waits for the screen.
            set(columns, given.clone());
        } else {
            rowsBefore = rows();
            spread();
        }
    }

    private int rows() {
        return table instanceof Tree tree ? tree.getItemCount() : ((Table) table).getItemCount();
    }

    /** Takes over what a person has dragged; before the first fit, what the columns were given. */
    private void notice(Item[] columns) {
        boolean first = given.length != columns.length;
        if (first) {
            wanted = new int[columns.length];
            given = new int[columns.length];
        }
        for (int i = 0; !first && i < columns.length; i++) {
            if (width(columns[i]) != given[i]) {
                wanted[i] = width(columns[i]);
            }
        }
    }

    private void spread() {
        Item[] columns = items();
        if (given.length != columns.length) {
            wanted = new int[columns.length];
            given = new int[columns.length];
            for (int i = 0; i < columns.length; i++) {
                wanted[i] = width(columns[i]);
            }
        }
        int room = table.getClientArea().width;
        int[] widths = wanted.clone();
        shorten(columns, widths, Math.max(natural, least) + sum(widths, seen) - room);
        int forNames = room - sum(widths, seen);
        int left = Math.max(room - sum(widths, columns.length), Math.min(natural, forNames));
        boolean fitsWhole = left == room - sum(widths, columns.length);
        if (!fitsWhole && forNames - left < letters(READABLE)) {
            // A sliver of the next column at the edge would say nothing.
            left = forNames;
        }
        widths[flexible] = Math.max(Math.max(least, letters(least / USUAL_LETTER)), left);
        set(columns, widths);
    }

    private void set(Item[] columns, int[] widths) {
        for (int i = 0; i < columns.length; i++) {
            width(columns[i], widths[i]);
            given[i] = width(columns[i]);
        }
    }

    private int sum(int[] widths, int count) {
        int sum = 0;
        for (int i = 0; i < Math.min(count, widths.length); i++) {
            sum += i == flexible ? 0 : widths[i];
        }
        return sum;
    }

    /** Takes from the texts among the columns that are to be seen what is lacking, from each in proportion to what it can spare. */
    private void shorten(Item[] columns, int[] widths, int lacking) {
        int spare = 0;
        for (int i = 0; i < Math.min(seen, widths.length); i++) {
            spare += spare(columns[i], i, widths[i]);
        }
        double share = spare == 0 ? 0 : Math.min(1, (double) Math.max(0, lacking) / spare);
        for (int i = 0; i < Math.min(seen, widths.length); i++) {
            widths[i] -= (int) Math.ceil(share * spare(columns[i], i, widths[i]));
        }
    }

    private int spare(Item column, int number, int width) {
        boolean stays = number == flexible || number == whole || figures(column);
        // A head is bold, and has room at both sides.
        int head = letters(1.3 * column.getText().length() + 2);
        int kept = Math.max(Math.max(letters(SHORTENED), head), number == counted ? counts : 0);
        return stays ? 0 : Math.max(0, width - kept);
    }

    private static boolean figures(Item column) {
        return (column instanceof TreeColumn tree ? tree.getAlignment() : ((TableColumn) column).getAlignment())
                == SWT.RIGHT;
    }

    private static void packed(Item column) {
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
