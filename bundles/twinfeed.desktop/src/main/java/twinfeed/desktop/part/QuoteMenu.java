// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.List;
import java.util.function.Supplier;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.MenuListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.QuoteRow;

/** What can be changed of the quote by hand: the menu of a key, and of the quote itself. */
final class QuoteMenu {
    private final Words words;
    private final QuoteChanges changes;
    private final Supplier<@Nullable QuoteRow> row;

    /**
     * For one quote.
     *
     * @param row the row that is chosen; null if none is
     */
    QuoteMenu(Words words, QuoteChanges changes, Supplier<@Nullable QuoteRow> row) {
        this.words = words;
        this.changes = changes;
        this.row = row;
    }

    /** Opens under a key. */
    void under(Button button) {
        Menu menu = menu(button);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            Point corner = button.toDisplay(0, button.getSize().y);
            menu.setLocation(corner);
            menu.setVisible(true);
        }));
    }

    /** Opens over the quote, by the mouse's other key or the key for menus. */
    void over(Control control) {
        control.setMenu(menu(control));
    }

    private Menu menu(Control control) {
        Menu menu = new Menu(control);
        MenuItem offer = item(menu, "change.offer", changes::offer);
        MenuItem add = item(menu, "change.add", changes::add);
        MenuItem discount = item(menu, "change.discount", changes::discount);
        new MenuItem(menu, SWT.SEPARATOR);
        MenuItem quantity = item(menu, "change.quantity", () -> onRow(changes::quantity));
        MenuItem remove = item(menu, "change.remove", () -> onRow(changes::remove));
        MenuItem without = item(menu, "change.without", () -> onRow(changes::without));
        new MenuItem(menu, SWT.SEPARATOR);
        MenuItem undo = item(menu, "change.proposal", changes::proposal);
        menu.addMenuListener(MenuListener.menuShownAdapter(event -> {
            QuoteRow chosen = row.get();
            List.of(offer, add, discount).forEach(each -> each.setEnabled(changes.possible()));
            quantity.setEnabled(chosen != null && changes.mayChangeQuantity(chosen));
            remove.setEnabled(chosen != null && changes.mayRemove(chosen));
            without.setEnabled(chosen != null && changes.mayLeaveOut(chosen));
            undo.setEnabled(changes.any());
        }));
        return menu;
    }

    private void onRow(java.util.function.Consumer<QuoteRow> action) {
        QuoteRow chosen = row.get();
        if (chosen != null) {
            action.accept(chosen);
        }
    }

    private MenuItem item(Menu menu, String key, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(words.get(key));
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return item;
    }
}
