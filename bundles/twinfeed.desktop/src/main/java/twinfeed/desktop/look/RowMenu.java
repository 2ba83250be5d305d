// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MenuListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Scrollable;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Tree;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Words;

/**
 * The menu over the rows of a table or tree: what can be done with the chosen row, and copying. It opens by the mouse's other key, by the
 * key for menus and by Shift+F10; by a key it opens under the chosen row and not at the pointer.
 */
public final class RowMenu {
    private final Control control;
    private final Menu menu;
    private final List<Runnable> looks = new ArrayList<>();

    private RowMenu(Control control) {
        this.control = control;
        this.menu = new Menu(control);
        menu.addMenuListener(MenuListener.menuShownAdapter(event -> looks.forEach(Runnable::run)));
        control.setMenu(menu);
        control.addListener(SWT.MenuDetect, this::place);
    }

    /** An empty one over a control. */
    public static RowMenu over(Control control) {
        return new RowMenu(control);
    }

    /** Adds what can be done now and then. */
    public RowMenu item(String text, BooleanSupplier possible, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        looks.add(() -> item.setEnabled(possible.getAsBoolean()));
        return this;
    }

    /** Adds what a key beside the list does; possible when the key is. */
    public RowMenu button(Button button) {
        return button(button, button::getText);
    }

    /** The same under another name, for a key that bears a sign only. */
    public RowMenu button(Button button, Supplier<String> name) {
        return item(
                name.get(),
                () -> button.isEnabled() && button.getVisible(),
                () -> button.notifyListeners(SWT.Selection, new Event()));
    }

    /** Adds a line between items. */
    public RowMenu line() {
        new MenuItem(menu, SWT.SEPARATOR);
        return this;
    }

    /** Adds that the rows are copied, and the key for copying; the last item of the menu of every table. */
    public RowMenu copy(Words words) {
        if (menu.getItemCount() > 0) {
            line();
        }
        Scrollable rows = (Scrollable) control;
        TableCopy.of(rows);
        return item(words.get("menu.copy"), () -> count() > 0, () -> TableCopy.copy(rows));
    }

    private int count() {
        return control instanceof Table table ? table.getItemCount() : ((Tree) control).getItemCount();
    }

    private void place(Event event) {
        if (event.detail == SWT.MENU_KEYBOARD) {
            Rectangle row = row();
            Point at = control.toDisplay(row.x + Math.min(row.width, 24), row.y + row.height);
            event.x = at.x;
            event.y = at.y;
        }
    }

    private Rectangle row() {
        @Nullable Rectangle chosen = null;
        if (control instanceof Table table && table.getSelectionCount() > 0) {
            chosen = table.getSelection()[0].getBounds(0);
        } else if (control instanceof Tree tree && tree.getSelectionCount() > 0) {
            chosen = tree.getSelection()[0].getBounds(0);
        }
        return chosen == null ? new Rectangle(0, 0, control.getSize().x, control.getSize().y) : chosen;
    }
}
