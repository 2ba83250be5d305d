// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.e4.core.commands.ECommandService;
import org.eclipse.e4.core.commands.EHandlerService;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Scrollable;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.batch.BatchPart;
import twinfeed.desktop.entry.CataloguePart;
import twinfeed.desktop.entry.PriceBookPart;
import twinfeed.desktop.help.HelpPart;
import twinfeed.desktop.office.OfficePart;
import twinfeed.desktop.part.QuoteIssue;
import twinfeed.desktop.window.JobParts;
import twinfeed.model.assessment.Finding;
import twinfeed.usecase.quote.IssuedQuote;

/**
 * Opens every page and dialogue. Every table has a menu over its rows by which they are copied; in the German window nothing is said in
 * English, but what the person's own files say. The pom runs it in both languages; the pictures are for people to look at.
 */
final class EveryPageWindowTest extends DemoWindow {
    private static final String SUFFIX = System.getProperty("twinfeed.shots.suffix", "");
    private static final boolean GERMAN = WORDS.locale().getLanguage().equals(Locale.GERMAN.getLanguage());
    private static final int WATER = 3;

    /** What follows from a click is put in the queue by the threads that work in the background. */
    private static final int SETTLING_MS = 60;

    /** Pictures that were taken already; those of many findings would be much the same. */
    private static final Set<String> SHOT = new HashSet<>();

