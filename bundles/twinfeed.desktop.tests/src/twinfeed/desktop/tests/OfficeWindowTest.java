// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import twinfeed.desktop.office.OfficePart;
import twinfeed.desktop.part.QuoteIssue;
import twinfeed.desktop.window.JobParts;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;

/** The office's list: jobs and quotes, what is missing, what comes next; search, filter, order, the survey as it was issued. */
final class OfficeWindowTest extends DemoWindow {
    private static IssuedQuote issued;

    @BeforeAll
    static void issueOne() throws Exception {
        copyDemo();
        chooseOffice(folder);
        openWithOneCandidate();
        ui.run(() -> new QuoteIssue(job(), WORDS).issue(folder, null, "", ui.shell()));
        issued = job().session().issued();
        Files.writeString(folder.resolve("broken.job"), "no job at all");
        ui.run(() -> window.parts().showIssued());
        ui.await("jobs and the quote are listed", () -> table().getItemCount() == 6);
    }

    @AfterAll
    static void end() throws Exception {
        leave();
    }

    private static OfficePart office() {
        MPart part = window.partService().findPart(JobParts.ISSUED);
        return (OfficePart) part.getObject();
    }

    private static Table table() {
        return ui.field(Table.class, "issued");
    }

    private static List<String> column(int number) {
        return ui.ask(() ->
                Stream.of(table().getItems()).map(item -> item.getText(number)).toList());
    }

    private static String next(String name) {
        return ui.ask(() -> Stream.of(table().getItems())
                .filter(item -> item.getText(0).equals(name))
                .map(item -> item.getText(6))
                .findFirst()
                .orElse(""));
    }

    @Test
    @Order(1)
    void jobsAndQuotesAreListedWithWhatComesNext() throws Exception {
        assertTrue(column(0).contains(issued.name()), column(0).toString());
        assertEquals("– " + WORDS.get("office.next.quoted"), next("alder-beck"));
        ui.await("every job was looked at", () -> column(6).stream()
                .noneMatch(each -> each.contains(WORDS.get("office.next.unknown"))));
        assertTrue(
                column(6).stream().anyMatch(each -> each.startsWith("? " + begin("office.next.measure"))),
                column(6).toString());
        assertTrue(
                ui.ask(() -> ui.field(Label.class, "issued.trouble").getText()).contains("broken.job"),
                "a file that cannot be read is named, and hides nothing");
        ui.shoot("55-office");
    }

    @Test
    @Order(2)
    void listIsSearchedFilteredAndSorted() {
        Text search = ui.ask(() -> ui.field(Text.class, "office.search"));
        ui.run(() -> search.setText("ALDER netherquill"));
        assertEquals(new TreeSet<>(List.of("alder-beck", issued.name())), new TreeSet<>(column(0)));
        ui.run(() -> search.setText(""));
        CCombo filter = ui.ask(() -> ui.field(CCombo.class, "office.filter"));
        ui.run(() -> {
            filter.select(4);
            Ui.send(filter, SWT.Selection);
        });
        assertEquals(List.of(issued.name()), column(0));
        assertEquals(WORDS.format("office.filter.open", Map.of("count", 1)), ui.ask(filter::getText));
        ui.run(() -> {
            filter.select(0);
            Ui.send(filter, SWT.Selection);
            office().sort(0);
        });
        List<String> names = column(0);
        assertEquals(names.stream().sorted().toList(), names);
        ui.run(() -> office().sort(0));
        assertEquals(names.get(0), column(0).get(names.size() - 1));
    }

    @Test
    @Order(3)
    void surveyAsItWasIssuedIsRead() throws Exception {
        ui.run(() -> office().choose(issued.file()));
        ui.run(() -> Ui.send(ui.field(Button.class, "office.survey"), SWT.Selection));
        ui.await("the survey is shown", () -> !ui.all(
                        Table.class, each -> each.isVisible() && "issued.survey".equals(each.getData("twinfeed.field")))
                .isEmpty());
        List<String> readings =
                ui.ask(() -> Stream.of(ui.field(Table.class, "issued.survey").getItems())
                        .map(item -> item.getText(0).strip() + "=" + item.getText(1))
                        .toList());
        assertTrue(readings.contains(WORDS.get("page.house") + "="), readings.toString());
        assertTrue(
                readings.stream().anyMatch(each -> each.startsWith(word("label.WaterTest.runningPressure") + "=")),
                readings.toString());
        assertTrue(readings.stream().noneMatch(each -> each.contains("[") || each.contains("@")), readings.toString());
        ui.shoot("56-survey-as-issued");
    }

    @Test
    @Order(4)
    void jobIsOpenedFromTheList() throws Exception {
        Path job = folder.resolve("birch-syke.job").toRealPath();
        ui.run(() -> office().choose(job));
        assertFalse(ui.ask(() -> ui.field(Button.class, "issued.accept").isEnabled()));
        ui.run(() -> Ui.send(ui.field(Button.class, "office.open"), SWT.Selection));
        ui.await("it is open", () -> window.parts().parts().size() == 2);
    }

    @Test
    @Order(5)
    void whatWasDoneIsSaidAtTheFootOfTheWindow() throws Exception {
        ui.run(() -> window.parts().showIssued());
        String option = issued.quote().getOptions().get(0).getName();
        String title = issued.quote().getOptions().get(0).getTitle();
        ui.run(() -> office().accept(issued, option));
        awaitAction(WORDS.format("status.done.accepted", Map.of("name", issued.name(), "option", title)));
        ui.run(() -> office().correct(issued, "taken by mistake"));
        awaitAction(WORDS.format("status.done.corrected", Map.of("name", issued.name())));
        ui.run(() -> office().decline(issued));
        awaitAction(WORDS.format("status.done.declined", Map.of("name", issued.name())));
        ui.run(() -> office().accept(issued, option));
        ui.await("the reason is said", () -> action().contains("only an issued quote that nobody has decided on"));
        ui.run(() -> office().correct(issued, "taken by mistake"));
        awaitAction(WORDS.format("status.done.corrected", Map.of("name", issued.name())));
        ui.run(() -> office().accept(issued, option));
        awaitAction(WORDS.format("status.done.accepted", Map.of("name", issued.name(), "option", title)));
        Path parts = folder.resolve("parts.pdf");
        ui.run(() -> office().writeParts(IssuedQuotes.open(issued.file()), parts));
        awaitAction(WORDS.format("status.done.written", Map.of("file", parts)));
        assertTrue(Files.isRegularFile(parts));
    }

    private static void awaitAction(String sentence) throws Exception {
        ui.await("the last action is said: " + sentence, () -> action().equals(sentence));
    }
}
