// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Finding;

/**
 * On a small screen, or one that is read from afar, what decides is seen without scrolling: the checks and the sum of the quote. The pom runs
 * it again with letters of 160 % and with everything at 200 %.
 */
final class SmallScreenWindowTest extends DemoWindow {
    /**
     * A widespread size of laptop screens, in points of the toolkit: at 200 % a screen of 2732 to 1536 dots. On 1366 to 768 dots 200 % leaves 683 to
     * 384 points, in which nothing shows three panes and eight checks at a time.
     */
    private static final Point SCREEN = new Point(1366, 768);

    private static final int CHECKS = 8;

    private static Point before;

    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        window.open(folder);
        window.settled();
        ui.await(
                "the quote is priced",
                () -> ui.field(CLabel.class, "quote.heading").getText().startsWith("\u00a3"));
        before = ui.ask(() -> ui.shell().getSize());
        ui.run(() -> ui.shell().setBounds(0, 0, SCREEN.x, SCREEN.y));
        Thread.sleep(500);
        ui.shoot("76-small-screen" + System.getProperty("twinfeed.shots.suffix", ""));
    }

    @AfterAll
    static void end() {
        ui.run(() -> ui.shell().setSize(before));
        window.giveUp();
    }

    @Test
    @Order(1)
    void checksAreSeen() {
        Tree findings = ui.ask(() -> ui.field(Tree.class, "findings"));
        ui.run(() -> findings.setTopItem(findings.getItem(0)));
        List<String> seen = ui.ask(() -> Stream.of(findings.getItems())
                .flatMap(group -> Stream.of(group.getItems()))
                .filter(item -> item.getData() instanceof Finding)
                .filter(item -> whole(findings, item))
                .map(TreeItem::getText)
                .toList());
        assertTrue(seen.size() >= CHECKS, seen.size() + " checks are seen: " + seen);
    }

    private static boolean whole(Tree findings, TreeItem item) {
        Rectangle row = item.getBounds();
        Rectangle area = findings.getClientArea();
        return row.height > 0
                && row.y >= area.y + findings.getHeaderHeight()
                && row.y + row.height <= area.y + area.height;
    }

    @Test
    @Order(2)
    void sumOfTheQuoteIsSeen() {
        CLabel heading = ui.ask(() -> ui.field(CLabel.class, "quote.heading"));
        String text = ui.ask(heading::getText);
        assertTrue(text.matches("\u00a3[\\d,.]+ with tax.*"), text);
        ui.run(() -> {
            Rectangle place = inShell(heading);
            Rectangle shell = ui.shell().getClientArea();
            assertEquals(place, place.intersection(shell), "in the window");
            GC gc = new GC(heading);
            int sum = gc.textExtent(text.substring(0, text.indexOf(' '))).x;
            gc.dispose();
            // What does not fit is cut in the middle: the sum stands first.
            assertTrue(place.width > 3 * sum, place + " has room for the sum, " + sum);
        });
    }

    private static Rectangle inShell(Control control) {
        return control.getDisplay().map(control.getParent(), ui.shell(), control.getBounds());
    }

    @Test
    @Order(3)
    void namesShrinkLastAndFiguresNever() {
        for (String field : List.of("quote", "options")) {
            Table table = ui.ask(() -> ui.field(Table.class, field));
            ui.run(() -> {
                GC gc = new GC(table);
                for (int column = 1; column < 4; column++) {
                    int at = column;
                    if (table.getColumn(at).getAlignment() == SWT.RIGHT) {
                        int widest = Stream.of(table.getItems())
                                .mapToInt(item -> gc.textExtent(item.getText(at)).x)
                                .max()
                                .orElse(0);
                        assertTrue(
                                table.getColumn(at).getWidth() >= widest,
                                field + ": a figure that is cut reads as another one, column " + at);
                    }
                }
                int name = table.getColumn(0).getWidth();
                int letters = gc.textExtent("n".repeat(12)).x;
                assertTrue(name >= letters, field + ": the name has " + name);
                gc.dispose();
            });
        }
    }

    /** A count that is cut reads as another one; then what says the same in words gives way, and the names at last. */
    @Test
    @Order(3)
    void talliesOfGroupsAreWhole() {
        Tree findings = ui.ask(() -> ui.field(Tree.class, "findings"));
        ui.run(() -> {
            GC gc = new GC(findings);
            for (TreeItem group : findings.getItems()) {
                gc.setFont(group.getFont(1));
                int tally = gc.textExtent(group.getText(1)).x;
                assertTrue(
                        findings.getColumn(1).getWidth() > tally,
                        group.getText(0) + ": " + group.getText(1) + " is " + tally + " wide, its column "
                                + findings.getColumn(1).getWidth());
            }
            int name = findings.getColumn(0).getWidth();
            assertTrue(name >= gc.textExtent("n".repeat(12)).x, "names have " + name);
            gc.dispose();
        });
    }

    @Test
    @Order(4)
    void everythingInTheWindowIsInside() {
        List<String> outside = ui.ask(() -> ui.all(Control.class, Control::isVisible).stream()
                .filter(control -> List.of("findings", "quote", "options", "status", "cautions", "pages")
                        .contains(String.valueOf(control.getData("twinfeed.field"))))
                .filter(control -> {
                    Rectangle place = inShell(control);
                    return !place.equals(place.intersection(ui.shell().getClientArea()));
                })
                .map(control -> control.getData("twinfeed.field") + " " + inShell(control))
                .toList());
        assertEquals(List.of(), outside);
    }

    @Test
    @Order(5)
    void shortenedTextIsReadUnderThePointer() {
        Table quote = ui.ask(() -> ui.field(Table.class, "quote"));
        ui.run(() -> {
            GC gc = new GC(quote);
            TableItem cut = Stream.of(quote.getItems())
                    .filter(item -> {
                        gc.setFont(item.getFont(0));
                        return gc.textExtent(item.getText(0)).x
                                > quote.getColumn(0).getWidth();
                    })
                    .findFirst()
                    .orElse(null);
            gc.dispose();
            if (cut != null) {
                Event pointer = new Event();
                pointer.x = cut.getBounds(0).x + 4;
                pointer.y = cut.getBounds(0).y + 4;
                quote.notifyListeners(SWT.MouseMove, pointer);
                assertEquals(cut.getText(0), quote.getToolTipText());
            }
        });
    }
}
