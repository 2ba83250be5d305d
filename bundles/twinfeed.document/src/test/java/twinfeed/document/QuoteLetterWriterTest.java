// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import twinfeed.document.QuoteLetter.Kind;
import twinfeed.document.QuoteLetter.Part;
import twinfeed.document.QuoteLetter.Row;
import twinfeed.document.QuoteLetter.Value;
import twinfeed.model.assessment.Assessment;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.CheckTopic;
import twinfeed.model.assessment.Finding;
import twinfeed.model.assessment.FindingClass;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Outcome;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.assessment.Supply;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.check.DangerSigns;
import twinfeed.model.quote.Payment;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.quote.QuoteState;
import twinfeed.model.quote.TaxSum;
import twinfeed.model.survey.FaultAnswer;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;
import twinfeed.model.survey.Symptom;

class QuoteLetterWriterTest {
    private static final AssessmentFactory ASSESS = AssessmentFactory.eINSTANCE;
    private static final QuoteFactory QUOTE = QuoteFactory.eINSTANCE;

    private final Assessment assessment = ASSESS.createAssessment();
    private final Quote quote = QUOTE.createQuote();
    private final Survey survey = SurveyFactory.eINSTANCE.createSurvey();

    QuoteLetterWriterTest() {
        quote.setDate(LocalDate.of(2026, 11, 25));
        quote.setCurrency("GBP");
    }

    private QuoteLetter letter() throws DocumentException {
        QuoteDocument document = QuoteDocument.of(survey, assessment, quote, Firm.of("F", "", ""), "0", Locale.UK);
        return new QuoteLetterWriter(document, new DocumentTexts(Locale.UK)).write();
    }

    private QuoteOption option(String heater) {
        QuoteOption option = QUOTE.createQuoteOption();
        option.setHeaterId(heater);
        option.setTitle("Heater " + heater);
        option.setVerdict(Verdict.SUITS);
        quote.getOptions().add(option);
        return option;
    }

    private static OptionAssessment assessed(String heater, boolean present, Double flow, Double after) {
        OptionAssessment option = ASSESS.createOptionAssessment();
        option.setHeaterId(heater);
        option.setPresent(present);
        option.getFindings().add(flow(flow));
        if (after != null) {
            Remedy work = ASSESS.createRemedy();
            work.setId("cable");
            option.getRemedies().add(work);
            option.getAfterWork().add(flow(after));
        }
        return option;
    }

    private static Finding flow(Double value) {
        Finding finding = ASSESS.createFinding();
        finding.setKey("flow.winter");
        finding.setTopic(CheckTopic.WINTER_FLOW);
        finding.setUnit("L/min");
        finding.setValue(value);
        return finding;
    }

    private static Row row(QuoteLetter letter, Kind kind, int which) {
        return letter.rows().stream().filter(row -> row.kind() == kind).toList().get(which);
    }

    /** Of two fields one is the customer's; the other is on no paper of theirs. */
    @Test
    void onlyTheNotesForTheCustomerArePrinted() throws DocumentException {
        option("h85");
        survey.setNotes("Slow to pay.");
        survey.setPublicNotes("Please keep the cat in.\n\nWe come at eight.");
        QuoteLetter letter = letter();
        Part notes = letter.smallPrint().stream()
                .filter(part -> part.title().equals("A note for you"))
                .findFirst()
                .orElseThrow();
        assertEquals(List.of("Please keep the cat in.", "We come at eight."), notes.entries());
        assertFalse(letter.toString().contains("Slow to pay"));
    }

    /** A smell of burning is no finding of a check, and whoever reads the quote must not wait for one. */
    @Test
    void aReportedSignOfDangerIsAWarning() throws DocumentException {
        option("h85");
        Symptom smell = SurveyFactory.eINSTANCE.createSymptom();
        smell.setKey("smellAtUnit");
        survey.getSymptoms().add(smell);
        Part dangers = Objects.requireNonNull(letter().dangers());
        assertEquals(List.of("The shower smells burnt, or its case has gone brown."), dangers.entries());
        smell.setAnswer(FaultAnswer.NO);
        assertNull(letter().dangers());
    }

    @Test
    void everySignOfDangerHasItsWords() {
        for (String key : DangerSigns.keys()) {
            assertTrue(new DocumentTexts(Locale.ROOT).find("sign." + key) != null, key);
        }
    }

