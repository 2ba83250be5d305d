// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Font;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.jspecify.annotations.Nullable;

/** Shows the whole text of a cell under the pointer where its column is too narrow for it. */
final class FullTexts {
    /** Room at both sides of a cell's text. */
    private static final int MARGIN = 8;

    private final Control control;
    private @Nullable String otherwise;
    private @Nullable String shown;

    private FullTexts(Control control) {
        this.control = control;
        this.otherwise = control.getToolTipText();
        this.shown = otherwise;
    }

    /** Of a table or tree. */
    static void of(Control control) {
        FullTexts texts = new FullTexts(control);
        control.addListener(SWT.MouseMove, event -> texts.point(new Point(event.x, event.y)));
    }

    private void point(Point at) {
        @Nullable String text = control instanceof Table table ? cut(table, at) : cut((Tree) control, at);
        @Nullable String present = control.getToolTipText();
        if (!java.util.Objects.equals(present, shown)) {
            // Somebody has something else to say of the whole meanwhile.
            otherwise = present;
        }
        @Nullable String tip = text == null ? otherwise : text.replace("&", "&&");
        shown = tip;
        if (!java.util.Objects.equals(tip, present)) {
            control.setToolTipText(tip);
        }
    }

    private @Nullable String cut(Table table, Point at) {
        @Nullable TableItem item = table.getItem(at);
        for (int i = 0; item != null && i < table.getColumnCount(); i++) {
            if (item.getBounds(i).contains(at)) {
                return cut(item.getText(i), item.getTextBounds(i), item.getFont(i));
            }
        }
        return null;
    }

    private @Nullable String cut(Tree tree, Point at) {
        @Nullable TreeItem item = tree.getItem(at);
        for (int i = 0; item != null && i < tree.getColumnCount(); i++) {
            Rectangle cell = item.getBounds(i);
            if (at.x >= cell.x && at.x < cell.x + cell.width) {
                return cut(item.getText(i), cell, item.getFont(i));
            }
        }
        return null;
    }

    private @Nullable String cut(String text, Rectangle cell, Font font) {
        GC gc = new GC(control);
        gc.setFont(font);
        int width = gc.textExtent(text).x;
        gc.dispose();
        return width + MARGIN > cell.width ? text : null;
    }
}
