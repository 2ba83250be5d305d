// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.issued.IssueDialog;
import twinfeed.desktop.office.OfficePart;
import twinfeed.desktop.part.QuoteIssue;
import twinfeed.desktop.window.JobParts;
import twinfeed.model.survey.SurveyPackage;
import twinfeed.usecase.quote.IssuedQuote;

/** Quotes are issued, reopened, revised, compared and decided at the window. The steps build on one another. */
final class IssueWindowTest extends DemoWindow {

    @BeforeAll
    static void start() throws Exception {
        copyDemo();
        chooseOffice(office());
        openWithOneCandidate();
    }

    @AfterAll
    static void end() throws Exception {
        leave();
    }

    private static Path office() {
        return folder.resolve("office");
    }

    private static Path quote(int revision) {
        return office().resolve("quotes")
                .resolve(job().session().issued().quote().getNumber() + "-r" + revision + ".quote");
    }

    private static OfficePart list() {
        MPart part = window.partService().findPart(JobParts.ISSUED);
        return (OfficePart) part.getObject();
    }

    /** The line of a revision in the office's list. */
    private static Optional<TableItem> row(int revision) {
        String name = job().session().issued().quote().getNumber() + "-r" + revision;
        return ui.ask(() -> Stream.of(ui.field(Table.class, "issued").getItems())
                .filter(item -> item.getText(0).equals(name))
                .findFirst());
    }

    private static String cell(int revision, int column) {
        return ui.ask(() -> row(revision).map(item -> item.getText(column)).orElse(""));
    }

    private static List<String> cells(String table, int column) {
        return ui.ask(() -> Stream.of(ui.field(Table.class, table).getItems())
                .map(item -> item.getText(column))
                .toList());
    }

    @Test
    @Order(1)
    void confirmationSaysWhatIsFrozen() throws Exception {
        openDialogue();
        String texts =
                String.join("\n", ui.ask(() -> ui.all(Label.class, label -> label.getShell() == dialogue()).stream()
                        .map(Label::getText)
                        .toList()));
        assertTrue(texts.contains("SHA-256") && texts.contains("cannot be undone"), texts);
        assertTrue(texts.contains("Netherquill Lettings") && texts.contains("3 Alder Beck"), texts);
        assertTrue(texts.contains("Demonstration prices (invented)"), texts);
        assertFalse(cells("issue.options", 1).isEmpty(), "each option with its verdict");
        assertTrue(cells("issue.options", 2).get(0).startsWith("£"), "and its total");
        ui.await("the key is on", () -> issueKey().isEnabled());
        ui.shoot("50-issue-dialogue");
        assertEquals(
                List.of("a quote with a number of its own"),
                ui.ask(() -> List.of(ui.all(CCombo.class, combo -> combo.getShell() == dialogue())
                        .get(0)
                        .getItems())));
        ui.run(() -> dialogue().close());
        assertFalse(Files.exists(office()), "looking issues nothing");
    }

    @Test
    @Order(1)
    void quoteWithoutCustomerOrByInventedPricesIsNotIssued() throws Exception {
        ReadingPath name = ReadingPath.of(SurveyPackage.Literals.SURVEY, "customer.name");
        ui.run(() -> job().session().edits().set(job().session().survey(), name.steps(), null));
        window.settled();
        assertTrue(ui.ask(() -> job().session().result().quote() == null), "no invented price stands in silently");
        assertTrue(ui.ask(() -> ui.all(Label.class, Label::isVisible).stream()
                .anyMatch(label -> label.getText().startsWith(WORDS.get("quote.noBook")))));
        ui.shoot("50a-no-prices");
        openDialogue();
        String refusals = ui.ask(() -> ui.field(Label.class, "issue.refusals").getText());
        assertTrue(
                refusals.contains(WORDS.get("issue.refusal.noCustomer"))
                        && refusals.contains(WORDS.get("issue.refusal.noPrices")),
                refusals);
        assertFalse(ui.ask(() -> issueKey().isEnabled()));
        ui.shoot("50b-issue-refused");
        ui.run(() -> dialogue().close());
        ui.run(() -> job().session().edits().undo());
        window.settled();
    }