    /** The rates stand in the label, which the PDF and the workbook share; beside an amount only where an option has others. */
    @Test
    void theRowOfTheTaxNamesItsRates() throws DocumentException {
        option("h85").getTaxes().add(tax("0.20", "7.00"));
        option("h95").getTaxes().add(tax("0.20", "9.00"));
        assertEquals("Tax at 20 %", row(letter(), Kind.TAX, 0).label());
        QuoteOption third = option("h105");
        third.setTax(new BigDecimal("9.50"));
        third.getTaxes().add(tax("0.20", "9.00"));
        third.getTaxes().add(tax("0.05", "0.50"));
        quote.getOptions().get(0).setTax(new BigDecimal("7.00"));
        Row row = row(letter(), Kind.TAX, 0);
        assertEquals("Tax at 20 % and 5 %", row.label());
        assertEquals(
                List.of("£7.00 (20 %)", "", "£9.50"),
                row.values().stream().map(Value::text).toList());
    }

    private static TaxSum tax(String rate, String amount) {
        TaxSum tax = QUOTE.createTaxSum();
        tax.setRate(new BigDecimal(rate));
        tax.setNet(BigDecimal.TEN);
        tax.setTax(new BigDecimal(amount));
        return tax;
    }

    /** The unit that stays is told from a new one of the same kind; what its sound flow was is no comparison with a failed one. */
    @Test
    void aRepairSaysWhatIsRenewedBesideTheNewHeater() throws DocumentException {
        assessment.getOptions().add(assessed("h85", true, 3.4, null));
        assessment.getOptions().add(assessed("h85", false, 3.4, null));
        assessment.getOptions().forEach(each -> each.setPowerKw(8.5));
        QuoteOption repair = option("h85");
        repair.setName("present");
        repair.setPart("elements");
        repair.setRepairWork("New tank fitted");
        option("h85").setName("h85");
        QuoteLetter letter = letter();
        assertEquals(
                List.of(
                        "• The heater that is there stays\n• New tank fitted",
                        "• A new heater of the same power fitted, tested and shown to you"),
                row(letter, Kind.WORK, 0).values().stream().map(Value::text).toList());
        assertEquals(
                "Warm water in winter, litres a minute (before the fault 3.4)",
                row(letter, Kind.FLOW, 0).label());
        assertEquals("3.4", row(letter, Kind.FLOW, 0).values().get(0).text());
    }

    /** What can be signed can be cancelled; a draft cannot be signed. */
    @Test
    void anIssuedQuoteHasTheFormToCancel() throws DocumentException {
        option("h85");
        assertTrue(letter().smallPrint().stream().noneMatch(part -> part.title().startsWith("Form to cancel")));
        quote.setState(QuoteState.ISSUED);
        quote.setNumber("2026-0007");
        List<Part> parts = letter().smallPrint();
        Part form = parts.get(parts.size() - 1);
        assertTrue(form.title().startsWith("Form to cancel"), form.title());
        assertEquals("To F:", form.entries().get(0));
        assertTrue(form.entries().get(1).endsWith("the following work: Quote 2026-0007."), form.toString());
    }

    @Test
    void whyNothingIsRepairedStandsAmongWhatIsLeftOut() throws DocumentException {
        option("h85");
        quote.setRepairLeftOut("its maker has called it back.");
        assertEquals(
                List.of("Repair of the heater that is there: its maker has called it back."),
                letter().smallPrint().get(0).entries());
    }

    /** The first thing that a customer reads is that the shower is dangerous, in the words of the check that says so. */
    @Test
    void failedSafetyChecksOfTheShowerStandFirst() throws DocumentException {
        OptionAssessment present = assessed("h85", true, 3.1, null);
        Finding insulation = ASSESS.createFinding();
        insulation.setKey("circuit.insulationResistance");
        insulation.setKind(FindingClass.SAFETY);
        insulation.setOutcome(Outcome.FAILS);
        insulation.setText("The wiring leaks current.");
        present.getFindings().add(insulation);
        assessment.getOptions().add(present);
        assertEquals(List.of("The wiring leaks current."), letter().dangers().entries());
        assertTrue(letter().dangers().title().contains("do not use the shower until"));
        insulation.setOutcome(Outcome.PASSES);
        assertNull(letter().dangers());
        insulation.setOutcome(Outcome.FAILS);
        insulation.setKind(FindingClass.ADVICE);
        assertNull(letter().dangers());
    }

