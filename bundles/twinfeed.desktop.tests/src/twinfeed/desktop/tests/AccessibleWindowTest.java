// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.e4.ui.workbench.modeling.EPartService.PartState;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.entry.CataloguePart;
import twinfeed.desktop.entry.PriceBookPart;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.window.JobParts;

/** Every control of every page has a name that a screen reader can say; and what a job without any reading looks like. */
@ExtendWith(Window.Shared.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
final class AccessibleWindowTest {
    @TempDir
    static Path folder;

    private static Window window;
    private static Ui ui;

    @BeforeAll
    static void start() {
        window = Window.Shared.get();
        ui = window.ui();
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    @Test
    @Order(1)
    void blankJobIsCalm() throws Exception {
        ui.run(() ->
                window.parts().create(folder.resolve("blank.job"), window.demo().resolve("heaters.catalogue")));
        ui.await("the job is open", () -> !window.parts().parts().isEmpty());
        ui.await("something is judged", () -> window.job().session().glanced());
        for (int i = 0; i < window.job().survey().size(); i++) {
            int page = i;
            ui.run(() -> window.job().survey().show(page));
            List<String> said = ui.ask(() -> ui.all(Label.class, Label::isVisible).stream()
                    .map(Label::getText)
                    .filter(text -> text.startsWith("? "))
                    .toList());
            assertEquals(List.of(), said, "what is wanted is a mark, and no sentence");
            ui.shoot("6" + (page + 1) + "-blank-page");
        }
        assertTrue(
                ui.ask(() -> ui.field(Table.class, "pages").getItem(3).getText(1))
                        .contains("needed"),
                "each page counts what is needed");
    }

    @Test
    @Order(2)
    void nextNeededReadingIsUnderTheCursor() {
        ui.run(() -> window.job().survey().show(0));
        Set<String> seen = new TreeSet<>();
        for (int i = 0; i < 8; i++) {
            assertTrue(ui.ask(() -> {
                ui.shell().forceActive();
                return window.job().survey().nextNeeded();
            }));
            Control focus = ui.ask(() -> ui.shell().getDisplay().getFocusControl());
            seen.add(ui.ask(() -> String.valueOf(focus.getData("twinfeed.field")) + focus.getToolTipText()));
        }
        assertTrue(seen.size() > 4, "it goes on: " + seen);
        ui.shoot("6a-next-needed");
    }

    @Test
    @Order(3)
    void everyControlOfEveryPageHasAName() throws Exception {
        ui.run(() -> window.parts().open(window.demo().resolve("alder-beck.job")));
        ui.await("both are open", () -> window.parts().parts().size() == 2);
        JobPart job = ui.ask(() -> (JobPart) window.parts().parts().get(1).getObject());
        ui.await("something is judged", () -> job.session().glanced());
        Set<String> nameless = new TreeSet<>();
        int seen = 0;
        for (int i = 0; i < job.survey().size(); i++) {
            int page = i;
            ui.run(() -> job.survey().show(page));
            seen += look("page " + (page + 1), nameless);
        }
        for (String part : List.of(
                JobParts.HELP,
                JobParts.ISSUED,
                JobParts.QUICK,
                JobParts.PRICES,
                JobParts.HEATERS,
                JobParts.BATCH,
                JobParts.SETTINGS,
                "twinfeed.desktop.start")) {
            ui.run(() -> window.partService().showPart(part, PartState.ACTIVATE));
            if (part.equals(JobParts.PRICES)) {
                ui.run(() -> ((PriceBookPart)
                                window.partService().findPart(part).getObject())
                        .open(window.demo().resolve("prices.csv")));
                ui.await("the book is open", AccessibleWindowTest::listOpen);
            } else if (part.equals(JobParts.HEATERS)) {
                ui.run(() -> ((CataloguePart)
                                window.partService().findPart(part).getObject())
                        .open(window.demo().resolve("heaters.catalogue")));
                ui.await("the catalogue is open", AccessibleWindowTest::listOpen);
            }
            seen += look(part, nameless);
        }
        assertTrue(seen > 150, "controls: " + seen);
        assertEquals(Set.of(), nameless);
    }

    private static boolean listOpen() {
        return !ui.all(Table.class, each -> each.isVisible() && "entries".equals(each.getData("twinfeed.field")))
                .isEmpty();
    }

    private static int look(String where, Set<String> nameless) {
        // At one go: what is worked out meanwhile is drawn anew.
        return ui.ask(() -> {
            List<Control> controls = ui.all(Control.class, AccessibleWindowTest::speaks);
            for (Control control : controls) {
                if (name(control).isBlank()) {
                    nameless.add(where + ": " + control.getClass().getSimpleName() + " "
                            + control.getData("twinfeed.field") + " in "
                            + control.getParent().getClass().getSimpleName());
                }
            }
            assertFalse(controls.isEmpty(), where);
            return controls.size();
        });
    }

    /** What a person can reach or must hear of; the pieces of a list of answers belong to the list, and a label says its own text. */
    private static boolean speaks(Control control) {
        boolean kind = control instanceof Text
                || control instanceof CCombo
                || control instanceof Table
                || control instanceof Tree
                || control instanceof Button
                || control instanceof Link
                || (control instanceof Canvas canvas
                        && !(control instanceof CLabel)
                        && canvas.getData("twinfeed.field") != null);
        return kind && control.isVisible() && parts(control).stream().noneMatch(CCombo.class::isInstance);
    }

    private static List<Composite> parts(Control control) {
        List<Composite> all = new ArrayList<>();
        for (Composite parent = control.getParent(); parent != null; parent = parent.getParent()) {
            all.add(parent);
        }
        return all;
    }

    private static String name(Control control) {
        Object given = control.getData("twinfeed.name");
        if (given != null) {
            return given.toString();
        }
        if (control instanceof Button button) {
            return button.getText();
        }
        return control instanceof Link link ? link.getText() : "";
    }
}
