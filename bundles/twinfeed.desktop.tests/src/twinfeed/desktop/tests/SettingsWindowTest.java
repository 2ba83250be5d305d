// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.eclipse.e4.ui.workbench.modeling.EPartService.PartState;
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
import twinfeed.desktop.Settings;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.window.JobParts;
import twinfeed.model.io.JobFile;
import twinfeed.model.quote.Quote;
import twinfeed.usecase.firm.FirmFolder;

/** The page of settings: entries are kept when they are made, wrong ones are told and are not, and the papers follow. */
final class SettingsWindowTest extends DemoWindow {
    private static Settings settings;
    private static FirmFolder firm;

    @BeforeAll
    static void start() throws Exception {
        copyDemo();
        settings = window.context().get(Settings.class);
        firm = window.context().get(FirmFolder.class);
        ui.run(() -> window.partService().showPart(JobParts.SETTINGS, PartState.ACTIVATE));
    }

    /** Other tests expect a window without choices. */
    @AfterAll
    static void end() throws Exception {
        ui.run(() -> {
            window.giveUp();
            settings.noPrices();
            settings.noOffice();
            settings.jobs(java.util.Optional.empty());
            settings.papers("");
            settings.rules("");
            settings.language("system");
            JobServices services = window.context().get(JobServices.class);
            services.noPrices();
            services.papers(services.locale());
        });
        try (var files = Files.list(firm.folder())) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
    }

    private static void type(String field, String typed) {
        ui.type(field, typed, SWT.FocusOut);
    }

    private static void choose(String field, int answer) {
        ui.run(() -> {
            CCombo combo = ui.field(CCombo.class, field);
            combo.select(answer);
            Ui.send(combo, SWT.Selection);
        });
    }

    private static String trouble(String field) {
        return ui.ask(() -> ui.all(Label.class, each -> (field + ".problem").equals(each.getData("twinfeed.field")))
                .get(0)
                .getText());
    }

    @Test
    @Order(1)
    void wrongEntriesAreToldBelowThemAndNotKept() throws Exception {
        type("settings.lists.prices", folder.resolve("none.csv").toString());
        assertTrue(
                trouble("settings.lists.prices").contains(begin("settings.problem.noFile")),
                trouble("settings.lists.prices"));
        type("settings.lists.office", "relative");
        assertTrue(trouble("settings.lists.office").contains("whole path"));
        type("settings.firm.accent", "red");
        assertTrue(trouble("settings.firm.accent").contains("hexadecimal"));
        Path broken = Files.writeString(folder.resolve("broken.csv"), "this,is\nno,price book\n");
        type("settings.lists.prices", broken.toString());
        ui.await("the book is refused", () -> trouble("settings.lists.prices").startsWith("\u2717"));
        ui.shoot("81-settings-wrong");
        assertTrue(settings.prices().isEmpty());
        assertTrue(settings.office().isEmpty());
        assertFalse(firm.filled());
    }

    @Test
    @Order(2)
    void folderBookAndRulesAreKeptAtOnce() throws Exception {
        Path book = folder.resolve("prices.csv");
        type("settings.lists.prices", book.toString());
        JobServices services = window.context().get(JobServices.class);
        ui.await("the book is in force", () -> services.prices() != null);
        assertEquals("", trouble("settings.lists.prices"));
        type("settings.lists.office", folder.toString());
        type("settings.lists.jobs", folder.toString());
        choose("settings.lists.rules", 1);
        Settings again = new Settings(
                new twinfeed.desktop.SettingsFile(settings.file()),
                new twinfeed.desktop.SettingsFile(folder.resolve("none")));
        assertEquals(book, again.prices().orElseThrow());
        assertEquals(folder, again.office().orElseThrow());
        assertFalse(again.rules().isEmpty());
        assertTrue(ui.ask(() -> window.parts().proposal()).startsWith(folder));
        Path made = folder.resolve("made.job");
        ui.run(() -> window.parts().create(made, folder.resolve("heaters.catalogue")));
        ui.await("it is open", () -> !window.parts().parts().isEmpty());
        assertEquals(again.rules(), JobFile.load(made).getSurvey().getRules(), "new jobs name the rules");
        ui.run(() -> {
            window.giveUp();
            window.partService().hidePart(window.parts().parts().get(0), true);
            window.partService().showPart(JobParts.SETTINGS, PartState.ACTIVATE);
        });
    }