    /** An offer that rests on missing readings is an estimate: it says what to measure, and nobody signs it. */
    @Test
    void missingReadingsMakeItAnEstimateWithoutABoxToSign() throws DocumentException {
        OptionAssessment open = assessed("h95", false, 3.4, null);
        Finding pressure = ASSESS.createFinding();
        pressure.setKey("pressure.switch");
        pressure.setOutcome(Outcome.CANNOT_TELL);
        pressure.setSupply(Supply.WATER);
        pressure.getMissing().add("running pressure");
        pressure.getMissing().add("static pressure");
        open.getFindings().add(pressure);
        assessment.getOptions().add(open);
        QuoteOption option = option("h95");
        option.setVerdict(Verdict.CANNOT_TELL);
        QuoteLetter letter = letter();
        assertEquals("Estimate", letter.reference());
        assertNull(letter.acceptance());
        assertEquals(
                List.of("Water: its pressure, how much flows, and how hard it is (still open: 2)"),
                letter.toMeasure().entries());
        assertEquals("Prices hold until", letter.days().get(1).label());
        option.setVerdict(Verdict.SUITS);
        assertNull(letter().toMeasure());
        assertNull(letter().acceptance(), "nobody signs a draft");
        assertEquals("Prices hold until", letter().days().get(1).label());
        quote.setState(QuoteState.ISSUED);
        assertTrue(letter().acceptance().options().contains("Option 1"));
        assertEquals("Can be accepted until", letter().days().get(1).label());
    }

    /** One option that is still open makes no estimate of those that are decided: it is marked, and cannot be chosen. */
    @Test
    void anUndecidedOptionIsAnEstimateBesideOnesThatCanBeAccepted() throws DocumentException {
        quote.setState(QuoteState.ISSUED);
        quote.setNumber("7");
        option("h85");
        option("h95").setVerdict(Verdict.CANNOT_TELL);
        QuoteLetter letter = letter();
        assertEquals("Quote 7", letter.reference());
        assertEquals("Option 2, estimate", letter.options().get(1).number());
        assertEquals(List.of("Option 1, recommended"), letter.acceptance().options());
        assertEquals(
                "To be measured before option 2 has a fixed price",
                letter.toMeasure().title());
        assertEquals(
                1,
                letter.rows().stream().filter(row -> row.kind() == Kind.VERDICT).count());
    }

    /** Where nothing suits there is a page all the same: what was tried, why it is left out, and what can be done. */
    @Test
    void withoutAnOptionItSaysWhyEachHeaterIsLeftOutAndWhatToDoNext() throws DocumentException {
        OptionAssessment heater = assessed("h95", false, 3.4, null);
        heater.setTitle("Heater 9.5 kW");
        heater.setVerdict(Verdict.DOES_NOT_SUIT);
        Finding pressure = ASSESS.createFinding();
        pressure.setKey("pressure.running");
        pressure.setSupply(Supply.WATER);
        pressure.setOutcome(Outcome.FAILS);
        pressure.setCustomerText("The water pressure is too low for this heater.");
        heater.getFindings().add(pressure);
        heater.getUnmended().add("pressure.running");
        assessment.getOptions().add(heater);
        quote.setState(QuoteState.ISSUED);
        QuoteLetter letter = letter();
        assertEquals("Report", letter.reference());
        assertNull(letter.acceptance());
        assertEquals(
                List.of("Heater 9.5 kW: The water pressure is too low for this heater."),
                letter.instead().get(0).entries());
        assertEquals("What you can do next", letter.instead().get(1).title());
        assertTrue(letter.instead().get(1).entries().get(0).contains("water company"));
    }

    @Test
    void heatersThatAreNotShownAreNamedWithTheirReason() throws DocumentException {
        for (String id : List.of("a", "b", "c", "d")) {
            OptionAssessment heater = assessed(id, false, 3.4, null);
            heater.setTitle("Heater " + id);
            heater.setVerdict(id.equals("d") ? Verdict.CANNOT_TELL : Verdict.SUITS);
            assessment.getOptions().add(heater);
        }
        Finding open = ASSESS.createFinding();
        open.setKey("pressure.running");
        open.setOutcome(Outcome.CANNOT_TELL);
        open.getMissing().add("running pressure");
        assessment.getOptions().get(3).getFindings().add(open);
        option("a");
        Part left = letter().smallPrint().get(0);
        assertEquals("Checked and not offered", left.title());
        assertEquals(
                List.of(
                        "Heater b; Heater c: would suit too; ask us for the price.",
                        "Heater d: we cannot tell yet; still to be measured: running pressure."),
                left.entries());
    }