    private static void openDialogue() throws InterruptedException {
        ui.run(() -> ui.shell()
                .getDisplay()
                .asyncExec(() -> new IssueDialog(ui.shell(), WORDS, office(), job().session()).open()));
        ui.await("the dialogue is open", () -> dialogue() != null);
    }

    private static Button issueKey() {
        return key("issue.do");
    }

    private static Button key(String text) {
        return ui.all(
                        Button.class,
                        button -> button.isVisible()
                                && button.getShell().getParent() != null
                                && button.getText().equals(WORDS.get(text)))
                .get(0);
    }

    private static Shell dialogue() {
        return ui.all(Shell.class, shell -> shell.getText().equals(WORDS.get("issue.title"))).stream()
                .findFirst()
                .orElse(null);
    }

    @Test
    @Order(2)
    void quoteIsIssuedAndItsStateIsShown() {
        ui.run(() -> new QuoteIssue(job(), WORDS).issue(office(), null, "", ui.shell()));
        IssuedQuote issued = job().session().issued();
        assertTrue(issued.unchanged());
        assertEquals(1, issued.quote().getRevision());
        assertTrue(Files.isRegularFile(quote(1)));
        assertFalse(
                quote(1).toFile().canWrite() && !System.getProperty("user.name").equals("root"));
        assertTrue(ui.ask(() -> ui.field(Label.class, "quote.issued").getText()).contains(issued.name()));
        assertEquals(
                "alder-beck (" + issued.name() + ": issued, open)",
                ui.ask(() -> window.parts().parts().get(0).getLabel()));
        ui.shoot("51-issued");
        press("Write its workbook beside it");
        assertTrue(Files.isRegularFile(quote(1).resolveSibling(issued.name() + ".xlsx")));
    }

    private static void press(String text) {
        ui.run(() -> Ui.send(
                ui.all(
                                Button.class,
                                button -> button.isVisible() && button.getText().equals(text))
                        .get(0),
                SWT.Selection));
    }

    @Test
    @Order(3)
    void revisionIsComparedLineByLine() throws Exception {
        ReadingPath address = ReadingPath.of(SurveyPackage.Literals.SURVEY, "water.test.runningPressure");
        ui.run(() -> job().session()
                .edits()
                .set(job().session().survey(), address.steps(), twinfeed.units.Pressure.valueOf("2.0 bar ± 0.05 bar")));
        ui.await("everything is worked out", () -> job().session().current());
        Path first = quote(1);
        ui.run(() -> new QuoteIssue(job(), WORDS).issue(office(), first, "", ui.shell()));
        assertEquals(2, job().session().issued().quote().getRevision());
        openDialogue();
        assertTrue(
                ui.ask(() -> ui.all(CCombo.class, combo -> combo.getShell() == dialogue())
                                .get(0)
                                .getText())
                        .contains("next revision of " + job().session().issued().name()),
                "issuing again proposes a revision");
        ui.run(() -> dialogue().close());
        ui.run(() -> window.parts().showIssued());
        ui.await("both are listed", () -> row(1).isPresent() && row(2).isPresent());
        assertEquals("→ superseded", cell(1, 4));
        assertEquals("○ issued, open", cell(2, 4));
        assertEquals("– the customer has time to answer", cell(2, 6));
        ui.run(() -> list().choose(quote(2)));
        assertTrue(cells("issued.lines", 0).size() > 5, "what was issued is read again");
        ui.shoot("52-issued-quotes");
        ui.run(() -> Ui.send(ui.field(Button.class, "issued.compare"), SWT.Selection));
        ui.await("they are compared", () -> !ui.all(
                        Table.class,
                        table -> table.isVisible() && "issued.differences".equals(table.getData("twinfeed.field")))
                .isEmpty());
        ui.shoot("53-compared");
        List<String> what = cells("issued.differences", 2);
        assertTrue(what.stream().noneMatch(each -> each.matches(".*\\[.*|[a-z-]+: .*")), what.toString());
        assertFalse(cells("issued.differences", 0).isEmpty());
    }

