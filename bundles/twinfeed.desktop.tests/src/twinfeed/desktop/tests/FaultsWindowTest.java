// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.view.CauseRow;
import twinfeed.model.io.JobFile;
import twinfeed.model.survey.IsolationTick;

/** A fault-finding at the window: answers, ranked causes, safe isolation, dead tests. The steps build on one another. */
final class FaultsWindowTest extends DemoWindow {
    /** Number of the page. */
    private static final int FAULTS = 2;

    private static final List<String> PROCEDURE = List.of(
            "showerOff",
            "breakerLocked",
            "noticeUp",
            "isolatorOpen",
            "waterShut",
            "testerProvedBefore",
            "deadAtTerminals",
            "testerProvedAfter");

    @BeforeAll
    static void start() throws Exception {
        copyDemo();
        window.open(folder);
        ui.run(() -> job().survey().show(FAULTS));
    }

    @AfterAll
    static void end() throws Exception {
        window.giveUp();
    }

    private static void looked() throws InterruptedException {
        ui.await(
                "the sheet is there",
                () -> job().session().faults().current()
                        && job().session().faults().result().sheet() != null);
    }

    private static void priced() throws InterruptedException {
        ui.await(
                "the sheet is priced",
                () -> job().session().faults().current()
                        && job().session().faults().result().priced());
    }

    @SuppressWarnings("unchecked")
    private static List<CauseRow> causes() {
        return ui.ask(() -> (List<CauseRow>) ui.field(Canvas.class, "causes").getData("twinfeed.rows"));
    }

    private static void press(String id) {
        ui.run(() -> Ui.send(ui.field(Button.class, id), SWT.Selection));
    }

    private static boolean selected(String id) {
        return ui.ask(() -> ui.field(Button.class, id).getSelection());
    }

    private static boolean enabled(String id) {
        return ui.ask(() -> ui.field(Button.class, id).isEnabled());
    }

    private static String text(String id) {
        return ui.ask(() -> ui.field(Label.class, id).getText());
    }

    @Test
    @Order(1)
    void pageShowsWhatWasReportedAndWhatFollows() throws Exception {
        looked();
        priced();
        ui.shoot("30-faults");
        assertTrue(selected("answer.goesColdWhenTapOpens.yes"), "the demonstration's customer says so");
        assertFalse(text("faults.summary").isBlank());
        CauseRow first = causes().get(0);
        assertTrue(first.percent().endsWith("%") && !first.word().isBlank(), first.sentence());
        assertTrue(causes().get(0).share() >= causes().get(1).share(), "likeliest first");
        List<String> raw = ui.ask(() -> ui.all(Label.class, Label::isVisible).stream()
                .map(Label::getText)
                .filter(each -> each.matches("(?s).*(\\[[a-z]+\\.[A-Za-z.]+]|survey\\.).*"))
                .toList());
        assertEquals(List.of(), raw, "texts without a message, or paths of the model");
    }

    @Test
    @Order(2)
    void answerChangesTheRankingAndUndoTakesItBack() throws Exception {
        List<CauseRow> before = causes();
        press("answer.otherTapsWeak.no");
        press("answer.onlyTheHeatFails.yes");
        looked();
        assertNotEquals(before, causes());
        assertTrue(selected("answer.onlyTheHeatFails.yes"));
        assertEquals("Demonstration engineer", ui.ask(() -> job().session()
                .faults()
                .recorded("onlyTheHeatFails")
                .orElseThrow()
                .getBy()));
        ui.run(() -> job().undo());
        ui.run(() -> job().undo());
        looked();
        assertEquals(before, causes());
        assertFalse(selected("answer.onlyTheHeatFails.yes"));
    }

    @Test
    @Order(3)
    void pressingAnAnswerAgainTakesItBack() throws Exception {
        press("answer.isolatorHot.unknown");
        assertTrue(selected("answer.isolatorHot.unknown"));
        press("answer.isolatorHot.unknown");
        assertFalse(selected("answer.isolatorHot.unknown"));
        assertTrue(ui.ask(() -> job().session().faults().recorded("isolatorHot").isEmpty()));
    }

    /** With nothing more to be learned from outside, the next step opens the cover, and says what comes before that. */
    @Test
    @Order(4)
    void stepUnderTheCoverAsksForTheIsolationFirst() throws Exception {
        for (int i = 0; i < 40 && next() != null && next().procedure().isEmpty(); i++) {
            press("answer." + next().observation() + ".unknown");
            looked();
        }
        assertEquals("cover", next().place());
        assertEquals(PROCEDURE.size(), next().procedure().size());
        List<Button> answers =
                ui.ask(() -> ui.all(Button.class, button -> String.valueOf(button.getData("twinfeed.field"))
                        .startsWith("next.")));
        assertEquals(List.of(), answers, "no answer is at hand before the isolation is done");
        press("faults.toIsolation");
        ui.shoot("31-cover-step");
        ui.await(
                "the isolation can be seen",
                () -> ui.shell().getDisplay().map(ui.field(Button.class, "isolation.showerOff"), ui.shell(), 0, 0).y
                        < ui.shell().getClientArea().height);
    }

    private static twinfeed.diagnosis.visit.FaultSheet.Next next() {
        return ui.ask(() -> job().session().faults().result().sheet().next());
    }