    @Test
    @Order(3)
    void firmIsTakenOverFromBesideTheBookAndPrintedWithWhatIsChanged() throws Exception {
        // The page is opened anew, now that there is a price book beside which a firm is described.
        ui.run(() -> {
            window.partService().hidePart(window.partService().findPart(JobParts.SETTINGS), true);
            window.partService().showPart(JobParts.SETTINGS, PartState.ACTIVATE);
        });
        assertTrue(ui.ask(() -> ui.field(Text.class, "settings.firm.name").getText())
                .startsWith("Netherquill"));
        type("settings.firm.name", "Zweite Firma (invented)");
        ui.await("it is written", firm::filled);
        type("settings.firm.accent", "7B3F00");
        ui.await("the colour is written", () -> firm.entries().accent().equals("7B3F00"));
        assertEquals("Zweite Firma (invented)", firm.firm().firm().name());
        assertFalse(firm.entries().logo().isEmpty(), "the logo came along");
        assertFalse(firm.wording(Locale.UK).isEmpty(), "and the wording");
        JobServices services = window.context().get(JobServices.class);
        assertEquals(
                "Zweite Firma (invented)",
                services.firm(services.prices()).firm().name());
        ui.shoot("82-settings-firm");
    }

    @Test
    @Order(4)
    void textIsWordedAnewRefusedAndLeftOut() throws Exception {
        ui.run(() -> {
            Table table = ui.field(Table.class, "settings.texts.list");
            String loft = FirmFolder.shipped(Locale.UK).get("term.loft");
            for (int i = 0; i < table.getItemCount(); i++) {
                if (table.getItem(i).getText(2).equals(loft)) {
                    table.select(i);
                }
            }
            Ui.send(table, SWT.Selection);
        });
        type("settings.texts.text", "The loft is clear, {nobody}.");
        assertTrue(trouble("settings.texts.state").startsWith("\u2717"), trouble("settings.texts.state"));
        type("settings.texts.text", "The loft is clear, {customer}.");
        assertEquals("The loft is clear, {customer}.", firm.wording(Locale.UK).get("term.loft"));
        ui.run(() -> Ui.send(ui.field(Button.class, "settings.texts.leaveOut"), SWT.Selection));
        assertEquals("", firm.wording(Locale.UK).get("term.loft"));
        ui.run(() -> Ui.send(ui.field(Button.class, "settings.texts.shipped"), SWT.Selection));
        assertFalse(firm.wording(Locale.UK).containsKey("term.loft"));
        ui.shoot("83-settings-texts");
    }

    @Test
    @Order(5)
    void papersAreWrittenInTheirOwnLanguageAndTheWindowKeepsIts() throws Exception {
        choose("settings.language.window", 2);
        assertTrue(ui.ask(() -> ui.all(Label.class, Label::isVisible).stream()
                .anyMatch(each -> each.getText().contains("next start"))));
        window.open(folder);
        window.settled();
        String english = page();
        ui.run(() -> window.partService().showPart(JobParts.SETTINGS, PartState.ACTIVATE));
        choose("settings.language.papers", 2);
        assertEquals("de", settings.papers());
        window.settled();
        Quote shown = ui.ask(() -> job().session().result().quote());
        String cancel = FirmFolder.shipped(Locale.UK).get("term.cancel");
        assertTrue(shown.getTerms().contains(cancel), "the window's language: " + shown.getTerms());
        Path out = folder.resolve("paper.pdf");
        ui.run(() -> {
            var work = job().session().quoteWork();
            work.compute();
            work.write(out);
        });
        String german = page();
        assertTrue(english.contains("shower") && !english.contains("Dusche"), english);
        assertTrue(german.contains("Dusche") && !german.contains("shower"), german);
        assertTrue(Files.size(out) > 10_000);
    }

    private static String page() {
        return ui.ask(() -> job().session()
                .page(job().session().result())
                .orElseThrow()
                .lines()
                .toString());
    }
}