    @Test
    @Order(4)
    void customerAcceptsAndTheQuoteIsClosed() throws Exception {
        IssuedQuote open = job().session().issued();
        assertTrue(ui.ask(() -> ui.field(Button.class, "issued.accept").isEnabled()));
        ui.run(() -> ui.shell()
                .getDisplay()
                .asyncExec(() -> Ui.send(ui.field(Button.class, "issued.accept"), SWT.Selection)));
        ui.await("it asks which option", () -> question() != null);
        List<Button> answers = ui.ask(() -> ui.all(
                Button.class, button -> button.getShell() == question() && (button.getStyle() & SWT.RADIO) != 0));
        assertTrue(ui.ask(() -> answers.stream().noneMatch(Button::getSelection)), "nothing is chosen beforehand");
        assertTrue(ui.ask(() -> answers.get(0).getText()).contains("£"), "with its price");
        assertFalse(ui.ask(() -> key("issued.accept.do").isEnabled()));
        ui.shoot("52a-accept");
        ui.run(() -> {
            answers.get(0).setSelection(true);
            Ui.send(answers.get(0), SWT.Selection);
        });
        assertTrue(ui.ask(() -> key("issued.accept.do").isEnabled()));
        ui.run(() -> question().close());
        String option = open.quote().getOptions().get(0).getName();
        ui.run(() -> list().accept(open, option));
        ui.await("it is accepted", () -> cell(2, 4).equals("✓ accepted"));
        assertFalse(ui.ask(() -> ui.field(Button.class, "issued.accept").isEnabled()));
        ui.run(() -> list().decline(open));
        ui.await("it is refused", () -> ui.all(Label.class, Label::isVisible).stream()
                .anyMatch(label -> "issued.trouble".equals(label.getData("twinfeed.field"))
                        && label.getText().contains("accepted")));
        ui.await(
                "the tab says it",
                () -> window.parts().parts().get(0).getLabel().contains("accepted"));
    }

    @Test
    @Order(5)
    void decisionRecordedByMistakeIsTakenBack() throws Exception {
        IssuedQuote accepted = job().session().issued();
        assertTrue(ui.ask(() -> ui.field(Button.class, "issued.correct").isEnabled()));
        ui.run(() -> list().correct(accepted, "It was the neighbour who called."));
        ui.await("it is open again", () -> cell(2, 4).equals("○ issued, open"));
        ui.await(
                "the tab says it",
                () -> window.parts().parts().get(0).getLabel().contains("open"));
        ui.await("what was recorded stays on record", () -> ui.all(Label.class, Label::isVisible).stream()
                .anyMatch(label -> label.getText().contains("It was the neighbour who called.")));
        ui.shoot("53a-taken-back");
    }

    private static Shell question() {
        return ui.all(Shell.class, shell -> shell.getText().equals(WORDS.get("issued.accept.do"))).stream()
                .findFirst()
                .orElse(null);
    }

    @Test
    @Order(6)
    void fileThatWasChangedIsFoundOut() throws Exception {
        Path file = quote(2);
        file.toFile().setWritable(true);
        Files.writeString(file, Files.readString(file).replaceFirst("Netherquill", "Overquill"));
        ui.run(() -> list().read());
        ui.await("it is seen", () -> cell(2, 6).startsWith("✗"));
        assertEquals("✗ changed since it was issued", cell(2, 6));
        ui.shoot("54-changed-file");
    }

    @Test
    @Order(7)
    void whatCannotBeIssuedIsSaid() throws Exception {
        Path nowhere = folder.resolve("alder-beck.job");
        ui.run(() -> new QuoteIssue(job(), WORDS).issue(nowhere, null, "", ui.shell()));
        ui.run(() -> window.parts().open(nowhere));
        List<String> said = ui.ask(() -> ui
                .all(
                        Label.class,
                        label -> label.isVisible()
                                && "notice".equals(label.getParent().getData("twinfeed.field")))
                .stream()
                .map(Label::getText)
                .toList());
        assertTrue(said.get(0).startsWith(begin("issue.refused")), said.toString());
    }
}