    @Test
    void workIsSaidALineEachAndWhatTheOperatorDoesIsNotAmongIt() throws DocumentException {
        OptionAssessment heater = assessed("h95", false, 3.4, 3.9);
        heater.getRemedies().get(0).setCustomerTitle("A new, thicker cable to the shower, 8 m");
        Remedy operator = ASSESS.createRemedy();
        operator.setId("operator-fuse");
        operator.setCustomerTitle("A larger main fuse");
        operator.setEnquiry(true);
        heater.getRemedies().add(operator);
        assessment.getOptions().add(heater);
        QuoteOption option = option("h95");
        option.setVerdict(Verdict.SUITS_WITH_WORK);
        option.getEnquiries().add("A larger main fuse: price and date are the operator's");
        assertEquals(
                "• The new heater fitted, tested and shown to you\n• A new, thicker cable to the shower, 8 m",
                row(letter(), Kind.WORK, 0).values().get(0).text());
        assertEquals("Not in the price", row(letter(), Kind.ENQUIRIES, 0).label());
        assertEquals(Kind.TOTAL, letter().rows().get(0).kind(), "the price comes first");
    }

    /** The lines read as a tradesperson's: minutes, metres and per cent. */
    @Test
    void theLinesOfAllOptionsStandInOneTable() throws DocumentException {
        QuoteOption one = option("h85");
        QuoteOption two = option("h95");
        section(one, "labour", "Labour", line("task", "Change the heater", "0.8333", "h", "35.00"));
        section(two, "remedial", "Materials", line("cable-10", "Cable 10 mm²", "10.20", "m", "51.00"));
        section(two, "labour", "Labour", line("task", "Change the heater", "0.8333", "h", "35.00"));
        section(two, "labour", "Labour", line("pull", "Pull the cable", "1.5", "h", "63.00"));
        section(
                two,
                "contingency",
                "Contingency",
                line("contingency", "For what was not seen", "0.05", "share", "7.45"));
        TaxSum tax = QUOTE.createTaxSum();
        tax.setLabel("Standard rate 20 %");
        tax.setTax(new BigDecimal("7.00"));
        one.getTaxes().add(tax);
        List<String> lines = letter().prices().lines().stream()
                .map(line -> line.what() + " " + line.amounts())
                .toList();
        assertEquals(
                List.of(
                        "Materials []",
                        "Cable 10 mm², 10.2\u00a0m [, £51.00]",
                        "Labour []",
                        "Change the heater, 50\u00a0min [£35.00, £35.00]",
                        "Pull the cable, 1\u00a0h\u00a030\u00a0min [, £63.00]",
                        "Contingency []",
                        "For what was not seen, 5\u00a0% [, £7.45]",
                        "Price without tax [, ]",
                        "Tax: Standard rate 20 % [£7.00, ]",
                        "To pay, with tax [, ]"),
                lines);
    }

    /** Material and labour of one task in one section are one line for the customer. */
    @Test
    void aThingAndItsLabourAreOneLine() throws DocumentException {
        QuoteOption one = option("h85");
        section(one, "making-good", "Making good", line("making-good", "Making good of plaster", "1", "each", "20.00"));
        one.getSections()
                .get(0)
                .getLines()
                .add(line("making-good", "Making good of plaster (labour)", "1.25", "h", "67.50"));
        section(one, "remedial", "Materials", line("valve", "Full-bore valve", "2", "each", "17.28"));
        section(one, "labour", "Labour", line("valve", "Full-bore valve (labour)", "0.5", "h", "27.00"));
        List<String> lines = letter().prices().lines().stream()
                .map(line -> line.what() + " " + line.amounts())
                .toList();
        assertEquals(
                List.of(
                        "Materials []",
                        "Full-bore valve, 2\u00a0× [£17.28]",
                        "Labour []",
                        "Full-bore valve (labour), 30\u00a0min [£27.00]",
                        "Making good []",
                        "Making good of plaster, 1\u00a0h\u00a015\u00a0min [£87.50]"),
                lines.subList(0, 6));
    }

    private static void section(QuoteOption option, String key, String title, QuoteLine line) {
        QuoteSection section = QUOTE.createQuoteSection();
        section.setKey(key);
        section.setTitle(title);
        section.getLines().add(line);
        option.getSections().add(section);
    }

    private static QuoteLine line(String code, String what, String quantity, String unit, String net) {
        QuoteLine line = QUOTE.createQuoteLine();
        line.setCode(code);
        line.setDescription(what);
        line.setQuantity(new BigDecimal(quantity));
        line.setUnit(unit);
        line.setNet(new BigDecimal(net));
        return line;
    }

