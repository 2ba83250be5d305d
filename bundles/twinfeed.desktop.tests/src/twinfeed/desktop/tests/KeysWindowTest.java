// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.e4.core.commands.ECommandService;
import org.eclipse.e4.core.commands.EHandlerService;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;

/** The page of keys, and the copying of lists. */
final class KeysWindowTest extends DemoWindow {
    @BeforeAll
    static void start() throws Exception {
        copyDemo();
        window.open(folder);
        window.settled();
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    @Test
    @Order(1)
    void everyBoundKeyIsListedWithWhatItDoes() throws Exception {
        ui.run(() -> ui.shell().getDisplay().asyncExec(() -> {
            var context = window.context().getActiveLeaf();
            var command = context.get(ECommandService.class).createCommand("twinfeed.desktop.command.keys", null);
            context.get(EHandlerService.class).executeHandler(command);
        }));
        ui.await("the keys are shown", () -> !ui.all(
                        Table.class, table -> table.isVisible() && "keys".equals(table.getData("twinfeed.field")))
                .isEmpty());
        List<String> lines =
                ui.ask(() -> Stream.of(ui.field(Table.class, "keys").getItems())
                        .map(item -> item.getText(0) + ": " + item.getText(1))
                        .toList());
        ui.shoot("84-keys");
        ui.run(() -> ui.field(Table.class, "keys").getShell().close());
        assertTrue(lines.size() > 20, "keys: " + lines);
        assertTrue(lines.contains("Ctrl+S: Save"), lines.toString());
        assertTrue(lines.contains("F8: Next reading needed"), lines.toString());
        assertTrue(lines.stream().noneMatch(line -> line.startsWith(":") || line.endsWith(": ")), lines.toString());
    }

    @Test
    @Order(2)
    void listIsCopiedAsSpreadsheetsTakeIt() {
        String text = ui.ask(() -> {
            Table options = ui.field(Table.class, "options");
            Event copy = new Event();
            copy.stateMask = SWT.MOD1;
            copy.keyCode = 'c';
            options.notifyListeners(SWT.KeyDown, copy);
            Clipboard clipboard = new Clipboard(options.getDisplay());
            Object content = clipboard.getContents(TextTransfer.getInstance());
            clipboard.dispose();
            return String.valueOf(content);
        });
        Table options = ui.ask(() -> ui.field(Table.class, "options"));
        List<String> rows = text.lines().toList();
        assertEquals(ui.ask(options::getItemCount) + 1, rows.size(), text);
        int columns = ui.ask(options::getColumnCount);
        assertTrue(rows.stream().allMatch(row -> row.split("\t", -1).length == columns), text);
        assertTrue(rows.get(0).startsWith("Heater\tVerdict"), text);
        assertTrue(rows.get(1).startsWith(ui.ask(() -> options.getItem(0).getText(0))), text);
    }
}
