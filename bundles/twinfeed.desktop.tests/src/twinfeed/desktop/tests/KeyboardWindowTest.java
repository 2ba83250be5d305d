// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.model.assessment.Finding;
import twinfeed.model.io.JobFile;
import twinfeed.model.survey.LoadKind;

/** An estimator's sitting by the keyboard alone: from the start page to a changed, saved job, without touching a mouse. */
final class KeyboardWindowTest extends DemoWindow {
    private static final String STATIC = "survey.water.test.staticPressure";
    private static final int WATER = 3;

    /** Number of the page with the other loads. */
    private static final int LOADS = 7;

    @BeforeAll
    static void start() throws Exception {
        copyDemo();
        ui.takeKeys(() -> ui.field(Button.class, "start.quick"));
    }

    @AfterAll
    static void end() {
        window.giveUp();
    }

    private static String margin() {
        return ui.ask(() -> Stream.of(ui.field(Tree.class, "findings").getItems())
                .flatMap(group -> Stream.of(group.getItems()))
                .filter(item -> item.getData() instanceof Finding finding
                        && finding.getKey().equals("pressure.static"))
                .map(item -> item.getText(3))
                .findFirst()
                .orElse(""));
    }

    @Test
    @Order(1)
    void demonstrationIsOpenedFromTheStartPage() throws Exception {
        ui.tabTo("start.demo");
        ui.write(" ");
        ui.await("the job is open", () -> !window.parts().parts().isEmpty());
        window.settled();
    }

    @Test
    @Order(2)
    void readingIsChangedAndTheChangeTakenBack() throws Exception {
        for (int i = 1; i <= WATER; i++) {
            int page = i;
            // A page that has just been built puts the cursor into its first field a little later; a key pressed before
            // goes nowhere.
            ui.await(
                    "the cursor is in page " + (page - 1),
                    () -> ui.shell().getDisplay().getFocusControl() != null);
            ui.key(SWT.ALT, SWT.PAGE_DOWN);
            ui.await("page " + page, () -> job().survey().shown() == page);
        }
        ui.tabTo(STATIC);
        String before = margin();
        ui.command('a');
        ui.write("4.1 bar");
        ui.key(0, SWT.CR);
        ui.await("it is taken", () -> job().session().edits().dirty());
        ui.await("it is judged", () -> job().session().glanced());
        assertTrue(ui.ask(() -> ui.field(Text.class, STATIC).getText()).startsWith("4.1 bar"));
        assertNotEquals(before, margin());
        ui.command('z');
        ui.await("it is taken back", () -> !job().session().edits().dirty());
        ui.await("it is judged", () -> job().session().glanced());
        assertEquals(before, margin());
        ui.command('y');
        ui.await("it is there again", () -> job().session().edits().dirty());
    }

    @Test
    @Order(3)
    void letterChoosesTheNextAnswerThatBeginsWithIt() throws Exception {
        String kind = "survey.electricity.loads[cooker].kind";
        ui.run(() -> job().survey().show(LOADS));
        ui.draw();
        // The cursor stands in a piece of the list of answers, which hides its pieces.
        ui.takeKeys(() -> {
            ui.field(CCombo.class, kind).setFocus();
            return ui.shell().getDisplay().getFocusControl();
        });
        ui.write("s");
        ui.await("it is chosen", () -> ui.field(CCombo.class, kind).getText().startsWith("socket"));
        ui.await(
                "it is taken",
                () -> LoadKind.SOCKETS
                        == job().session()
                                .survey()
                                .getElectricity()
                                .getLoads()
                                .get(0)
                                .getKind());
        ui.run(() -> job().undo());
        ui.await(
                "it is taken back", () -> ui.field(CCombo.class, kind).getText().startsWith("cooker"));
    }

    @Test
    @Order(4)
    void panesAreReachedOneAfterTheOther() throws Exception {
        window.settled();
        ui.key(0, SWT.F6);
        ui.await("the findings", () -> inside(ui.field(Tree.class, "findings")));
        ui.key(0, SWT.F6);
        ui.await("the options", () -> inside(ui.field(Table.class, "options")));
        ui.key(0, SWT.ARROW_DOWN);
        ui.await("another heater is looked at", () -> job().session().chosen() != null);
        ui.key(0, SWT.F6);
        ui.await("the survey again", () -> !inside(ui.field(Table.class, "options")));
    }

    private static boolean inside(Control control) {
        return control.getDisplay().getFocusControl() == control;
    }

    @Test
    @Order(5)
    void jobIsSavedAndItsTabClosed() throws Exception {
        Path file = ui.ask(() -> job().session().file());
        ui.command('s');
        ui.await("it is saved", () -> !job().session().edits().dirty());
        assertTrue(JobFile.load(file)
                .getSurvey()
                .getWater()
                .getTest()
                .getStaticPressure()
                .toString()
                .startsWith("4.1 bar"));
        ui.command('w');
        ui.await("it is closed", () -> window.parts().parts().isEmpty());
    }
}
