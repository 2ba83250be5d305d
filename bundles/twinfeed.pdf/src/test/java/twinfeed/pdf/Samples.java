// SPDX-License-Identifier: EPL-2.0
package twinfeed.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import twinfeed.document.DocumentException;
import twinfeed.document.Firm;
import twinfeed.document.JobSheet;
import twinfeed.document.JobSheet.Column;
import twinfeed.document.JobSheet.Kind;
import twinfeed.document.JobSheet.Section;
import twinfeed.document.JobSheet.Table;
import twinfeed.document.JobSheet.Tone;
import twinfeed.document.QuoteDocument;
import twinfeed.document.QuoteLetter.Said;
import twinfeed.model.assessment.AssessmentFactory;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.Payment;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.quote.QuoteState;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/** Invented quotes and job sheets. */
final class Samples {
    static final Firm FIRM = new Firm("Brook & Alder Showers", "2 Quay Lane; Westermere", "0000 000", 0x2F5D7C, null);

    private static final QuoteFactory MAKE = QuoteFactory.eINSTANCE;

    private Samples() {}

    static QuoteDocument document(Quote quote, Firm firm) throws DocumentException {
        return document(quote, firm, "Rowan Cottage");
    }

    static QuoteDocument document(Quote quote, Firm firm, String site) throws DocumentException {
        Survey survey = SurveyFactory.eINSTANCE.createSurvey();
        survey.setSite(SurveyFactory.eINSTANCE.createSite());
        survey.getSite().setName(site);
        survey.getSite().setAddress("7 Rowan Lane; Westermere");
        survey.setCustomer(SurveyFactory.eINSTANCE.createCustomer());
        survey.getCustomer().setName("Alderbrook Lettings");
        return QuoteDocument.of(
                survey, AssessmentFactory.eINSTANCE.createAssessment(), quote, firm, "0.1.0", Locale.UK);
    }

    static Quote quote(int options, String text) {
        Quote quote = MAKE.createQuote();
        quote.setNumber("2026-0042");
        quote.setRevision(2);
        quote.setState(QuoteState.ISSUED);
        quote.setDate(LocalDate.of(2026, 11, 25));
        quote.setValidUntil(LocalDate.of(2026, 12, 25));
        quote.setCurrency("GBP");
        quote.setSummary("The pressure is too low for the switch when the kitchen tap runs.");
        for (int at = 1; at <= options; at++) {
            quote.getOptions().add(option(at, text));
        }
        quote.getCautions().add("Do not open the unit: it is live even when the water is off.");
        quote.getCautions().add("Hot water scalds within seconds.");
        quote.getAssumptions().add("The water in winter is 5 °C cold where it enters the house.");
        quote.getExclusions().add("Redecoration beyond making good");
        quote.getTerms().add("Half on order, the rest on completion.");
        return quote;
    }

    private static QuoteOption option(int number, String text) {
        QuoteOption option = MAKE.createQuoteOption();
        option.setHeaterId("heater-" + number);
        option.setTitle("Heater " + number);
        option.setVerdict(Verdict.values()[number % Verdict.values().length]);
        option.setText(text);
        QuoteSection section = MAKE.createQuoteSection();
        section.setTitle("Labour");
        option.getSections().add(section);
        option.setNet(new BigDecimal("1234.50").add(BigDecimal.valueOf(number)));
        option.setTax(new BigDecimal("246.90"));
        option.setTotal(option.getNet().add(option.getTax()));
        option.setLeadDays(number);
        option.getPayments().add(payment("on order", "400.00"));
        option.getPayments().add(payment("on completion", "1082.40"));
        return option;
    }

    private static Payment payment(String title, String amount) {
        Payment payment = MAKE.createPayment();
        payment.setTitle(title);
        payment.setAmount(new BigDecimal(amount));
        return payment;
    }

    /** Every kind of section and column. */
    static JobSheet jobSheet(String note) {
        Table table = new Table(
                List.of(
                        new Column("", Kind.TICK, 5),
                        new Column("Step", Kind.TEXT, 55),
                        new Column("Price", Kind.FIGURE, 10),
                        new Column("Sound", Kind.SIGN, 10),
                        new Column("Who", Kind.BOX, 20)),
                List.of(
                        List.of(JobSheet.DONE, "Open the isolator", "£1.00", "✓ yes", "A. Fitter"),
                        List.of("", "Lock the breaker", "", "? open", "")));
        return new JobSheet(
                "Job sheet",
                "rowan",
                List.of(new Said("Customer", "Alderbrook Lettings"), new Said("Unit", "Heater 8.5 kW")),
                new Said("Most likely", "The heating elements, about 80 %."),
                List.of(
                        new Section("For your safety", Tone.CAUTION, List.of("Isolate and prove dead first."), null),
                        new Section("Next step", Tone.NEXT, List.of(note), null),
                        new Section("Isolation", Tone.PLAIN, List.of("All of it."), table),
                        new Section(
                                "Work done",
                                Tone.PLAIN,
                                List.of(),
                                new Table(List.of(new Column("", Kind.BOX, 1)), List.of(List.of("")))),
                        new Section("Sources", Tone.SMALL, List.of("Judgement."), null)),
                List.of("Technician", "Instruments", "Date and signature"),
                FIRM,
                "0.1.0",
                Locale.UK,
                Instant.parse("2026-11-25T00:00:00Z"));
    }

    static byte[] logo() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(
                new java.awt.image.BufferedImage(120, 40, java.awt.image.BufferedImage.TYPE_INT_RGB), "png", bytes);
        return bytes.toByteArray();
    }
}
