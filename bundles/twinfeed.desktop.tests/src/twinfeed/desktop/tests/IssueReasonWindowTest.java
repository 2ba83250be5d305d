// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.issued.IssueDialog;
import twinfeed.desktop.part.QuoteIssue;
import twinfeed.desktop.view.OptionTable;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.survey.CableSegment;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.usecase.choices.QuoteChoices;

/** What is not known to suit, or does not, is issued only for a reason that somebody types into the window. */
final class IssueReasonWindowTest extends DemoWindow {

    @BeforeAll
    static void open() throws Exception {
        copyDemo();
        openWithOneCandidate();
    }

    @AfterAll
    static void end() throws Exception {
        leave();
    }

    @AfterEach
    void undo() throws Exception {
        ui.run(() -> {
            Shell open = dialogue();
            if (open != null) {
                open.close();
            }
            while (job().session().edits().canUndo()) {
                job().session().edits().undo();
            }
        });
        window.settled();
    }

    private static Path office() {
        return folder.resolve("office");
    }

    private static Shell dialogue() {
        return ui.all(Shell.class, shell -> shell.getText().equals(WORDS.get("issue.title"))).stream()
                .findFirst()
                .orElse(null);
    }

    private static Button issueKey() {
        return ui.all(
                        Button.class,
                        button -> button.getShell() == dialogue()
                                && button.getText().equals(WORDS.get("issue.do")))
                .get(0);
    }

    private static void openDialogue() throws InterruptedException {
        Display display = ui.ask(() -> ui.shell().getDisplay());
        display.asyncExec(() -> new IssueDialog(ui.shell(), WORDS, office(), job().session()).open());
        ui.await("the dialogue is open", () -> dialogue() != null);
    }

    private static List<OptionAssessment> options() {
        return job().session().result().judged().record().getOptions();
    }

    /** The dialogue as it is opened, typed into and left; and the same past the dialogue. */
    private static void refusedUntilAReasonIsTyped(String picture) throws Exception {
        openDialogue();
        ui.await("the reason is asked for", () -> reason() != null);
        assertFalse(ui.ask(() -> issueKey().isEnabled()), "no reason was typed");
        ui.shoot(picture);
        ui.run(() -> reason().setText("   "));
        assertFalse(ui.ask(() -> issueKey().isEnabled()), "blanks are no reason");
        ui.run(() -> reason().setText("The customer wants a figure before the loft is opened."));
        assertTrue(ui.ask(() -> issueKey().isEnabled()));
        ui.run(() -> reason().setText(""));
        assertFalse(ui.ask(() -> issueKey().isEnabled()), "the reason was taken away again");
        ui.run(() -> dialogue().close());
        ui.run(() -> new QuoteIssue(job(), WORDS).issue(office(), null, "", ui.shell()));
        String said = ui.ask(() -> ui.field(CLabel.class, "status.action").getText());
        assertTrue(said.startsWith(begin("issue.refused")), said);
        assertNull(job().session().issued());
        assertFalse(Files.exists(office().resolve("quotes")), "nothing was written");
    }

    private static Text reason() {
        return ui
                .all(Text.class, each -> each.isVisible() && "issue.reason".equals(each.getData("twinfeed.field")))
                .stream()
                .findFirst()
                .orElse(null);
    }

    private static void withoutPressure() {
        ReadingPath pressure = ReadingPath.of(SurveyPackage.Literals.SURVEY, "water.test.staticPressure");
        ui.run(() -> job().session().edits().set(job().session().survey(), pressure.steps(), null));
    }

    @Test
    @Order(1)
    void suitingOptionNeedsNoReason() throws Exception {
        openDialogue();
        ui.await("the key is on", () -> issueKey().isEnabled());
        assertNull(ui.ask(IssueReasonWindowTest::reason));
    }

    @Test
    @Order(2)
    void optionThatCannotBeToldNeedsAReason() throws Exception {
        CableSegment loft = ui.ask(() -> job().session()
                .survey()
                .getElectricity()
                .getCircuit()
                .getSegments()
                .get(1));
        ReadingPath method = ReadingPath.of(SurveyPackage.Literals.CABLE_SEGMENT, "method");
        ui.run(() -> job().session().edits().set(loft, method.steps(), "C"));
        withoutPressure();
        window.settled();
        List<Verdict> verdicts = ui.ask(
                () -> options().stream().map(OptionAssessment::getVerdict).toList());
        assertTrue(verdicts.contains(Verdict.CANNOT_TELL), verdicts.toString());
        refusedUntilAReasonIsTyped("56-issue-cannot-tell");
    }

    @Test
    @Order(3)
    void optionThatDoesNotSuitNeedsAReasonAlthoughItIsOfferedByHand() throws Exception {
        // The cable in the loft fails, and no work is sought while the pressure is not known.
        withoutPressure();
        window.settled();
        List<OptionAssessment> unsuitable = ui.ask(() -> options().stream()
                .filter(each -> each.getVerdict() == Verdict.DOES_NOT_SUIT || each.getVerdict() == Verdict.NOT_AS_IT_IS)
                .toList());
        assertFalse(
                unsuitable.isEmpty(),
                ui.ask(() -> options().stream()
                                .map(OptionAssessment::getVerdict)
                                .toList())
                        .toString());
        List<String> keys = unsuitable.stream().map(OptionTable::offerKey).toList();
        ui.run(() ->
                job().session().quoteEdits().change(QuoteChoices.NONE.offering(keys, "The customer asked for it.")));
        window.settled();
        assertNotNull(ui.ask(() -> job().session().result().quote()));
        refusedUntilAReasonIsTyped("57-issue-does-not-suit");
    }
}
