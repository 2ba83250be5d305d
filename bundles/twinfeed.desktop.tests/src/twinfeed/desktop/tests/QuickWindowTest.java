// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.desktop.quick.QuickPart;
import twinfeed.desktop.window.JobParts;
import twinfeed.model.survey.Survey;
import twinfeed.units.Current;

/** A quick question is asked from the start page and becomes a job. The steps build on one another. */
@ExtendWith(Window.Shared.class)
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
final class QuickWindowTest {
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

    private static void type(String field, String text) {
        ui.run(() -> ui.field(Text.class, "quick.field." + field).setText(text));
    }

    private static List<String> answers() {
        return ui.ask(() -> Stream.of(ui.field(Table.class, "quick.answers").getItems())
                .map(QuickWindowTest::both)
                .toList());
    }

    private static String both(TableItem item) {
        return item.getText(0) + ": " + item.getText(1);
    }

    @Test
    @Order(1)
    void fiveEntriesGiveTheStrongestHeater() throws Exception {
        ui.run(() -> Ui.send(ui.field(Button.class, "start.quick"), SWT.Selection));
        ui.await("the page is there", () -> part() != null);
        ui.await(
                "it asks",
                () -> ui.all(
                                        Label.class,
                                        label -> label.isVisible()
                                                && "quick.trouble".equals(label.getData("twinfeed.field")))
                                .size()
                        == 1);
        ui.shoot("60-quick-empty");
        type("rating", "40");
        type("size", "10");
        type("length", "15");
        ui.run(() -> {
            CCombo method = ui.field(CCombo.class, "quick.field.method");
            method.select(List.of(method.getItems())
                    .indexOf(Stream.of(method.getItems())
                            .filter(each -> each.startsWith("C "))
                            .findFirst()
                            .orElseThrow()));
            Ui.send(method, SWT.Selection);
        });
        assertTrue(
                answers().contains(DemoWindow.word("quick.answer.power") + ": 9.60 kW at 240 V"),
                answers().toString());
        assertTrue(
                answers().contains(DemoWindow.word("quick.answer.binds") + ": the breaker or fuse sets the limit"),
                answers().toString());
        assertFalse(answers().stream().anyMatch(each -> each.startsWith(DemoWindow.word("quick.answer.delivered"))));
        type("supply", "230");
        assertTrue(
                answers().stream()
                        .anyMatch(each -> each.startsWith(DemoWindow.word("quick.answer.delivered") + ": 8.6")),
                answers().toString());
        ui.run(() -> Ui.send(ui.field(Text.class, "quick.field.rating"), SWT.FocusOut));
        assertEquals(
                "40 A", ui.ask(() -> ui.field(Text.class, "quick.field.rating").getText()));
        ui.shoot("61-quick-strongest");
    }

    @Test
    @Order(2)
    void readingsBecomeAJob() throws Exception {
        Survey survey = ui.ask(() -> part().survey().orElseThrow());
        ui.run(() -> window.parts()
                .create(folder.resolve("quick.job"), window.demo().resolve("heaters.catalogue"), () -> survey));
        ui.await("the job is open", () -> !window.parts().parts().isEmpty());
        window.settled();
        assertEquals(
                Current.valueOf("40 A"),
                window.job()
                        .session()
                        .survey()
                        .getElectricity()
                        .getCircuit()
                        .getDevice()
                        .getRating());
        ui.shoot("62-quick-job");
    }

    @Test
    @Order(3)
    void otherWayRoundAsksForTheHeater() throws Exception {
        ui.run(() -> window.parts().showQuick());
        ui.run(() -> {
            ui.field(Button.class, "quick.strongest").setSelection(false);
            Button needed = ui.field(Button.class, "quick.needed");
            needed.setSelection(true);
            Ui.send(needed, SWT.Selection);
        });
        type("power", "9.5");
        assertTrue(
                answers().contains(DemoWindow.word("quick.answer.device") + ": 40.0 A"),
                answers().toString());
        assertTrue(
                answers().contains(DemoWindow.word("quick.answer.cable") + ": 6.00 mm²"),
                answers().toString());
        ui.shoot("63-quick-needed");
    }

    private static QuickPart part() {
        return window.partService().findPart(JobParts.QUICK).getObject() instanceof QuickPart quick ? quick : null;
    }
}
