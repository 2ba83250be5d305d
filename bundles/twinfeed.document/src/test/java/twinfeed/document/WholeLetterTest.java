// SPDX-License-Identifier: EPL-2.0
package twinfeed.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import twinfeed.calculator.ExpectedText;
import twinfeed.calculator.SampleHouse;
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

/** Whole letters to invented customers, in English and German; the expected texts were read line by line. */
class WholeLetterTest {
    private static final AssessmentFactory ASSESS = AssessmentFactory.eINSTANCE;
    private static final QuoteFactory QUOTE = QuoteFactory.eINSTANCE;
    private static final SurveyFactory SURVEY = SurveyFactory.eINSTANCE;

    private final Assessment assessment = ASSESS.createAssessment();
    private final Quote quote = QUOTE.createQuote();
    private final Survey survey = SURVEY.createSurvey();

    WholeLetterTest() {
        quote.setDate(LocalDate.of(2026, 11, 25));
        quote.setValidUntil(LocalDate.of(2026, 12, 25));
        quote.setCurrency("GBP");
    }

    private void same(String name) throws IOException {
        for (Locale locale : List.of(Locale.UK, Locale.GERMANY)) {
            QuoteDocument document =
                    QuoteDocument.of(survey, assessment, quote, Firm.of("Invented Showers", "", ""), "0", locale);
            QuoteLetterWriter writer = new QuoteLetterWriter(document, new DocumentTexts(locale));
            ExpectedText.same(
                    WholeLetterTest.class,
                    name + "_" + locale.getLanguage() + ".txt",
                    LetterText.of(writer.write()) + "\n" + writer.foot() + "\n");
        }
    }

    private OptionAssessment heater(String id, double power, Verdict verdict) {
        OptionAssessment heater = ASSESS.createOptionAssessment();
        heater.setHeaterId(id);
        heater.setTitle("Heater " + power + " kW");
        heater.setPowerKw(power);
        heater.setVerdict(verdict);
        assessment.getOptions().add(heater);
        return heater;
    }

    private static Finding finding(String key, Outcome outcome, Supply supply, String text, String customer) {
        Finding finding = ASSESS.createFinding();
        finding.setKey(key);
        finding.setOutcome(outcome);
        finding.setSupply(supply);
        finding.setText(text);
        finding.setCustomerText(customer);
        return finding;
    }

    private static Finding flow(double value) {
        Finding finding = finding("flow.winter", Outcome.PASSES, Supply.WATER, "Flow.", null);
        finding.setTopic(CheckTopic.WINTER_FLOW);
        finding.setUnit("L/min");
        finding.setValue(value);
        return finding;
    }

    private static Finding open(String key, Supply supply, String... missing) {
        Finding finding = finding(key, Outcome.CANNOT_TELL, supply, "Not checked.", null);
        finding.getMissing().addAll(List.of(missing));
        return finding;
    }

    private static Remedy remedy(String id, String title, String customer) {
        Remedy remedy = ASSESS.createRemedy();
        remedy.setId(id);
        remedy.setTitle(title);
        remedy.setCustomerTitle(customer);
        return remedy;
    }

    private QuoteOption option(String heater, String title, Verdict verdict, String net, String tax, String total) {
        QuoteOption option = QUOTE.createQuoteOption();
        option.setName(heater);
        option.setHeaterId(heater);
        option.setTitle(title);
        option.setVerdict(verdict);
        option.setNet(new BigDecimal(net));
        option.setTax(new BigDecimal(tax));
        option.setTotal(new BigDecimal(total));
        TaxSum sum = QUOTE.createTaxSum();
        sum.setLabel("VAT 20 %");
        sum.setRate(new BigDecimal("0.20"));
        sum.setNet(new BigDecimal(net));
        sum.setTax(new BigDecimal(tax));
        option.getTaxes().add(sum);
        quote.getOptions().add(option);
        return option;
    }

    private static void section(QuoteOption option, String key, String title, QuoteLine... lines) {
        QuoteSection section = QUOTE.createQuoteSection();
        section.setKey(key);
        section.setTitle(title);
        section.getLines().addAll(List.of(lines));
        option.getSections().add(section);
    }

    private static QuoteLine line(String code, String what, String quantity, String unit, String net) {
        QuoteLine line = QUOTE.createQuoteLine();
        line.setCode(code);
        line.setDescription(what);
        line.setQuantity(quantity == null ? null : new BigDecimal(quantity));
        line.setUnit(unit);
        line.setNet(net == null ? null : new BigDecimal(net));
        return line;
    }

    private static Payment payment(String title, String amount) {
        Payment payment = QUOTE.createPayment();
        payment.setTitle(title);
        payment.setAmount(new BigDecimal(amount));
        return payment;
    }

