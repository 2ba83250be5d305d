// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.part.QuoteIssue;

/** The line at the foot of the window: where the job stands, and how the last action went. */
final class StatusWindowTest extends DemoWindow {
    private static final String TAKEN_AT = "survey.water.test.takenAt";
    private static final int WATER = 3;

    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        openWithOneCandidate();
    }

    @AfterAll
    static void end() throws Exception {
        leave();
    }

    private static String state() {
        return ui.ask(() -> ui.field(CLabel.class, "status.state").getText());
    }

    private static String said() {
        return ui.ask(DemoWindow::action);
    }

    @Test
    @Order(1)
    void jobInFrontIsSaidWithItsQuoteAndItsLists() throws Exception {
        ui.await("the job is said", () -> state().startsWith(
                        WORDS.format("status.saved", Map.of("name", "alder-beck"))));
        assertTrue(state().contains(WORDS.get("status.draft")), state());
        String book = ui.ask(() -> job().session()
                .services()
                .prices(job().session().survey())
                .book()
                .getTitle());
        String heaters = ui.ask(() -> job().session().catalogue().getTitle());
        assertTrue(state().contains(WORDS.format("status.prices", Map.of("name", book))), state());
        assertTrue(state().contains(WORDS.format("status.heaters", Map.of("name", heaters))), state());
        ui.shoot("70-status");
    }

    @Test
    @Order(2)
    void changeUndoAndSavingAreSaid() throws Exception {
        ui.run(() -> job().survey().show(WATER));
        ui.type(TAKEN_AT, "08:20", SWT.DefaultSelection);
        ui.await("it is changed", () -> state().startsWith(
                        WORDS.format("status.changed", Map.of("name", "alder-beck"))));
        ui.run(() -> job().undo());
        ui.await("it is as in the file", () -> state().startsWith(
                        WORDS.format("status.saved", Map.of("name", "alder-beck"))));
        assertEquals(WORDS.get("status.done.undone"), said());
        ui.type(TAKEN_AT, "08:25", SWT.DefaultSelection);
        assertEquals("", said(), "what was said before does not stay beside another change");
        assertTrue(ui.ask(() -> job().save()));
        ui.await("it is saved", () -> state().startsWith(WORDS.format("status.saved", Map.of("name", "alder-beck"))));
        assertEquals(WORDS.format("status.done.saved", Map.of("file", folder.resolve("alder-beck.job"))), said());
    }

    @Test
    @Order(3)
    void issuedQuoteIsSaidWithItsState() throws Exception {
        window.settled();
        ui.run(() -> new QuoteIssue(job(), WORDS).issue(folder, null, "", ui.shell()));
        String name = job().session().issued().name();
        ui.await("the quote is said", () -> state().contains("Quote " + name + ": issued, open"));
        assertTrue(said().startsWith(WORDS.format("issue.done", Map.of("name", name, "file", ""))), said());
        ui.shoot("71-status-issued");
    }

    @Test
    @Order(4)
    void nothingIsCutWithoutAnEllipsisAndATooltip() {
        Composite line = ui.ask(() -> ui.field(Composite.class, "status"));
        Point before = ui.ask(() -> ui.shell().getSize());
        try {
            ui.run(() -> ui.shell().setSize(700, before.y));
            for (String field : new String[] {"status.state", "status.action"}) {
                ui.run(() -> {
                    CLabel label = ui.field(CLabel.class, field);
                    Rectangle inside = line.getClientArea();
                    assertTrue(label.getBounds().x + label.getBounds().width <= inside.width, field + " is inside");
                    assertTrue(label.getSize().x > 60, field + " has room");
                    if (label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x > label.getSize().x) {
                        assertEquals(label.getText(), label.getToolTipText(), "the whole text stands in the tooltip");
                    }
                });
            }
            ui.shoot("72-status-narrow");
        } finally {
            ui.run(() -> ui.shell().setSize(before));
        }
    }

    @Test
    @Order(5)
    void otherPagesAreSaidTooAndAListThatIsEditedHasItsState() throws Exception {
        ui.run(() -> window.parts().showIssued());
        ui.await("the office is said", () -> state().startsWith("Office"));
        assertFalse(state().contains("saved"), "a page that is not edited has nothing to save");
    }
}
