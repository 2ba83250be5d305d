// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.part.CompletionPrint;
import twinfeed.desktop.session.CompletionPages;
import twinfeed.desktop.text.Words;
import twinfeed.model.io.JobFile;

/** The page after the work at the window: typed, judged, undone, saved, printed. The steps build on one another. */
final class CompletionWindowTest extends DemoWindow {
    @BeforeAll
    static void start() throws Exception {
        copyDemo();
        ui.run(() -> window.parts().open(folder.resolve("birch-syke.job")));
        ui.await("the job is open", () -> !window.parts().parts().isEmpty());
        ui.run(() -> job().survey().show(job().survey().size() - 1));
    }

    @AfterAll
    static void end() throws Exception {
        window.giveUp();
    }

    private static void judged() throws InterruptedException {
        ui.await("the readings are judged", () -> job().session().completion().current());
    }

    /** Types without leaving the field. */
    private static void type(String reading, String text) {
        ui.run(() -> ui.field(Text.class, "completion." + reading).setText(text));
    }

    private static void enter(String reading, String text) {
        type(reading, text);
        ui.run(() -> Ui.send(ui.field(Text.class, "completion." + reading), SWT.DefaultSelection));
    }

    private static void yes(String reading) {
        ui.run(() -> {
            CCombo combo = ui.field(CCombo.class, "completion." + reading);
            combo.select(combo.indexOf("yes"));
            Ui.send(combo, SWT.Selection);
        });
    }

    private static String state() {
        return ui.ask(() -> ui.field(Label.class, "completion.state").getText());
    }

    private static boolean said(String part) {
        return ui.ask(() -> ui.all(Label.class, Label::isVisible).stream()
                .anyMatch(label -> label.getText().contains(part)));
    }

    private static boolean enabled(String id) {
        return ui.ask(() -> ui.field(Button.class, id).isEnabled());
    }

    @Test
    @Order(1)
    void pageShowsEveryBandBeforeAnythingIsMeasured() throws Exception {
        judged();
        ui.shoot("70-after-the-work");
        assertTrue(state().startsWith("? Not complete"), state());
        assertTrue(said("at most 0.87 Ω") && said("at least 1.0 MΩ"));
        assertFalse(enabled("completion.notice"), "nothing fails on safety in this house");
        List<String> raw = ui.ask(() -> ui.all(Label.class, Label::isVisible).stream()
                .map(Label::getText)
                .filter(each -> each.matches("(?s).*(\\[[a-z]+\\.[A-Za-z.]+]|\\{[a-z]+}).*"))
                .toList());
        assertEquals(List.of(), raw, "texts without a message, or with a raw placeholder");
    }

    @Test
    @Order(2)
    void typedReadingIsJudgedBeforeItsFieldIsLeft() throws Exception {
        type("insulation", "0.02 Mohm");
        judged();
        assertTrue(state().startsWith("\u2717 Unsafe"), state());
        assertTrue(enabled("completion.notice"));
        assertFalse(ui.ask(() -> job().session().edits().dirty()), "nothing is kept yet");
        ui.shoot("71-after-the-work-unsafe");
        enter("insulation", "200 Mohm");
        judged();
        assertTrue(state().startsWith("? Not complete"), state());
        ui.run(() -> job().undo());
        judged();
        assertEquals(
                "", ui.ask(() -> ui.field(Text.class, "completion.insulation").getText()));
    }

    @Test
    @Order(3)
    void wholePageIsCompleteAndSavedAndPrinted() throws Exception {
        enter("by", "Demonstration engineer");
        enter("doneOn", "2026-10-20");
        for (String reading :
                List.of("cpcContinuous", "polaritySupply", "polarity", "residualButton", "tight", "shutsDown")) {
            yes(reading);
        }
        enter("line", "0.07 ohm");
        enter("bonding", "0.03 ohm");
        enter("insulation", "200 Mohm");
        enter("elements", "6.78 ohm");
        enter("externalLoop", "0.21 ohm");
        enter("loop", "0.28 ohm");
        enter("prospectiveFault", "1.2 kA");
        enter("residualTime", "24 ms");
        enter("loadedVoltage", "235 V");
        enter("runningPressure", "1.6 bar");
        enter("flow", "4.3 L/min");
        enter("intake", "12 C");
        enter("outlet", "40 C");
        judged();
        assertTrue(state().startsWith("\u2713 Complete"), state());
        ui.shoot("72-after-the-work-complete");
        assertTrue(ui.ask(() -> job().save()));
        assertEquals(
                "Demonstration engineer",
                JobFile.load(folder.resolve("birch-syke.job")).getCompletion().getBy());
        Path record = folder.resolve("record.pdf");
        ui.run(() -> new CompletionPrint(job(), ui.shell(), new Words(java.util.Locale.UK))
                .write(record, CompletionPages::record));
        assertTrue(Files.size(record) > 1000);
        assertTrue(said(begin("completion.done")));
        ui.shoot("73-after-the-work-printed");
    }
}
