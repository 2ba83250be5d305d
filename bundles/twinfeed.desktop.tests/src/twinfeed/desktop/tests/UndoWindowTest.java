// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** Undo and redo go to what they change: its page, its row, its field. */
final class UndoWindowTest extends DemoWindow {
    private static final String PIPES = "survey.water.segments";

    /** Numbers of the pages that are used. */
    private static final int CUSTOMER = 0;

    private static final int PIPES_PAGE = 4;

    @BeforeAll
    static void start() throws Exception {
        copyDemo();
        openWithOneCandidate();
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    private static void show(int page) {
        ui.run(() -> job().survey().show(page));
    }

    private static void choose(int row) {
        ui.run(() -> {
            Table table = ui.field(Table.class, PIPES);
            table.setSelection(row);
            Ui.send(table, SWT.Selection);
        });
    }

    /** The key below the list of pipes, which stands on its page before the list of taps. */
    private static void press(String key) {
        ui.run(() -> Ui.send(
                ui.all(
                                Button.class,
                                button -> button.isVisible()
                                        && button.getText().replace("&", "").equals(word(key)))
                        .get(0),
                SWT.Selection));
    }

    private static List<String> names() {
        return ui.ask(() -> {
            List<String> names = new ArrayList<>();
            for (TableItem item : ui.field(Table.class, PIPES).getItems()) {
                names.add(item.getText(0));
            }
            return names;
        });
    }

    /** The row that is chosen, and whether the fields below the list are its own. */
    private static String chosen() {
        return ui.ask(() -> {
            TableItem[] rows = ui.field(Table.class, PIPES).getSelection();
            String name = rows.length == 1 ? rows[0].getText(0) : "";
            assertFalse(
                    ui.all(
                                    Text.class,
                                    text -> text.isVisible()
                                            && (PIPES + "[" + name + "].length").equals(text.getData("twinfeed.field")))
                            .isEmpty(),
                    "fields of " + name);
            return name;
        });
    }

    @Test
    @Order(1)
    void rowThatIsBackIsShownAndChosen() {
        show(PIPES_PAGE);
        List<String> all = names();
        assertEquals(3, all.size());
        choose(1);
        press("list.remove");
        assertEquals(List.of(all.get(0), all.get(2)), names());
        assertEquals(all.get(2), chosen(), "the one that has taken its place");
        show(CUSTOMER);
        ui.run(() -> job().undo());
        assertEquals(PIPES_PAGE, ui.ask(() -> job().survey().shown()));
        assertEquals(all.get(1), chosen());
        show(CUSTOMER);
        ui.run(() -> job().redo());
        assertEquals(PIPES_PAGE, ui.ask(() -> job().survey().shown()));
        assertEquals(all.get(2), chosen());
        ui.run(() -> job().undo());
    }

    @Test
    @Order(2)
    void rowThatIsGoneIsNotChosenAnyMore() {
        List<String> all = names();
        press("list.add");
        assertEquals(4, names().size());
        show(CUSTOMER);
        ui.run(() -> job().undo());
        assertEquals(PIPES_PAGE, ui.ask(() -> job().survey().shown()));
        assertEquals(all, names());
        assertEquals(all.get(2), chosen());
    }

    @Test
    @Order(3)
    void valueIsShownInItsRow() {
        String length = PIPES + "[" + names().get(0) + "].length";
        choose(0);
        String before = ui.ask(() -> ui.field(Text.class, length).getText());
        ui.type(length, "9 m", SWT.DefaultSelection);
        choose(2);
        show(CUSTOMER);
        ui.run(() -> job().undo());
        assertEquals(names().get(0), chosen());
        assertEquals(before, ui.ask(() -> ui.field(Text.class, length).getText()));
    }
}
