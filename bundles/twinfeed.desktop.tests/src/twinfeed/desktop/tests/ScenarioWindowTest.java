// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.issued.IssueDialog;
import twinfeed.desktop.part.QuoteIssue;
import twinfeed.desktop.text.Words;

/**
 * What an estimator, an installer, somebody who takes a call about a fault and the office see, as pictures for people to look at. Nothing
 * here depends on the language; the pom runs it in English and German, in a light and in a dark theme.
 */
final class ScenarioWindowTest extends DemoWindow {
    private static final String SUFFIX = System.getProperty("twinfeed.shots.suffix", "");
    private static final int FAULTS = 2;
    private static final int CIRCUIT = 6;
    private static final int COMPLETION = 9;

    private static Words words;

    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        words = new Words(Locale.getDefault());
        chooseOffice(folder);
        openWithOneCandidate();
    }

    @AfterAll
    static void end() throws Exception {
        leave();
    }

    private static void shoot(String name) throws InterruptedException {
        Thread.sleep(200);
        ui.shoot(name + SUFFIX);
        List<String> lacking = ui.ask(() -> Stream.concat(
                        ui.all(Label.class, Label::isVisible).stream().map(Label::getText),
                        ui.all(Button.class, Button::isVisible).stream().map(Button::getText))
                .filter(text -> text.matches(".*\\[[A-Za-z]+(\\.[A-Za-z]+)+].*"))
                .toList());
        assertEquals(List.of(), lacking, "texts without a message");
    }

    @Test
    @Order(1)
    void estimator() throws Exception {
        ui.run(() -> job().survey().show(CIRCUIT));
        shoot("80-estimator-checks");
        tab(1);
        shoot("81-estimator-charts");
        tab(2);
        ui.await(
                "the page is there",
                () -> ui.field(StyledText.class, "customerPage").getCharCount() > 100);
        shoot("82-estimator-customers-page");
        tab(0);
        Display display = ui.ask(() -> ui.shell().getDisplay());
        display.asyncExec(() -> new IssueDialog(ui.shell(), words, folder, job().session()).open());
        ui.await("the dialogue is open", () -> dialogue() != null);
        shoot("83-estimator-issue");
        ui.run(() -> dialogue().close());
    }

    private static Shell dialogue() {
        return ui.all(Shell.class, shell -> shell.getText().equals(words.get("issue.title"))).stream()
                .findFirst()
                .orElse(null);
    }

    @Test
    @Order(2)
    void callerWithAFault() throws Exception {
        ui.run(() -> job().survey().show(FAULTS));
        ui.await(
                "causes are ranked",
                () -> job().session().faults().result() != null
                        && job().session().faults().current());
        shoot("84-fault");
        assertFalse(job().session().faults().result().sheet().causes().isEmpty());
    }

    @Test
    @Order(3)
    void installer() throws Exception {
        ui.run(() -> job().survey().show(COMPLETION));
        shoot("85-installer-after-the-work");
    }

    @Test
    @Order(4)
    void office() throws Exception {
        ui.run(() -> job().survey().show(0));
        window.settled();
        ui.run(() -> new QuoteIssue(job(), words).issue(folder, null, "", ui.shell()));
        shoot("86-office-issued");
        ui.run(() -> window.parts().showIssued());
        ui.await("jobs are listed", () -> ui.field(Table.class, "issued").getItemCount() > 4);
        ui.run(() -> {
            Table table = ui.field(Table.class, "issued");
            table.setSelection(0);
            Ui.send(table, SWT.Selection);
        });
        shoot("87-office-list");
        ui.run(() -> window.parts().showSettings());
        shoot("88-office-settings");
        assertTrue(ui.ask(() -> ui.all(CCombo.class, CCombo::isVisible).size()) > 1);
    }
}