    private static final Set<String> KNOWN = new HashSet<>();
    private static final List<String> WITHOUT_MENU = new ArrayList<>();
    private static final List<String> IN_ENGLISH = new ArrayList<>();
    private static EnglishPhrases phrases;
    private static Display display;
    private static IssuedQuote issued;

    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        chooseOffice(folder);
        openWithOneCandidate();
        Files.writeString(folder.resolve("broken.job"), "no job at all");
        phrases = new EnglishPhrases(folder);
        display = ui.ask(() -> ui.shell().getDisplay());
    }

    @AfterAll
    static void end() throws Exception {
        leave();
    }

    /** Looks at everything that can be seen now. */
    private static void look(String name) throws Exception {
        Thread.sleep(SETTLING_MS);
        ui.draw();
        if (SHOT.add(name)) {
            ui.shoot("90-" + name + SUFFIX);
        }
        ui.run(() -> {
            Stream.concat(
                            ui.all(Table.class, Control::isVisible).stream(),
                            ui.all(Tree.class, Control::isVisible).stream())
                    .filter(rows -> !copies(rows))
                    .forEach(rows -> WITHOUT_MENU.add(name + ": " + rows.getData("twinfeed.field")));
            if (GERMAN) {
                for (String text : VisibleTexts.of(display)) {
                    if (KNOWN.add(text)) {
                        String english = phrases.in(text);
                        if (!english.isEmpty()) {
                            IN_ENGLISH.add(name + ": " + text + "  [" + english + "]");
                        }
                    }
                }
            }
        });
    }

    private static boolean copies(Scrollable rows) {
        Menu menu = rows.getMenu();
        return menu != null
                && menu.getItemCount() > 0
                && menu.getItem(menu.getItemCount() - 1).getText().equals(WORDS.get("menu.copy"));
    }

    private static void nothingFound() {
        List<String> menus = List.copyOf(WITHOUT_MENU);
        List<String> english = List.copyOf(IN_ENGLISH);
        WITHOUT_MENU.clear();
        IN_ENGLISH.clear();
        assertEquals("", String.join("\n", menus), "tables without a menu by which rows are copied");
        assertEquals("", String.join("\n", english), "English in the German window");
    }

    private static Shell dialogue() {
        return ui
                .all(
                        Shell.class,
                        shell -> shell.isVisible()
                                && shell.getParent() != null
                                && !shell.getText().isEmpty())
                .stream()
                .findFirst()
                .orElse(null);
    }

    /** Does what opens a dialogue, looks at it and closes it. */
    private static void dialogue(String name, Runnable opening) throws Exception {
        display.asyncExec(opening);
        ui.await("the dialogue is open: " + name, () -> dialogue() != null);
        look(name);
        ui.run(() -> {
            Shell shown = dialogue();
            if (shown == null) {
                throw new AssertionError("the dialogue closed by itself: " + name);
            }
            shown.close();
        });
        ui.await("the dialogue is closed: " + name, () -> dialogue() == null);
    }

    private static void command(String id) {
        // On a screen without a window manager nothing else makes the job's page the active one.
        IEclipseContext context = window.parts().parts().get(0).getContext();
        ParameterizedCommand command =
                context.get(ECommandService.class).createCommand("twinfeed.desktop.command." + id, null);
        context.get(EHandlerService.class).executeHandler(command);
    }

    private static void press(String field) {
        Ui.send(ui.field(Button.class, field), SWT.Selection);
    }

    private static void select(String table, int row) {
        Table rows = ui.field(Table.class, table);
        rows.setSelection(row);
        Ui.send(rows, SWT.Selection);
    }

    /** Chooses in the menu over a table what a message says. */
    private static void choose(String table, String key) {
        MenuItem item = Stream.of(ui.field(Table.class, table).getMenu().getItems())
                .filter(each -> each.getText().equals(WORDS.get(key)))
                .findFirst()
                .orElseThrow();
        Ui.send(item, SWT.Selection);
    }

    @Test
    @Order(1)
    void pagesOfAJob() throws Exception {
        for (int i = 0; i < ui.ask(() -> job().survey().size()); i++) {
            int page = i;
            ui.run(() -> job().survey().show(page));
            look("job-" + (page + 1));
        }
        ui.await(
                "causes are ranked",
                () -> job().session().faults().result() != null
                        && job().session().faults().current()
                        && job().session().faults().result().priced());
        ui.run(() -> job().survey().show(2));
        look("faults");
        ui.run(() -> job().survey().show(0));
        for (int i = 1;
                i < ui.ask(() -> ui.field(TabFolder.class, "findings.tabs").getItemCount());
                i++) {
            tab(i);
            if (i == 2) {
                ui.await(
                        "the page is there",
                        () -> ui.field(StyledText.class, "customerPage").getCharCount() > 100);
            }
            look("findings-" + i);
        }
        tab(0);
        nothingFound();
    }

    @Test
    @Order(2)
    void findingsWithTheirWorking() throws Exception {
        // What is said differs from option to option, which matters for the language; the tables do not.
        int options = GERMAN ? ui.ask(() -> ui.field(Table.class, "options").getItemCount()) : 1;
        for (int option = 0; option < options; option++) {
            int chosen = option;
            ui.run(() -> select("options", chosen));
            List<TreeItem> findings =
                    ui.ask(() -> Stream.of(ui.field(Tree.class, "findings").getItems())
                            .flatMap(group -> Stream.of(group.getItems()))
                            .toList());
            int number = 0;
            for (TreeItem item : findings) {
                ui.run(() -> {
                    Tree tree = ui.field(Tree.class, "findings");
                    tree.setSelection(item);
                    Ui.send(tree, SWT.Selection);
                });
                if (ui.ask(() -> item.getData() instanceof Finding)) {
                    look("finding-" + chosen + (number < 3 ? "-" + number : ""));
                    number++;
                }
            }
        }
        nothingFound();
    }

    @Test
    @Order(3)
    void entriesThatCannotBeRead() throws Exception {
        ui.run(() -> job().survey().show(WATER));
        for (String typed : List.of(
                "3 baar", "drei bar", "3", "3,0 bar \u00b1", "3 bar \u00b1 -1 bar", "1e400 bar", "\u22125 bar")) {
            ui.type("survey.water.test.staticPressure", typed, SWT.DefaultSelection);
            look("unread");
        }
        ui.type("survey.water.test.staticPressure", "3 bar", SWT.DefaultSelection);
        ui.type("survey.water.test.takenAt", "halb acht", SWT.DefaultSelection);
        look("unread");
        ui.type("survey.water.test.takenAt", "07:30", SWT.DefaultSelection);
        ui.run(() -> job().survey().show(0));
        ui.type("survey.takenOn", "gestern", SWT.DefaultSelection);
        look("unread");
        ui.type("survey.takenOn", "2026-10-06", SWT.DefaultSelection);
        window.settled();
        dialogue("open-refused", () -> window.parts().open(folder.resolve("broken.job")));
        nothingFound();
    }

    @Test
    @Order(4)
    void dialogues() throws Exception {
        window.settled();
        ui.run(() -> job().survey().show(0));
        ui.run(() -> select("options", 1));
        for (String key : List.of("change.offer", "change.add", "change.discount")) {
            dialogue(key, () -> choose("quote", key));
        }
        int row = ui.ask(() -> {
            Table quote = ui.field(Table.class, "quote");
            for (int i = 0; i < quote.getItemCount(); i++) {
                select("quote", i);
                Ui.send(quote.getMenu(), SWT.Show);
                boolean possible = Stream.of(quote.getMenu().getItems())
                        .anyMatch(item -> item.getText().equals(WORDS.get("change.quantity")) && item.isEnabled());
                if (possible) {
                    return i;
                }
            }
            return -1;
        });
        if (row >= 0) {
            dialogue("change.quantity", () -> choose("quote", "change.quantity"));
        }
        for (String id : List.of("issue", "new", "template", "keys", "about", "cautions")) {
            dialogue("dialogue-" + id, () -> command(id));
        }
        // Where no printer is set up that is said, and no dialogue opens.
        ui.run(() -> command("print"));
        look("print");
        nothingFound();
    }

    @Test
    @Order(5)
    void office() throws Exception {
        display.asyncExec(() -> new QuoteIssue(job(), WORDS).issue(folder, null, "", ui.shell()));
        Thread.sleep(30);
        look("issuing");
        ui.await("it is issued", () -> job().session().issued() != null);
        issued = job().session().issued();
        look("issued");
        ui.run(() -> new QuoteIssue(job(), WORDS).issue(folder, issued.file(), "", ui.shell()));
        IssuedQuote second = job().session().issued();
        ui.run(() -> window.parts().showIssued());
        ui.await("jobs are listed", () -> ui.field(Table.class, "issued").getItemCount() > 6);
        ui.await("every job was looked at", () -> Stream.of(
                        ui.field(Table.class, "issued").getItems())
                .noneMatch(item -> item.getText(6).contains(WORDS.get("office.next.unknown"))));
        look("office");
        for (int i = 0; i < ui.ask(() -> ui.field(Table.class, "issued").getItemCount()); i++) {
            int line = i;
            ui.run(() -> select("issued", line));
            look("office-line");
        }
        OfficePart office =
                (OfficePart) window.partService().findPart(JobParts.ISSUED).getObject();
        ui.run(() -> office.choose(second.file()));
        ui.run(() -> press("office.survey"));
        ui.await("the survey is shown", () -> !ui.all(
                        Table.class, each -> each.isVisible() && "issued.survey".equals(each.getData("twinfeed.field")))
                .isEmpty());
        look("office-survey");
        ui.run(() -> press("issued.compare"));
        ui.await("they are compared", () -> !ui.all(
                        Table.class,
                        each -> each.isVisible() && "issued.differences".equals(each.getData("twinfeed.field")))
                .isEmpty());
        look("office-compare");
        dialogue("office-accept", () -> press("issued.accept"));
        dialogue("office-decline", () -> press("issued.decline"));
        String option = second.quote().getOptions().get(0).getName();
        ui.run(() -> office.accept(second, "none such"));
        ui.await("it is refused", () -> action().contains("none such"));
        look("office-refused");
        ui.run(() -> office.accept(second, option));
        ui.await("it is accepted", () -> action().contains(second.name()));
        ui.await("and shown so", () -> Stream.of(ui.field(Table.class, "issued").getItems())
                .anyMatch(item -> item.getText(4).contains(WORDS.get("issued.state.accepted"))));
        ui.run(() -> office.choose(second.file()));
        look("office-accepted");
        dialogue("office-correct", () -> press("issued.correct"));
        String cancelled = WORDS.get("status.done.cancelled");
        ui.await("that is said", () -> action().equals(cancelled));
        ui.run(() -> office.accept(second, option));
        ui.await("it is refused", () -> !action().equals(cancelled));
        look("office-refused");
        nothingFound();
    }

    @Test
    @Order(6)
    void lists() throws Exception {
        ui.run(() -> window.parts().showPrices());
        PriceBookPart prices =
                (PriceBookPart) window.partService().findPart(JobParts.PRICES).getObject();
        ui.run(() -> prices.open(folder.resolve("prices.csv")));
        window.awaitFile(JobParts.PRICES, folder.resolve("prices.csv"));
        entries("prices");
        Path other = folder.resolve("other.csv");
        Files.writeString(
                other,
                Files.readString(folder.resolve("prices.csv"))
                        .replaceFirst("(?m)^cable-16,.*\\R", "")
                        .replaceFirst("(?m)^(cable-10,[^\\r\\n]*?)\\d+\\.\\d+", "$1999.99"));
        dialogue("prices-import", () -> prices.importFrom(other));
        Files.writeString(
                other,
                Files.readString(other)
                        .replaceFirst("(?m)^(cable-10,[^\\r\\n]*?)999\\.99", "$1dear")
                        .replaceFirst("(?m)^cable-6,", "code 6/,"));
        dialogue("prices-import-refused", () -> prices.importFrom(other));
        ui.run(() -> prices.open(folder.resolve("firm.properties")));
        look("prices-refused");
        ui.run(() -> window.parts().showHeaters());
        CataloguePart heaters =
                (CataloguePart) window.partService().findPart(JobParts.HEATERS).getObject();
        ui.run(() -> heaters.open(folder.resolve("heaters.catalogue")));
        window.awaitFile(JobParts.HEATERS, folder.resolve("heaters.catalogue"));
        entries("heaters");
        ui.run(() -> {
            Text power = ui.field(Text.class, "entry.power");
            power.setText("viel");
            Ui.send(power, SWT.FocusOut);
        });
        look("heaters-unread");
        nothingFound();
    }

    private static void entries(String name) throws Exception {
        ui.await("entries are listed", () -> !ui.all(
                        Table.class,
                        each -> "entries".equals(each.getData("twinfeed.field"))
                                && each.isVisible()
                                && each.getItemCount() > 3)
                .isEmpty());
        ui.run(() -> press("entry.head"));
        look(name + "-head");
        ui.run(() -> select("entries", 0));
        look(name);
    }

    @Test
    @Order(7)
    void listOfDwellings() throws Exception {
        ui.run(() -> window.parts().showBatch());
        look("batch-empty");
        BatchPart batch =
                (BatchPart) window.partService().findPart(JobParts.BATCH).getObject();
        ui.run(() -> {
            batch.set("batch.list", folder.resolve("dwellings.pdf").toString());
            batch.set("batch.like", folder.resolve("none.job").toString());
        });
        look("batch-problem");
        ui.run(() -> {
            batch.set("batch.list", folder.resolve("dwellings.csv").toString());
            batch.set("batch.like", folder.resolve("alder-beck.job").toString());
            batch.set("batch.book", folder.resolve("prices.csv").toString());
            batch.set("batch.out", folder.resolve("out.xlsx").toString());
        });
        ui.run(() -> press("batch.judge"));
        ui.await(
                "it is done",
                () -> Files.exists(folder.resolve("out.xlsx"))
                        && ui.field(Button.class, "batch.look").isEnabled());
        look("batch");
        for (int i = 0; i < ui.ask(() -> ui.field(Table.class, "batch.rows").getItemCount()); i++) {
            int line = i;
            ui.run(() -> select("batch.rows", line));
            look("batch-line");
        }
        nothingFound();
    }

    @Test
    @Order(8)
    void quickQuestion() throws Exception {
        ui.run(() -> window.parts().showQuick());
        look("quick-empty");
        for (int kind = 0;
                kind < ui.ask(() -> ui.field(CCombo.class, "quick.field.device").getItemCount());
                kind++) {
            int chosen = kind;
            ui.run(() -> {
                CCombo device = ui.field(CCombo.class, "quick.field.device");
                device.select(chosen);
                Ui.send(device, SWT.Selection);
                ui.field(Text.class, "quick.field.rating").setText("40");
                ui.field(Text.class, "quick.field.size").setText("10");
                ui.field(Text.class, "quick.field.length").setText("17");
                CCombo method = ui.field(CCombo.class, "quick.field.method");
                method.select(2);
                Ui.send(method, SWT.Selection);
            });
            look("quick-strongest");
        }
        ui.run(() -> {
            ui.field(Button.class, "quick.strongest").setSelection(false);
            Button needed = ui.field(Button.class, "quick.needed");
            needed.setSelection(true);
            Ui.send(needed, SWT.Selection);
        });
        ui.run(() -> ui.field(Text.class, "quick.field.power").setText("10,5"));
        look("quick-needed");
        ui.run(() -> ui.field(Text.class, "quick.field.power").setText("99"));
        look("quick-none");
        nothingFound();
    }

    @Test
    @Order(9)
    void settingsHelpAndStart() throws Exception {
        ui.run(() -> window.parts().showSettings());
        look("settings");
        ui.run(() -> window.parts().explain("pressure.static", job().session()));
        HelpPart help = (HelpPart) window.partService().findPart(JobParts.HELP).getObject();
        List<String> checks =
                ui.ask(() -> Stream.of(ui.field(Tree.class, "help.checks").getItems())
                        .flatMap(group -> Stream.of(group.getItems()))
                        .map(TreeItem::getData)
                        .filter(String.class::isInstance)
                        .map(String::valueOf)
                        .toList());
        for (String check : checks) {
            ui.run(() -> help.show(check, job().session().result(), null));
            look("help");
        }
        ui.run(() -> window.partService()
                .showPart(
                        "twinfeed.desktop.start",
                        org.eclipse.e4.ui.workbench.modeling.EPartService.PartState.ACTIVATE));
        look("start");
        nothingFound();
    }
}