    private void people() {
        survey.setCustomer(SURVEY.createCustomer());
        survey.getCustomer().setName("An invented customer");
        survey.getCustomer().setAddress("1 Invented Row; Nowhere");
        survey.setSite(SURVEY.createSite());
        survey.getSite().setName("The flat above");
        survey.getSite().setAddress("2 Invented Row ;  Nowhere");
        survey.setPublicNotes("Please keep the cat in.\n \nWe come at eight.");
        survey.getSymptoms().add(SampleHouse.symptom("tooHot", FaultAnswer.YES));
        survey.getSymptoms().add(SampleHouse.symptom("smellAtUnit", FaultAnswer.NO));
    }

    /** The heater that is there stays as one option, another is like it, the first needs a new cable: 400 + 80 is 480, and so on. */
    @Test
    void anIssuedQuoteOfThreeOptions() throws IOException {
        people();
        OptionAssessment present = heater("h85", 8.5, Verdict.SUITS);
        present.setPresent(true);
        present.getFindings().add(flow(3.1));
        Finding bonding = finding("circuit.bonding", Outcome.FAILS, Supply.ELECTRICITY, "No bonding.", null);
        bonding.setKind(FindingClass.SAFETY);
        present.getFindings().add(bonding);
        OptionAssessment strong = heater("h95", 9.5, Verdict.SUITS_WITH_WORK);
        strong.getFindings().add(flow(3.3));
        strong.getRemedies().add(remedy("cable", "Renew 8 m of cable", "A new, thicker cable to the shower, 8 m"));
        strong.getRemedies().add(remedy("rcbo", "Change the RCBO", null));
        strong.getRemedies().add(remedy("isolator", null, null));
        Remedy fuse = remedy("fuse", "Larger fuse", "A larger main fuse");
        fuse.setEnquiry(true);
        strong.getRemedies().add(fuse);
        strong.getAfterWork().add(flow(3.9));
        OptionAssessment like = heater("h85n", 8.5, Verdict.CANNOT_TELL);
        like.getFindings().add(flow(3.1));
        like.getFindings().add(open("pressure.switch", Supply.WATER, "running pressure", "static pressure"));
        OptionAssessment large = heater("h105", 10.5, Verdict.DOES_NOT_SUIT);
        large.getFindings()
                .add(finding("circuit.cable", Outcome.FAILS, Supply.ELECTRICITY, "Too thin.", "The wire is too thin."));
        large.getFindings().add(finding("pressure.low", Outcome.FAILS, Supply.WATER, "The pressure is too low.", null));
        large.getUnmended().addAll(List.of("circuit.cable", "pressure.low"));
        heater("h75", 7.5, Verdict.SUITS);
        heater("h70", 7.0, Verdict.SUITS_WITH_WORK);
        QuoteOption first = option("h95", "Heater 9.5 kW", Verdict.SUITS_WITH_WORK, "1400.00", "280.00", "1680.00");
        section(first, "unit", "Heater", line("h95", "Heater 9.5 kW", "1", "each", "310.00"));
        section(
                first,
                "labour",
                "Labour",
                line("task-fit", "Changing the heater", "0.8333", "h", "45.00"),
                line("task-cable", "Pulling the cable", "2", "h", "108.00"));
        section(
                first,
                "remedial",
                "Materials",
                line("cable-10", "Cable 10 mm²", "8.5", "m", "42.50"),
                line("clip", "Clips", "12", "each", "4.80"),
                line("making", "Making good of plaster", "1", "each", "20.00"),
                line("making", "Making good of plaster (labour)", "0.5", "h", "27.00"),
                line("gift", "Left over", "1", "each", null));
        section(
                first,
                "contingency",
                "Contingency",
                line("contingency", "For what was not seen", "0.05", "share", "31.50"));
        section(first, "own", "Parking", line(null, "Parking of the van", null, null, "6.00"));
        first.getPayments().addAll(List.of(payment("with the order", "500.00"), payment("when done", "1180.00")));
        first.setLeadDays(12);
        first.setShowerCost(new BigDecimal("0.42"));
        first.getEnquiries().add("A larger main fuse: the operator's price");
        QuoteOption repair = option("h85", "Heater 8.5 kW", Verdict.SUITS, "200.00", "40.00", "240.00");
        repair.setName("present");
        repair.setRepairWork("A new valve fitted");
        section(repair, "labour", "Labour", line("task-fit", "Changing the heater", "0.5", "h", "27.00"));
        repair.setShowerCost(new BigDecimal("0.38"));
        QuoteOption third = option("h85n", "Heater 8.5 kW, new", Verdict.CANNOT_TELL, "400.00", "80.00", "480.00");
        third.setText("Something still has to be measured.");
        third.getTaxes().get(0).setLabel(null);
        third.getTaxes().get(0).setRate(new BigDecimal("0.05"));
        quote.setNumber("2026-0007");
        quote.setRevision(2);
        quote.setState(QuoteState.ISSUED);
        quote.setSummary("The shower is weak because its cable is thin.");
        quote.getCautions().add("Electricity and hot water can kill.");
        quote.getAssumptions().add("The loft can be walked on.");
        quote.getExclusions().add("Painting.");
        quote.getTerms().add("Pay within 14 days.");
        same("issued");
    }