    @Test
    void theFirstOfSeveralIsMarkedAsRecommendedIfItSuitsAndHasAPrice() throws DocumentException {
        QuoteOption first = option("h95");
        first.setVerdict(Verdict.SUITS_WITH_WORK);
        option("h85").setVerdict(Verdict.SUITS);
        assertEquals("Option 1, recommended", letter().options().get(0).number());
        assertEquals("Option 2", letter().options().get(1).number());
        first.getEnquiries().add("Larger service fuse");
        assertEquals("Option 1", letter().options().get(0).number());
    }

    @Test
    void aDraftSaysSo() throws DocumentException {
        assertEquals("Report", letter().reference(), "there is nothing to quote");
        option("h95");
        assertEquals("Draft quote", letter().reference());
        quote.setNumber("7");
        assertEquals("Quote 7", letter().reference());
        quote.setRevision(3);
        assertEquals("Quote 7, revision 3", letter().reference());
    }

    @Test
    void theFlowIsThatWithTheWorkDoneBesideThatOfToday() throws DocumentException {
        assessment.getOptions().add(assessed("h85", true, 3.14, null));
        assessment.getOptions().add(assessed("h95", false, 3.4, 3.96));
        option("h95");
        QuoteLetter letter = letter();
        Row flow = row(letter, Kind.FLOW, 0);
        assertEquals("Warm water in winter, litres a minute (now 3.1)", flow.label());
        assertEquals("4.0: about a quarter more than now", flow.values().get(0).text());
        assertEquals(3.96, flow.values().get(0).number());
    }

    @Test
    void amountsAreTextForPaperAndValuesForCells() throws DocumentException {
        option("h95").setTotal(new BigDecimal("1234.5"));
        QuoteLetter.Value total = row(letter(), Kind.TOTAL, 0).values().get(0);
        assertEquals("£1,234.50", total.text());
        assertEquals(new BigDecimal("1234.5"), total.number());
        assertNull(row(letter(), Kind.NET, 0).values().get(0).number());
    }

    @Test
    void oneStageOfPaymentIsNotSaidTwice() throws DocumentException {
        QuoteOption one = option("h95");
        one.getPayments().add(payment("all", "10"));
        assertFalse(letter().rows().stream().anyMatch(row -> row.kind() == Kind.PAYMENT));
        one.getPayments().add(payment("rest", "20"));
        QuoteOption other = option("h85");
        other.getPayments().add(payment("all", "30"));
        Row rest = row(letter(), Kind.PAYMENT, 1);
        assertEquals("Of that, rest", rest.label());
        assertEquals(1, rest.stage());
        assertEquals("£20.00", rest.values().get(0).text());
        assertEquals("", rest.values().get(1).text());
    }

    private static Payment payment(String title, String amount) {
        Payment payment = QUOTE.createPayment();
        payment.setTitle(title);
        payment.setAmount(new BigDecimal(amount));
        return payment;
    }

    @Test
    void aVerdictThatNobodyGaveIsOpen() throws DocumentException {
        QuoteOption option = option("h95");
        option.setVerdict(Verdict.DOES_NOT_SUIT);
        assertEquals(
                "✗ does not suit",
                row(letter(), Kind.VERDICT, 0).values().get(0).text());
    }

    @Test
    void atMostFourOptionsStandSideBySideAndAllCanBeChosen() throws DocumentException {
        for (int at = 0; at < 5; at++) {
            option("h" + at);
        }
        quote.setState(QuoteState.ISSUED);
        QuoteLetter letter = letter();
        assertEquals(4, letter.options().size());
        assertEquals(5, letter.acceptance().options().size());
        letter.rows().forEach(row -> assertEquals(4, row.values().size()));
    }

    @Test
    void withoutAnOptionThereAreNoRows() throws DocumentException {
        assertEquals(List.of(), letter().rows());
        assertFalse(letter().none().isEmpty());
    }

    @Test
    void cautionsComeFirstAndAreNeverCut() throws DocumentException {
        option("h95");
        quote.getTerms().add("t");
        quote.getCautions().add("c");
        quote.getCautions().add("d");
        List<Part> parts = letter().smallPrint();
        assertEquals(List.of("c", "d"), parts.get(0).entries());
        assertTrue(parts.get(0).whole());
        assertFalse(parts.get(1).whole());
        assertEquals(2, parts.size());
    }

    @Test
    void aLogoThatIsNoPictureIsNamed() {
        Firm firm = new Firm("F", "", "", 0, "text".getBytes(StandardCharsets.UTF_8));
        DocumentException refused = assertThrows(DocumentException.class, firm::picture);
        assertEquals("logo", refused.key());
        assertTrue(refused.getMessage().contains("logo"), refused.getMessage());
        assertEquals(refused.getMessage(), refused.message(Locale.UK));
    }
}
