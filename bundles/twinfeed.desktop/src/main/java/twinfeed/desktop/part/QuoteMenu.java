// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Predicate;
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
import twinfeed.desktop.look.RowMenu;
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
    void over(Control table) {
        RowMenu menu = RowMenu.over(table);
        fill((key, possible, action) -> menu.item(words.get(key), possible, action), menu::line);
        menu.copy(words);
    }

    private Menu menu(Control control) {
        Menu menu = new Menu(control);
        fill((key, possible, action) -> item(menu, key, possible, action), () -> new MenuItem(menu, SWT.SEPARATOR));
        return menu;
    }

    /** One entry of the menu, wherever it opens. */
    private interface Entry {
        void add(String key, BooleanSupplier possible, Runnable action);
    }

    private void fill(Entry menu, Runnable line) {
        menu.add("change.offer", changes::possible, changes::offer);
        menu.add("change.add", changes::possible, changes::add);
        menu.add("change.discount", changes::possible, changes::discount);
        line.run();
        menu.add("change.quantity", () -> is(changes::mayChangeQuantity), () -> onRow(changes::quantity));
        menu.add("change.remove", () -> is(changes::mayRemove), () -> onRow(changes::remove));
        menu.add("change.without", () -> is(changes::mayLeaveOut), () -> onRow(changes::without));
        line.run();
        menu.add("change.proposal", changes::any, changes::proposal);
    }

    private boolean is(Predicate<QuoteRow> may) {
        QuoteRow chosen = row.get();
        return chosen != null && may.test(chosen);
    }

    private void onRow(Consumer<QuoteRow> action) {
        QuoteRow chosen = row.get();
        if (chosen != null) {
            action.accept(chosen);
        }
    }

    private void item(Menu menu, String key, BooleanSupplier possible, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(words.get(key));
        item.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        menu.addMenuListener(MenuListener.menuShownAdapter(event -> item.setEnabled(possible.getAsBoolean())));
    }
}
