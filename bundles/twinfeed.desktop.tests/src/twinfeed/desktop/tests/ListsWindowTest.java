// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.entry.CataloguePart;
import twinfeed.desktop.entry.PriceBookPart;
import twinfeed.desktop.window.JobParts;
import twinfeed.model.io.CatalogueFile;

/** Price book and heater catalogue, changed entry by entry. */
final class ListsWindowTest extends DemoWindow {
    private static Path book;

    @BeforeAll
    static void openBook() throws Exception {
        copyDemo();
        book = folder.resolve("prices.csv");
        ui.run(() -> window.parts().showPrices());
        ui.run(() -> prices().open(book));
        window.awaitFile(JobParts.PRICES, book);
        ui.await("the book is open", () -> tables() == 1 && table().getItemCount() > 50);
        ui.await("it was looked at", () -> lacking().contains("codes that this book lacks"));
    }

    @AfterAll
    static void end() {
        ui.run(() -> List.of(JobParts.PRICES, JobParts.HEATERS)
                .forEach(each -> part(each).setDirty(false)));
    }

    private static MPart part(String id) {
        return window.partService().findPart(id);
    }

    private static PriceBookPart prices() {
        return (PriceBookPart) part(JobParts.PRICES).getObject();
    }

    private static CataloguePart heaters() {
        return (CataloguePart) part(JobParts.HEATERS).getObject();
    }

    private static int tables() {
        return ui.all(Table.class, each -> each.isVisible() && "entries".equals(each.getData("twinfeed.field")))
                .size();
    }

    private static Table table() {
        return ui.field(Table.class, "entries");
    }

    private static String lacking() {
        return ui
                .all(Label.class, each -> each.isVisible() && "entry.lacking".equals(each.getData("twinfeed.field")))
                .stream()
                .map(Label::getText)
                .findFirst()
                .orElse("");
    }

    private static void press(String field) {
        ui.run(() -> Ui.send(ui.field(Button.class, field), SWT.Selection));
    }

    private static void search(String text) {
        ui.run(() -> ui.field(Text.class, "entry.search").setText(text));
    }

    private static void choose(int index) {
        ui.run(() -> {
            table().setSelection(index);
            Ui.send(table(), SWT.Selection);
        });
    }

    private static void type(String field, String text) {
        ui.run(() -> {
            Text entry = ui.field(Text.class, "entry." + field);
            entry.setText(text);
            Ui.send(entry, SWT.FocusOut);
        });
    }

    private static String typed(String field) {
        return ui.ask(() -> ui.field(Text.class, "entry." + field).getText());
    }

    private static boolean said(String part) {
        return ui.all(Label.class, Label::isVisible).stream()
                .anyMatch(label -> label.getText().contains(part));
    }

    @Test
    @Order(1)
    void priceIsFoundAndChanged() {
        search("cable-10");
        assertEquals(1, ui.ask(() -> table().getItemCount()));
        choose(0);
        assertEquals("cable-10", typed("code"));
        type("price", "twelve");
        assertTrue(ui.ask(() -> said("\"twelve\" is not a number")), "said at the value");
        assertFalse(part(JobParts.PRICES).isDirty(), "and not taken");
        type("price", "7.35");
        assertEquals("7.35", typed("price"));
        assertEquals("7.35", ui.ask(() -> table().getItem(0).getText(3)));
        assertTrue(ui.ask(() -> part(JobParts.PRICES).isDirty()));
        ui.shoot("57-price-book");
    }

    @Test
    @Order(0)
    void headOfTheListIsChanged() {
        press("entry.head");
        type("labourRate", "61.50");
        assertEquals("61.50", typed("labourRate"));
        ui.shoot("57d-head-of-the-list");
        ui.run(() -> prices().undo());
        assertEquals("54.00", typed("labourRate"));
        search("cable-10");
        choose(0);
    }