    @Test
    @Order(5)
    void coverStaysOnUntilEveryStepIsTicked() throws Exception {
        looked();
        assertFalse(enabled("answer.elementOpen.yes"));
        assertFalse(
                ui.ask(() -> ui.field(Text.class, "survey.faultFinding.coil").isEnabled()));
        assertTrue(ui.ask(() ->
                ui.field(Text.class, "survey.faultFinding.runningPressure").isEnabled()));
        assertThrowsRefusal();
        for (int i = 0; i < PROCEDURE.size(); i++) {
            String step = "isolation." + PROCEDURE.get(i);
            looked();
            ui.await("the step can be ticked", () -> enabled(step));
            // The water may be shut at any time.
            if (i < PROCEDURE.size() - 1 && !PROCEDURE.get(i + 1).equals("waterShut")) {
                assertFalse(enabled("isolation." + PROCEDURE.get(i + 1)), "one after the other");
            }
            press(step);
            looked();
            ui.await("it is ticked", () -> selected(step));
            if (i == 2) {
                ui.await("the next can be ticked", () -> enabled("isolation.isolatorOpen"));
                ui.shoot("32-isolation");
            }
        }
        ui.await("the dead tests are open", () -> enabled("answer.elementOpen.yes"));
        assertTrue(ui.ask(() -> ui.field(Text.class, "survey.faultFinding.coil").isEnabled()));
        List<IsolationTick> ticks = job().session().survey().getFaultFinding().getIsolation();
        assertEquals(PROCEDURE, ticks.stream().map(IsolationTick::getStep).toList());
        assertTrue(ticks.stream()
                .allMatch(tick -> "Demonstration engineer".equals(tick.getBy())
                        && tick.getAt().matches("\\d{4}-\\d\\d-\\d\\d \\d\\d:\\d\\d")));
    }

    private static void assertThrowsRefusal() {
        assertEquals("refused", ui.ask(() -> {
            try {
                job().session().faults().answer("elementOpen", "yes");
                return "taken";
            } catch (twinfeed.model.io.InputException refused) {
                return "refused";
            }
        }));
    }

    @Test
    @Order(6)
    void ticksCannotBeUndone() throws Exception {
        ui.run(() -> job().undo());
        looked();
        assertEquals(
                PROCEDURE.size(),
                job().session().survey().getFaultFinding().getIsolation().size());
        assertTrue(ui.ask(() -> window.parts().parts().get(0).isDirty()));
        ui.run(() -> job().save());
        assertEquals(
                PROCEDURE.size(),
                JobFile.load(folder.resolve("alder-beck.job"))
                        .getSurvey()
                        .getFaultFinding()
                        .getIsolation()
                        .size());
    }

    @Test
    @Order(7)
    void deadTestIsAnsweredAndRepairIsComparedWithReplacement() throws Exception {
        press("answer.goesColdWhenTapOpens.yes");
        press("answer.halfHeatSlowestSetting.yes");
        press("answer.elementOpen.yes");
        looked();
        priced();
        assertEquals("Heating elements", causes().get(0).title());
        assertTrue(text("faults.summary").contains("heating elements"), text("faults.summary"));
        List<String> shown = ui.ask(() -> ui.all(Label.class, Label::isVisible).stream()
                .map(Label::getText)
                .toList());
        assertTrue(shown.contains(WORDS.get("repair.repaired")), shown.toString());
        assertTrue(shown.stream().anyMatch(each -> each.startsWith("£")), "figures");
        ui.shoot("33-repair");
        ui.run(() -> scroll(ui.field(Canvas.class, "causes"), 700));
        ui.shoot("34-repair-below");
    }

    private static void scroll(Control inside, int to) {
        Composite parent = inside.getParent();
        while (!(parent instanceof org.eclipse.swt.custom.ScrolledComposite scroll)) {
            parent = parent.getParent();
        }
        scroll.setOrigin(0, to);
    }

    @Test
    @Order(8)
    void isolationThatBeginsAgainLeavesItsRecordBehind() throws Exception {
        ui.run(() -> job().session().faults().beginIsolationAgain());
        looked();
        ui.await("the first step is open", () -> enabled("isolation.showerOff"));
        assertFalse(enabled("answer.elementOpen.yes"));
        assertTrue(job().session().survey().getFaultFinding().getIsolation().isEmpty());
        assertTrue(job().session()
                .survey()
                .getFaultFinding()
                .getSteps()
                .get(0)
                .getWhat()
                .contains(PROCEDURE.size() + " steps"));
        assertFalse(text("isolation.notice").isBlank(), "what was found under the cover has no isolation any more");
        ui.shoot("35-isolation-again");
    }

    @Test
    @Order(9)
    void nobodyAnswersWithoutAName() throws Exception {
        ui.run(() -> {
            job().session()
                    .edits()
                    .set(
                            job().session().survey(),
                            List.of(twinfeed.model.survey.SurveyPackage.Literals.SURVEY__TAKEN_BY),
                            null);
            ui.field(Text.class, "faults.by").setText("");
        });
        press("answer.waterRunsOn.yes");
        List<String> complaints = ui.ask(() -> ui
                .all(
                        Label.class,
                        label -> "faults.complaint".equals(label.getData("twinfeed.field")) && label.isVisible())
                .stream()
                .map(Label::getText)
                .toList());
        assertEquals(1, complaints.size(), complaints.toString());
        assertFalse(selected("answer.waterRunsOn.yes"));
    }
}
