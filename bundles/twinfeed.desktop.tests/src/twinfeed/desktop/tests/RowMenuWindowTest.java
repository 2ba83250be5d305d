// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.dnd.Clipboard;
import org.eclipse.swt.dnd.TextTransfer;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.window.JobParts;
import twinfeed.model.assessment.Finding;

/** The menus over rows: opened by the keys that everybody knows, with what can be done for the chosen row. */
final class RowMenuWindowTest extends DemoWindow {
    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        chooseOffice(folder);
        openWithOneCandidate();
    }

    @AfterAll
    static void end() throws Exception {
        leave();
    }

    /** Puts the cursor into a control and presses Shift+F10; the answer is what the menu offers, with "-" before what cannot be done now. */
    private static List<String> opened(Control control) throws Exception {
        ui.takeKeys(() -> control);
        ui.key(SWT.SHIFT, SWT.F10);
        Menu menu = ui.ask(control::getMenu);
        ui.await("the menu is open", menu::isVisible);
        return ui.ask(() -> Stream.of(menu.getItems())
                .filter(item -> (item.getStyle() & SWT.SEPARATOR) == 0)
                .map(item -> (item.isEnabled() ? "" : "-") + item.getText().replace("&", ""))
                .toList());
    }

    private static void escape(Control control) throws Exception {
        ui.run(() -> control.getMenu().setVisible(false));
        ui.await("the menu is closed", () -> !control.getMenu().isVisible());
    }

    private static void choose(Control control, String text) {
        MenuItem item = ui.ask(() -> Stream.of(control.getMenu().getItems())
                .filter(each -> each.getText().replace("&", "").equals(text))
                .findFirst()
                .orElseThrow());
        ui.run(() -> Ui.send(item, SWT.Selection));
    }

    private static void select(Tree findings, String key) {
        ui.run(() -> {
            for (TreeItem group : findings.getItems()) {
                for (TreeItem item : group.getItems()) {
                    if (item.getData() instanceof Finding finding
                            && finding.getKey().equals(key)) {
                        findings.setSelection(item);
                        findings.showItem(item);
                        Ui.send(findings, SWT.Selection);
                    }
                }
            }
        });
    }

    @Test
    @Order(1)
    void findingIsExplainedAndCopiedFromItsRow() throws Exception {
        Tree findings = ui.ask(() -> ui.field(Tree.class, "findings"));
        select(findings, "pressure.static");
        List<String> offered = opened(findings);
        ui.shoot("73-menu-findings");
        escape(findings);
        assertEquals(List.of(word("working.explain"), "-" + word("completion.notice"), word("menu.copy")), offered);
        choose(findings, word("menu.copy"));
        String copied = ui.ask(() -> {
            Clipboard clipboard = new Clipboard(findings.getDisplay());
            try {
                return String.valueOf(clipboard.getContents(TextTransfer.getInstance()));
            } finally {
                clipboard.dispose();
            }
        });
        assertTrue(copied.lines().count() > 8, copied);
        ui.run(() -> findings.setSelection(findings.getItem(0)));
        List<String> ofGroup = opened(findings);
        escape(findings);
        assertTrue(ofGroup.contains("-" + word("working.explain")), "a group is no check: " + ofGroup);
    }

    @Test
    @Order(2)
    void lineOfTheQuoteIsChangedFromItsRow() throws Exception {
        Table quote = ui.ask(() -> ui.field(Table.class, "quote"));
        int line = ui.ask(() -> {
            for (int i = 0; i < quote.getItemCount(); i++) {
                if (quote.getItem(i).getText(0).startsWith("   ")) {
                    quote.setSelection(i);
                    return i;
                }
            }
            return -1;
        });
        assertTrue(line >= 0);
        List<String> offered = opened(quote);
        escape(quote);
        assertTrue(offered.contains(word("change.add")), offered.toString());
        assertTrue(offered.contains(word("menu.copy")), offered.toString());
        assertTrue(offered.contains("-" + word("change.proposal")), "nothing was changed yet: " + offered);
    }

    @Test
    @Order(3)
    void listOfTheSurveyIsChangedFromItsRow() throws Exception {
        ui.run(() -> job().survey().show(4));
        Table pipes = ui.ask(() -> ui.all(Table.class, Control::isVisible).stream()
                .filter(table -> String.valueOf(table.getData("twinfeed.field")).endsWith("water.segments"))
                .findFirst()
                .orElseThrow());
        List<String> offered = opened(pipes);
        escape(pipes);
        assertEquals(
                List.of(
                        word("list.add"),
                        word("list.remove"),
                        "-" + word("menu.up"),
                        word("menu.down"),
                        word("menu.copy")),
                offered);
        String first = ui.ask(() -> pipes.getItem(0).getText(0));
        choose(pipes, word("menu.down"));
        assertEquals(first, ui.ask(() -> pipes.getItem(1).getText(0)));
        ui.run(() -> job().undo());
        assertEquals(first, ui.ask(() -> pipes.getItem(0).getText(0)));
    }

    @Test
    @Order(4)
    void photographsAreChosenAndPastedFromTheirList() throws Exception {
        ui.run(() -> job().takePhotos(List.of()));
        Table photos = ui.ask(() -> ui.all(Table.class, Control::isVisible).stream()
                .filter(table -> String.valueOf(table.getData("twinfeed.field")).endsWith("photos"))
                .findFirst()
                .orElseThrow());
        List<String> offered = opened(photos);
        escape(photos);
        assertTrue(
                offered.stream().anyMatch(each -> each.toLowerCase(java.util.Locale.ROOT)
                        .contains("paste")),
                offered.toString());
        assertTrue(offered.contains(word("list.add")) && offered.contains(word("menu.copy")), offered.toString());
    }

    @Test
    @Order(5)
    void jobIsOpenedFromTheOfficesListAndAQuoteIsNotAcceptedThere() throws Exception {
        ui.run(() -> window.parts().showIssued());
        ui.await("jobs are listed", () -> ui.field(Table.class, "issued").getItemCount() > 2);
        Table office = ui.ask(() -> ui.field(Table.class, "issued"));
        ui.run(() -> {
            TableItem rowan = Stream.of(office.getItems())
                    .filter(item -> item.getText(0).equals("rowan-brook"))
                    .findFirst()
                    .orElseThrow();
            office.setSelection(rowan);
            Ui.send(office, SWT.Selection);
        });
        List<String> offered = opened(office);
        ui.shoot("74-menu-office");
        escape(office);
        assertFalse(offered.get(0).startsWith("-"), "a job can be opened: " + offered);
        assertTrue(offered.stream().filter(each -> each.startsWith("-")).count() >= 8, "of a quote only: " + offered);
        choose(office, offered.get(0));
        ui.await("it is open", () -> window.parts().parts().size() == 2);
    }

    @Test
    @Order(6)
    void heatersAndPricesAreCopiedAndRemovedFromTheirRow() throws Exception {
        ui.run(() -> window.parts().showHeaters());
        ui.run(() -> ((twinfeed.desktop.entry.CataloguePart)
                        window.partService().findPart(JobParts.HEATERS).getObject())
                .open(folder.resolve("heaters.catalogue")));
        window.awaitFile(JobParts.HEATERS, folder.resolve("heaters.catalogue"));
        ui.await("heaters are listed", () -> !ui.all(
                        Table.class,
                        each -> "entries".equals(each.getData("twinfeed.field"))
                                && each.isVisible()
                                && each.getItemCount() > 3)
                .isEmpty());
        Table heaters = ui.ask(() -> ui.field(Table.class, "entries"));
        int before = ui.ask(heaters::getItemCount);
        ui.run(() -> {
            heaters.setSelection(0);
            Ui.send(heaters, SWT.Selection);
        });
        List<String> offered = opened(heaters);
        escape(heaters);
        assertEquals(5, offered.size(), offered.toString());
        assertTrue(offered.stream().noneMatch(each -> each.startsWith("-")), offered.toString());
        choose(heaters, offered.get(1));
        ui.await("there is one more", () -> heaters.getItemCount() == before + 1);
        ui.shoot("75-heaters");
    }
}