    @Test
    @Order(2)
    void whatIsWrongIsSaidAtTheValueAndKeepsItFromBeingSaved() throws Exception {
        type("unit", "");
        ui.await("it is said", () -> said("the cell is blank"));
        ui.await("the line is marked", () -> table().getItem(0).getText(6).contains("wrong"));
        byte[] before = Files.readAllBytes(book);
        assertFalse(ui.ask(() -> prices().save()));
        assertTrue(ui.ask(() -> said(begin("save.refused"))));
        assertEquals(-1, java.util.Arrays.mismatch(before, Files.readAllBytes(book)));
        ui.shoot("57a-price-book-wrong");
        ui.run(() -> prices().undo());
        ui.await("it is right again", () -> !table().getItem(0).getText(6).contains("wrong"));
        assertEquals("m", typed("unit"));
    }

    @Test
    @Order(3)
    void priceOutOfDateIsMarkedAndSaved() throws Exception {
        press("entry.old");
        assertTrue(ui.ask(() -> table().getItem(0).getText(6)).contains("out of date"));
        assertTrue(ui.ask(() -> prices().save()));
        String line = Files.readAllLines(book).stream()
                .filter(each -> each.startsWith("cable-10,"))
                .findFirst()
                .orElseThrow();
        assertTrue(line.contains(",7.35,") && line.matches(".*,\\d{4}-\\d{2}-\\d{2}"), line);
        assertTrue(Files.readString(book).startsWith("## "), "remarks for people stay");
        press("entry.old");
        assertEquals("", typed("holdsUntil"));
    }

    @Test
    @Order(4)
    void lackingCodesAreAddedInOneStepEach() throws Exception {
        search("");
        int before = ui.ask(() -> table().getItemCount());
        press("entry.lacking.add");
        ui.await("nothing is lacking", () -> lacking().isEmpty());
        assertTrue(ui.ask(() -> table().getItemCount()) > before);
        ui.shoot("57b-lacking-added");
    }

    @Test
    @Order(5)
    void listIsTakenOverAfterItsReport() throws Exception {
        Path list = folder.resolve("new-prices.csv");
        Files.writeString(list, Files.readString(book).replaceFirst("(?m)^cable-16,.*\\R", ""));
        ui.run(() -> prices().importFrom(list));
        ui.await("the report is shown", () -> report() != null);
        ui.shoot("57c-import");
        List<String> kinds = ui.ask(
                () -> Stream.of(ui.field(Table.class, "entry.import.rows").getItems())
                        .map(item -> item.getText(0) + " " + item.getText(1))
                        .toList());
        assertTrue(kinds.contains("\u2212 " + WORDS.get("entry.import.kind.removed") + " cable-16"), kinds.toString());
        ui.run(() -> Ui.send(
                ui.all(
                                Button.class,
                                each -> each.getShell() == report()
                                        && each.getText().equals(WORDS.get("entry.import.do")))
                        .get(0),
                SWT.Selection));
        search("cable-16");
        ui.await("it is gone", () -> table().getItemCount() == 0);
        ui.run(() -> prices().undo());
        ui.await("it is back", () -> table().getItemCount() == 1);
    }

    private static Shell report() {
        return ui.all(Shell.class, shell -> shell.getText().equals(WORDS.get("entry.import.title"))).stream()
                .findFirst()
                .orElse(null);
    }

    @Test
    @Order(6)
    void heaterIsAddedAndWithdrawn() throws Exception {
        ui.run(() -> window.parts().showHeaters());
        Path file = folder.resolve("heaters.catalogue");
        ui.run(() -> heaters().open(file));
        window.awaitFile(JobParts.HEATERS, file);
        ui.await("the catalogue is open", () -> tables() == 1 && table().getItemCount() > 5);
        int before = ui.ask(() -> table().getItemCount());
        search("h95");
        choose(0);
        press("entry.copy");
        assertEquals("h95-2", typed("id"));
        type("power", "9.8");
        assertEquals("9.8 kW", typed("power"), "a bare number takes the unit of its field");
        type("elements", "5.0 kW + 4.8 kW");
        assertEquals("5.0 kW + 4.8 kW", typed("elements"));
        type("title", "Heater 9.8 kW, two-element");
        press("entry.old");
        ui.shoot("58-heaters");
        assertTrue(ui.ask(() -> heaters().save()));
        var heaters = CatalogueFile.load(file).getHeaters();
        assertEquals(before + 1, heaters.size());
        var added = heaters.get(heaters.size() - 1);
        assertEquals(2, added.getElements().size());
        assertTrue(added.getWithdrawnOn() != null);
    }
}
