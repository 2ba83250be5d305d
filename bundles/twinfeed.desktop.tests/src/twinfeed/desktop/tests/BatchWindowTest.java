// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.batch.BatchPart;
import twinfeed.desktop.window.JobParts;

/** A list of dwellings at the window: files, progress, result in order of urgency, one row as a job. */
final class BatchWindowTest extends DemoWindow {
    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        Offices.onlyOneCandidate(folder);
        ui.run(() -> window.parts().showBatch());
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    private static BatchPart batch() {
        return (BatchPart) window.partService().findPart(JobParts.BATCH).getObject();
    }

    private static String state() {
        return ui.field(Label.class, "batch.state").getText();
    }

    private static Button key(String field) {
        return ui.field(Button.class, field);
    }

    private static List<String> column(int number) {
        return ui.ask(() -> Stream.of(ui.field(Table.class, "batch.rows").getItems())
                .map(item -> item.getText(number))
                .toList());
    }

    @Test
    @Order(1)
    void whatIsStillToBeChosenIsSaid() {
        assertEquals(
                WORDS.format("batch.problem.none", Map.of("what", WORDS.get("batch.list"))),
                ui.ask(BatchWindowTest::state));
        assertFalse(ui.ask(() -> key("batch.judge").isEnabled()));
        ui.run(() -> batch().set("batch.list", folder.resolve("dwellings.pdf").toString()));
        assertTrue(ui.ask(() -> state().contains("its name must end in .csv, .xlsx")));
        ui.run(() -> {
            batch().set("batch.list", folder.resolve("dwellings.csv").toString());
            batch().set("batch.like", folder.resolve("alder-beck.job").toString());
            batch().set("batch.book", folder.resolve("prices.csv").toString());
            batch().set("batch.out", folder.resolve("out.xlsx").toString());
        });
        assertEquals("", ui.ask(BatchWindowTest::state));
        assertTrue(ui.ask(() -> key("batch.judge").isEnabled()));
    }

    @Test
    @Order(2)
    void stoppedListWritesNothing() throws Exception {
        ui.run(() -> {
            batch().start();
            batch().stop();
        });
        ui.await("it is stopped", () -> state().equals(WORDS.get("batch.stopped")));
        assertFalse(Files.exists(folder.resolve("out.xlsx")));
        assertEquals(WORDS.get("batch.stopped"), ui.ask(DemoWindow::action), "said at the foot of the window too");
    }

    @Test
    @Order(3)
    void listIsJudgedMostUrgentFirst() throws Exception {
        ui.run(() -> Ui.send(key("batch.judge"), SWT.Selection));
        assertFalse(ui.ask(() -> key("batch.judge").isEnabled()), "one at a time");
        ui.await("it is done", () -> key("batch.look").isEnabled());
        assertTrue(Files.isRegularFile(folder.resolve("out.xlsx")));
        assertEquals(
                WORDS.format(
                        "status.done.judged", Map.of("judged", 6, "rejected", 2, "file", folder.resolve("out.xlsx"))),
                ui.ask(DemoWindow::action));
        List<String> urgency = column(1);
        assertEquals(
                urgency.stream().filter(each -> each.matches("\\d.*")).sorted().toList(),
                urgency.stream().filter(each -> each.matches("\\d.*")).toList());
        assertTrue(
                urgency.stream().anyMatch(each -> each.equals("✗ " + WORDS.get("batch.rejected"))), urgency.toString());
        assertTrue(column(4).stream().anyMatch(each -> each.startsWith("£")));
        ui.shoot("59-dwellings");
    }

    @Test
    @Order(4)
    void rowBecomesAJob() throws Exception {
        ui.run(() -> {
            Table table = ui.field(Table.class, "batch.rows");
            table.setSelection(0);
            Ui.send(table, SWT.Selection);
        });
        assertTrue(ui.ask(() -> key("batch.open").isEnabled()));
        Path job = folder.resolve("one.job");
        String dwelling = column(0).get(0);
        ui.run(() -> batch().openAsJob(batch().chosen(), job));
        ui.await("it is open", () -> window.parts().parts().size() == 1);
        assertEquals(dwelling, window.job().session().survey().getSite().getName(), "with the readings of its row");
        assertEquals(
                WORDS.format("status.done.created", Map.of("file", job)),
                ui.ask(DemoWindow::action),
                "said once its page is in front");
        ui.await("it is judged", () -> window.job().session().glanced());
        ui.shoot("59a-row-as-job");
    }
}
