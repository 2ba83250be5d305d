// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import twinfeed.diagnosis.visit.FaultSheet;
import twinfeed.diagnosis.visit.FaultSheetBuilder;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.io.InputException;
import twinfeed.model.quote.Quote;
import twinfeed.pricing.FaultReport;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.FirmFile;
import twinfeed.usecase.OpenedJob;
import twinfeed.usecase.OutputPaths;
import twinfeed.usecase.UnusableException;
import twinfeed.usecase.choices.ChoicesInJob;
import twinfeed.usecase.choices.QuoteChoices;

/** Drafts of quotes and their files. */
final class QuotingServiceTest {
    @TempDir
    private Path folder;

    private static AssessedJob changed(java.util.function.Consumer<OpenedJob> change) {
        OpenedJob opened = JudgedHouse.JUDGED.opened();
        OpenedJob copy =
                new OpenedJob(opened.file(), EcoreUtil.copy(opened.job()), opened.catalogue(), opened.warnings());
        change.accept(copy);
        return new AssessedJob(
                copy, JudgedHouse.JUDGED.assessed(), JudgedHouse.JUDGED.plans(), JudgedHouse.JUDGED.record());
    }

    private static Quote draft(AssessedJob judged) {
        return QuotingService.draft(judged, JudgedHouse.BOOK, JudgedHouse.DAY, FirmFile.none(), Locale.UK);
    }

    @Test
    void theReasonOfTheEstimatorIsOnTheQuote() {
        QuoteChoices choices = QuoteChoices.NONE.offering(List.of("h85", "h95"), "It is quieter.");
        Quote quote = draft(changed(opened -> opened.job().setQuote(ChoicesInJob.draft(choices))));
        assertTrue(quote.getSummary().endsWith("It is quieter."), quote.getSummary());
        assertEquals("h85", quote.getOptions().get(0).getHeaterId());
    }

    @Test
    void aHeaterThatWasNotAssessedIsNotQuoted() {
        UnusableException refused = assertThrows(
                UnusableException.class,
                () -> QuotingService.draft(
                        JudgedHouse.JUDGED,
                        JudgedHouse.BOOK,
                        JudgedHouse.DAY,
                        FirmFile.none(),
                        Locale.UK,
                        List.of("h999")));
        assertTrue(refused.getMessage().contains("rowan-brook.job: "), refused.getMessage());
    }

    @Test
    void aHouseWithoutAUnitHasNoFault() {
        AssessedJob none = changed(opened -> opened.job().getSurvey().setUnit(null));
        assertSame(FaultReport.NONE, AssessedFaults.report(none, JudgedHouse.BOOK, JudgedHouse.DAY, Locale.UK));
        assertThrows(InputException.class, () -> AssessedFaults.builder(none, Locale.UK));
        assertEquals(
                "Heater 7.5 kW, two-element",
                AssessedFaults.builder(JudgedHouse.JUDGED, Locale.UK).sheet().heater());
    }

    /** What the checks say of the unit that is there counts among the evidence, so that other faults are likely without it. */
    @Test
    void theFaultsAreThoseOfTheUnitAsItWasAssessed() {
        FaultSheet sheet = AssessedFaults.builder(JudgedHouse.JUDGED, Locale.UK).sheet();
        FaultSheet unassessed = new FaultSheetBuilder(
                        JudgedHouse.JUDGED.opened().job().getSurvey(),
                        JudgedHouse.JUDGED
                                .assessed()
                                .options()
                                .get(0)
                                .candidate()
                                .heater(),
                        AssessmentFactory.eINSTANCE.createOptionAssessment(),
                        0,
                        Locale.UK)
                .sheet();
        assertEquals(unassessed.heater(), sheet.heater());
        assertNotEquals(unassessed.causes(), sheet.causes());
    }

    /** None of the candidates is the unit that is there, whatever stands first among them. */
    @Test
    void aUnitOfUnknownDataIsNotNamedAfterACandidate() {
        OpenedJob opened = changed(each -> {
                    each.job().getSurvey().getUnit().setHeater(null);
                    each.job().getSurvey().getUnit().setHeaterId(null);
                })
                .opened();
        AssessedJob unknown = JudgedHouse.SERVICE.quickAssess(opened, Locale.UK);
        String heater = AssessedFaults.builder(unknown, Locale.UK).sheet().heater();
        assertTrue(unknown.record().getOptions().size() > 0);
        assertTrue(
                unknown.record().getOptions().stream().noneMatch(option -> heater.equals(option.getTitle())), heater);
    }

    @Test
    void anOptionWithoutWorkLeavesTheHouseAsItIs() {
        assertNull(QuotingService.withWork(JudgedHouse.JUDGED, JudgedHouse.draft()));
    }

    @Test
    void aDraftIsWrittenAsAQuotationToo() throws Exception {
        Path ubl = folder.resolve("quote.xml");
        QuotingService.write(
                JudgedHouse.JUDGED,
                JudgedHouse.draft(),
                FirmFile.none(),
                Locale.GERMANY,
                new OutputPaths(null, null).withUbl(ubl));
        assertTrue(Files.readString(ubl).contains("<cbc:Note>Entwurf, nicht abgegeben.</cbc:Note>"));
    }

    @Test
    void withoutALineThereIsNoQuotation() {
        Quote quote = JudgedHouse.draft();
        quote.getOptions().forEach(option -> option.getSections().clear());
        Path ubl = folder.resolve("quote.xml");
        UnusableException refused = assertThrows(
                UnusableException.class,
                () -> QuotingService.write(
                        JudgedHouse.JUDGED,
                        quote,
                        FirmFile.none(),
                        Locale.UK,
                        new OutputPaths(null, null).withUbl(ubl)));
        assertTrue(refused.getMessage().contains("a UBL Quotation needs a line"), refused.getMessage());
        assertFalse(Files.exists(ubl));
    }

    @Test
    void aPlaceThatNoQuoteMayTakeIsRefused() {
        Path wrong = folder.resolve("quote.txt");
        assertThrows(
                InputException.class,
                () -> QuotingService.write(
                        JudgedHouse.JUDGED,
                        JudgedHouse.draft(),
                        FirmFile.none(),
                        Locale.UK,
                        OutputPaths.workbook(wrong)));
        assertFalse(Files.exists(wrong));
    }

    @Test
    void aQuoteFromBeforeThePricesHoldIsRefused() {
        UnusableException refused = assertThrows(
                UnusableException.class,
                () -> QuotingService.draft(
                        JudgedHouse.JUDGED,
                        JudgedHouse.BOOK,
                        JudgedHouse.BOOK.getDate().minusDays(1),
                        FirmFile.none(),
                        Locale.UK));
        assertTrue(refused.getMessage().contains("the price book holds from"), refused.getMessage());
    }
}
