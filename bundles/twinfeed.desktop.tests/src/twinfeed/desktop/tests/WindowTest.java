// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.part.QuoteExport;
import twinfeed.desktop.session.BackupCopy;
import twinfeed.desktop.text.Words;
import twinfeed.model.assessment.Finding;
import twinfeed.model.io.JobFile;
import twinfeed.model.job.Job;

/** One sitting at the window, from the first start to the second opening of what was saved. The steps build on one another. */
@ExtendWith(Window.Shared.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
final class WindowTest {
    private static final String STATIC = "survey.water.test.staticPressure";

    private static final String PIPE = "survey.water.segments[service pipe]";

    /** Number of the page with the two-point test. */
    private static final int WATER = 3;

    private static Path folder;

    private static Window window;
    private static Ui ui;

    @BeforeAll
    static void start() throws Exception {
        window = Window.Shared.get();
        ui = window.ui();
        folder = window.demo();
    }

    @AfterAll
    static void end() throws Exception {
        window.giveUp();
    }

    private static JobPart job() {
        return window.job();
    }

    private static MPart part() {
        return window.parts().parts().get(0);
    }

    private static void settled() throws InterruptedException {
        window.settled();
    }

    private static void looked() throws InterruptedException {
        ui.await("the findings are there", () -> job().session().glanced());
    }

    private static TreeItem finding(String check) {
        for (TreeItem group : ui.field(Tree.class, "findings").getItems()) {
            for (TreeItem item : group.getItems()) {
                if (item.getData() instanceof Finding finding
                        && finding.getKey().equals(check)) {
                    return item;
                }
            }
        }
        throw new AssertionError("no finding " + check);
    }

    private static void type(String field, String typed) {
        ui.type(field, typed, SWT.DefaultSelection);
    }

    @Test
    @Order(1)
    void firstStartOffersTheDemonstration() throws Exception {
        ui.await("the start page is there", () -> !ui.all(
                        Button.class, button -> "start.demo".equals(button.getData("twinfeed.field")))
                .isEmpty());
        ui.shoot("00-start");
        String caution = ui.ask(() -> ui.field(Label.class, "cautions").getText());
        assertTrue(caution.contains("Isolate"), caution);
        ui.run(() -> Ui.send(ui.field(Button.class, "start.demo"), SWT.Selection));
        ui.await("the demonstration is open", () -> !window.parts().parts().isEmpty());
        assertEquals("alder-beck", ui.ask(() -> part().getLabel()));
    }

    @Test
    @Order(2)
    void demonstrationShowsFindingsOptionsAndQuote() throws Exception {
        settled();
        ui.shoot("01-job");
        assertTrue(ui.ask(() -> ui.field(Tree.class, "findings").getItemCount()) >= 3);
        Table options = ui.ask(() -> ui.field(Table.class, "options"));
        assertEquals(2, ui.ask(options::getItemCount), "the present unit and one candidate");
        List<String> verdicts = ui.ask(
                () -> Stream.of(options.getItems()).map(item -> item.getText(1)).toList());
        assertTrue(verdicts.stream().allMatch(each -> each.matches("[✓+✗?] .+")), "sign and word: " + verdicts);
        assertTrue(ui.ask(() -> ui.field(Table.class, "quote").getItemCount()) > 5);
        assertFalse(ui.ask(() -> part().isDirty()));
    }

    @Test
    @Order(2)
    void findingsAreFilteredAndStandBesideThoseWithTheWorkDone() throws Exception {
        settled();
        CCombo filter = ui.ask(() -> ui.field(CCombo.class, "findings.filter"));
        List<TreeItem> failing = ui.ask(() -> shown(filter, "failing"));
        assertFalse(failing.isEmpty());
        assertTrue(
                ui.ask(() -> failing.stream().allMatch(item -> item.getText(1).startsWith("✗"))));
        assertTrue(
                ui.ask(() -> failing.stream().anyMatch(item -> item.getText(2).startsWith("✓"))), "work mends some");
        ui.shoot("01a-failing");
        List<TreeItem> advice = ui.ask(() -> shown(filter, "shortfalls"));
        assertTrue(ui.ask(() -> advice.stream().anyMatch(item -> item.getText(1).equals("! falls short"))));
        assertTrue(ui.ask(() -> advice.stream().anyMatch(item -> item.getText(1).endsWith("advice"))));
        assertTrue(
                ui.ask(() -> advice.stream().noneMatch(item -> item.getText(1).startsWith("✗"))));
        assertTrue(ui.ask(() -> shown(filter, "all")).size() > failing.size() + advice.size());
        assertTrue(ui.ask(filter::getText).matches("all \\([1-9]\\d*\\)"));
    }

    private static List<TreeItem> shown(CCombo filter, String name) {
        filter.select(Stream.of(filter.getItems())
                .map(each -> each.startsWith(name + " "))
                .toList()
                .indexOf(true));
        Ui.send(filter, SWT.Selection);
        return Stream.of(ui.field(Tree.class, "findings").getItems())
                .flatMap(group -> Stream.of(group.getItems()))
                .toList();
    }

    @Test
    @Order(3)
    void everyPageCanBeLookedAtAndLacksNoText() throws Exception {
        int pages = ui.ask(() -> job().survey().size());
        assertEquals(10, pages);
        for (int i = 0; i < pages; i++) {
            int page = i;
            ui.run(() -> job().survey().show(page));
            ui.shoot("1" + (i + 1) + "-page");
            assertEquals(List.of(), ui.ask(WindowTest::lacking));
        }
    }

    /** Texts that stand in brackets because there is no message for them. */
    private static List<String> lacking() {
        Stream<String> labels = ui.all(Label.class, any -> true).stream().map(Label::getText);
        Stream<String> buttons = ui.all(Button.class, any -> true).stream().map(Button::getText);
        Stream<String> choices =
                ui.all(CCombo.class, any -> true).stream().flatMap(combo -> Stream.of(combo.getItems()));
        return Stream.of(labels, buttons, choices)
                .flatMap(texts -> texts)
                .filter(text -> text.matches(".*\\[[A-Za-z]+(\\.[A-Za-z]+)+].*"))
                .toList();
    }

    @Test
    @Order(4)
    void everythingThatTakesTheCursorHasANameForThoseWhoHear() {
        List<String> nameless = ui.ask(() -> ui
                .all(
                        Composite.class,
                        control -> control.isVisible()
                                && (control instanceof CCombo || control instanceof Table || control instanceof Tree)
                                && control.getData("twinfeed.name") == null)
                .stream()
                .map(Object::toString)
                .toList());
        assertEquals(List.of(), nameless);
        List<Text> texts = ui.ask(() -> ui.all(Text.class, Text::isVisible));
        assertTrue(texts.stream()
                .allMatch(text ->
                        ui.ask(() -> text.getParent() instanceof CCombo || text.getData("twinfeed.name") != null)));
    }

    @Test
    @Order(5)
    void typedValueChangesAFindingAndUndoTakesItBack() throws Exception {
        ui.run(() -> job().survey().show(WATER));
        String before = ui.ask(() -> finding("pressure.static").getText(3));
        type(STATIC, "4.1 bar ± 0.05 bar");
        assertTrue(ui.ask(() -> part().isDirty()));
        looked();
        String after = ui.ask(() -> finding("pressure.static").getText(3));
        assertNotEquals(before, after);
        ui.shoot("20-typed");
        ui.run(() -> ui.field(Table.class, "pages").setFocus());
        ui.command('z');
        ui.await(
                "the value is back",
                () -> ui.field(Text.class, STATIC).getText().equals("3.0 bar ± 0.05 bar"));
        looked();
        assertEquals(before, ui.ask(() -> finding("pressure.static").getText(3)));
        assertFalse(ui.ask(() -> part().isDirty()));
        ui.command('y');
        ui.await(
                "the value is there again",
                () -> ui.field(Text.class, STATIC).getText().startsWith("4.1 bar"));
        ui.command('z');
        ui.await(
                "the value is back",
                () -> ui.field(Text.class, STATIC).getText().startsWith("3.0 bar"));
    }

    @Test
    @Order(6)
    void whatCannotBeReadStaysInTheFieldWithTheReason() {
        type(STATIC, "3 baar");
        assertTrue(messages().contains("not a unit of pressure"), messages());
        ui.shoot("21-unreadable");
        ui.run(() -> job().survey().show(0));
        ui.run(() -> job().survey().show(WATER));
        assertEquals("3 baar", ui.ask(() -> ui.field(Text.class, STATIC).getText()));
        assertFalse(ui.ask(() -> job().readyForQuote()), "a quote must not lack what is on the screen");
        assertTrue(ui.ask(() -> ui.field(Composite.class, "notice").isVisible()));
        assertTrue(messages().contains("Static pressure \"3 baar\""), messages());
        ui.run(() -> job().undo());
        assertEquals(
                "3.0 bar ± 0.05 bar", ui.ask(() -> ui.field(Text.class, STATIC).getText()));
        assertFalse(messages().contains("not a unit of pressure"));
        assertFalse(ui.ask(() -> part().isDirty()));
    }

    @Test
    @Order(7)
    void whatCannotBeSoIsSaidBesideTheFieldAndNothingIsWorkedOutFromIt() throws Exception {
        type("survey.water.test.runningPressure", "3.2 bar");
        looked();
        assertTrue(messages().contains("✗"), messages());
        assertEquals(0, ui.ask(() -> ui.field(Tree.class, "findings").getItemCount()));
        ui.shoot("22-impossible");
        ui.run(() -> job().undo());
        looked();
        assertTrue(ui.ask(() -> ui.field(Tree.class, "findings").getItemCount()) >= 3);
    }

    private static String messages() {
        return String.join("\n", ui.ask(() -> ui.all(Label.class, Label::isVisible).stream()
                .map(Label::getText)
                .toList()));
    }

    @Test
    @Order(8)
    void quoteIsWrittenToAWorkbookAndAsAPdf() throws Exception {
        settled();
        Path out = folder.resolve("quote.xlsx");
        ui.run(() -> new QuoteExport(job(), new Words(java.util.Locale.ENGLISH)).write(out, ui.shell()));
        assertTrue(Files.size(out) > 3000);
        assertTrue(texts(out).contains("Netherquill Lettings (invented)"));
        ui.shoot("23-exported");
        Path pdf = folder.resolve("quote.pdf");
        ui.run(() -> new QuoteExport(job(), new Words(java.util.Locale.ENGLISH)).write(pdf, ui.shell()));
        String written = Files.readString(pdf, StandardCharsets.ISO_8859_1);
        // ISO 32000-1, 7.5.2 and 7.5.5: a PDF file begins with %PDF- and ends with %%EOF.
        assertTrue(written.startsWith("%PDF-") && written.stripTrailing().endsWith("%%EOF"));
    }

    private static String texts(Path workbook) throws IOException {
        StringBuilder all = new StringBuilder();
        try (ZipFile file = new ZipFile(workbook.toFile())) {
            for (ZipEntry entry : Collections.list(file.entries())) {
                all.append(new String(file.getInputStream(entry).readAllBytes(), StandardCharsets.UTF_8));
            }
        }
        return all.toString();
    }

    @Test
    @Order(9)
    void whatIsSavedIsThereAgain() throws Exception {
        ui.run(() -> job().survey().show(WATER));
        type("survey.water.test.takenAt", "08:15");
        Path file = folder.resolve("alder-beck.job");
        ui.command('s');
        ui.await("it is saved", () -> !part().isDirty());
        assertEquals(
                "08:15", JobFile.load(file).getSurvey().getWater().getTest().getTakenAt());
        ui.command('w');
        ui.await("it is closed", () -> window.parts().parts().isEmpty());
        ui.run(() -> window.parts().open(file));
        ui.await("it is open", () -> window.parts().parts().size() == 1);
        ui.run(() -> job().survey().show(WATER));
        assertEquals("08:15", ui.ask(() -> ui.field(Text.class, "survey.water.test.takenAt")
                .getText()));
    }

    @Test
    @Order(10)
    void fileThatAnotherProgramChangedIsNotWrittenOver() throws Exception {
        Path file = folder.resolve("alder-beck.job");
        String theirs = Files.readString(file).replace("08:15", "09:45");
        Files.writeString(file, theirs);
        type("survey.water.test.takenAt", "10:00");
        assertFalse(ui.ask(() -> job().save()));
        assertEquals(theirs, Files.readString(file));
        assertTrue(ui.ask(() -> ui.field(Composite.class, "notice").isVisible()));
        ui.shoot("24-changed-outside");
        ui.run(() -> Ui.send(
                ui.all(
                                Button.class,
                                button -> button.isVisible() && button.getText().startsWith("Read"))
                        .get(0),
                SWT.Selection));
        ui.await("it is read again", () -> window.parts().parts().size() == 1 && !part().isDirty());
        ui.run(() -> job().survey().show(WATER));
        assertEquals("09:45", ui.ask(() -> ui.field(Text.class, "survey.water.test.takenAt")
                .getText()));
    }

    @Test
    @Order(11)
    void clickOnAPieceOfTheDrawingLeadsToItsField() {
        ui.run(() -> job().survey().show(0));
        Canvas feeds = ui.ask(() -> ui.field(Canvas.class, "feeds"));
        int pipes = 4;
        int height = ui.ask(() -> feeds.getSize().y);
        for (int y = 0; y < height && ui.ask(() -> job().survey().shown()) != pipes; y += 4) {
            Event click = new Event();
            click.x = 40;
            click.y = y;
            ui.run(() -> feeds.notifyListeners(SWT.MouseDown, click));
        }
        assertEquals(pipes, ui.ask(() -> job().survey().shown()));
        assertEquals("service pipe", ui.ask(() -> ui.field(Text.class, PIPE + ".name")
                .getText()));
    }

    @Test
    @Order(12)
    void changesOfASittingThatEndedSuddenlyAreOffered() throws Exception {
        Path file = folder.resolve("rowan-brook.job");
        Job changed = JobFile.load(file);
        changed.getSurvey().setNotes("Typed, and never saved.");
        JobFile.save(changed, new BackupCopy(file).path());
        ui.run(() -> window.parts().open(file));
        ui.await("it is open", () -> window.parts().parts().size() == 2);
        ui.shoot("25-rescue");
        ui.run(() -> Ui.send(
                ui.all(
                                Button.class,
                                button -> button.isVisible() && button.getText().startsWith("Restore"))
                        .get(0),
                SWT.Selection));
        ui.await("they are taken", () -> rowan() != null && rowan().isDirty());
        assertEquals(
                "Typed, and never saved.",
                ui.ask(() -> ((JobPart) rowan().getObject()).session().survey().getNotes()));
    }

    private static MPart rowan() {
        return window.parts().parts().stream()
                .filter(part -> part.getLabel().equals("rowan-brook"))
                .findFirst()
                .orElse(null);
    }
}