    /** Nothing is certain yet: no signature, and what is to be measured first. */
    @Test
    void anEstimate() throws IOException {
        OptionAssessment one = heater("h95", 9.5, Verdict.CANNOT_TELL);
        one.getFindings().add(open("pressure.switch", Supply.WATER, "running pressure"));
        one.getFindings().add(open("pressure.flow", Supply.WATER, "running pressure", "flow"));
        one.getFindings().add(open("circuit.loop", Supply.ELECTRICITY, "loop impedance"));
        Finding unit = open("unit.age", Supply.NEITHER, "age of the unit");
        unit.unsetSupply();
        one.getFindings().add(unit);
        one.getFindings().add(flow(3.44));
        OptionAssessment unknown = heater("h75", 7.5, Verdict.CANNOT_TELL);
        unknown.setTitle(null);
        unknown.getFindings().add(open("circuit.loop", Supply.ELECTRICITY, "loop impedance", "cable size"));
        heater("h70", 7.0, Verdict.NOT_CHECKED);
        OptionAssessment like = heater("h71", 7.1, Verdict.NOT_AS_IT_IS);
        like.setBinding("circuit.cable");
        like.getFindings().add(finding("circuit.cable", Outcome.FAILS, Supply.ELECTRICITY, "Too thin.", null));
        like.getFindings().add(finding("circuit.drop", Outcome.FAILS, Supply.ELECTRICITY, "Not this.", null));
        heater("h72", 7.2, Verdict.DOES_NOT_SUIT);
        QuoteOption option = option("h95", null, Verdict.CANNOT_TELL, "1000.00", "200.00", "1200.00");
        option.setText("Something still has to be measured.");
        quote.setState(QuoteState.DRAFT);
        quote.setRepairLeftOut("its maker has called it back.");
        survey.setSite(SURVEY.createSite());
        survey.setCustomer(SURVEY.createCustomer());
        survey.getCustomer().setName("An invented customer");
        same("estimate");
        quote.setNumber("9");
        quote.setRevision(2);
        assertEquals("Estimate 9, revision 2", writer().reference());
        quote.setRevision(1);
        assertEquals("Estimate 9", writer().reference());
    }

    private QuoteLetterWriter writer() throws DocumentException {
        return new QuoteLetterWriter(
                QuoteDocument.of(survey, assessment, quote, Firm.of("", "", ""), "0", Locale.UK),
                new DocumentTexts(Locale.UK));
    }

    /** Nothing suits: why, and what the customer can do. */
    @Test
    void aReportWithoutAnOption() throws IOException {
        people();
        survey.getSymptoms().add(SampleHouse.symptom("rcdTrips", null));
        OptionAssessment present = heater("h85", 8.5, Verdict.SUITS);
        present.setPresent(true);
        OptionAssessment weak = heater("h95", 9.5, Verdict.DOES_NOT_SUIT);
        weak.setBinding("pressure.low");
        weak.getFindings()
                .add(finding("pressure.low", Outcome.FAILS, Supply.WATER, "Low.", "The pressure is too low."));
        OptionAssessment thin = heater("h90", 9.0, Verdict.DOES_NOT_SUIT);
        Finding cable = finding("circuit.cable", Outcome.FAILS, Supply.ELECTRICITY, null, null);
        cable.setTitle("Cable");
        thin.getFindings().add(cable);
        thin.getUnmended().add("circuit.cable");
        quote.getExclusions().add("Nobody reads this.");
        quote.getTerms().add("Nor this.");
        quote.getAssumptions().add("The loft can be walked on.");
        quote.setState(QuoteState.ISSUED);
        same("report");
        assertEquals("Report", writer().foot(), "a firm without a name");
        assertEquals(
                Instant.parse("2026-11-25T00:00:00Z"),
                QuoteDocument.of(survey, assessment, quote, Firm.of("", "", ""), "0", Locale.UK)
                        .time());
        quote.setDate(null);
        assertEquals(
                "noDate", assertThrows(DocumentException.class, this::writer).key());
    }

    /** One option alone is not recommended before others, and nobody signs to a firm without a name. */
    @Test
    void oneAcceptedOption() throws IOException {
        heater("h95", 9.5, Verdict.SUITS).getFindings().add(flow(3.4));
        option("h95", "Heater 9.5 kW", Verdict.SUITS, "400.00", "80.00", "480.00");
        quote.setState(QuoteState.ACCEPTED);
        quote.setNumber("8");
        same("accepted");
    }

    /** What was declined, has lapsed or was replaced has no box to sign, no form to cancel and no day until which it holds. */
    @Test
    void aQuoteOfYesterdayCannotBeSigned() throws DocumentException {
        option("h95", "Heater 9.5 kW", Verdict.SUITS, "400.00", "80.00", "480.00");
        quote.setNumber("8");
        for (QuoteState state : List.of(QuoteState.DECLINED, QuoteState.LAPSED, QuoteState.SUPERSEDED)) {
            quote.setState(state);
            QuoteLetter letter = writer().write();
            assertNull(letter.acceptance(), state.getName());
            assertEquals(List.of(), letter.smallPrint(), state.getName());
            assertEquals(1, letter.days().size(), state.getName());
        }
    }
}
