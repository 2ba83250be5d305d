// SPDX-License-Identifier: EPL-2.0
package twinfeed.workbook;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import twinfeed.document.DocumentException;
import twinfeed.document.Firm;
import twinfeed.document.QuoteDocument;
import twinfeed.model.assessment.Verdict;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.quote.QuoteState;

/** A quote with invented prices. */
final class SampleQuote {
    private static final QuoteFactory MAKE = QuoteFactory.eINSTANCE;
    private static final BigDecimal STANDARD = new BigDecimal("0.20");

    private SampleQuote() {}

    static QuoteDocument document() throws DocumentException {
        Firm firm = Firm.of(
                "Brook & Alder Showers",
                "The Old Pump House; Quay Street; Westermere WM1 1AA",
                "01234 567890; office@example.org; registered electricians");
        return QuoteDocument.of(SampleSurvey.make(), SampleAssessment.make(), make(), firm, "0.1.0", Locale.UK);
    }

    static Quote make() {
        Quote quote = MAKE.createQuote();
        quote.setNumber("2026-0042");
        quote.setRevision(1);
        quote.setDate(LocalDate.of(2026, 11, 25));
        quote.setValidUntil(LocalDate.of(2026, 12, 25));
        quote.setState(QuoteState.ISSUED);
        quote.setCurrency("GBP");
        quote.setSummary(
                "The pressure at the shower is too low for its switch when the kitchen tap runs, so the heat goes off;"
                        + " a stronger shower needs a thicker cable.");
        quote.setBookTitle("Demo price book");
        quote.setBookDate(LocalDate.of(2026, 9, 1));
        quote.setBookNote("All prices are invented.");
        quote.getOptions()
                .add(option(
                        "heater-85",
                        "Heater 8.5 kW, two-element",
                        Verdict.SUITS,
                        "About a litre a minute more" + " than now in winter, on the cable that is there.",
                        false));
        quote.getOptions()
                .add(option(
                        "heater-95",
                        "Heater 9.5 kW, two-element",
                        Verdict.SUITS_WITH_WORK,
                        "Nearly two litres a" + " minute more than now in winter, with a new cable.",
                        true));
        words(quote);
        return quote;
    }

    private static void words(Quote quote) {
        quote.getAssumptions().add("The water in winter is 5 °C cold where it enters the house.");
        quote.getAssumptions()
                .add("The cable in the loft lies on top of the insulation (assumed, not seen over its whole length);"
                        + " if it differs, the price changes.");
        quote.getAssumptions()
                .add(
                        "The service fuse is rated 80 A as its carrier is marked; the network operator has not confirmed it.");
        quote.getExclusions().add("Redecoration beyond making good");
        quote.getExclusions().add("Work on the water main outside the house");
        quote.getExclusions().add("Removal of textured coatings that may hold asbestos");
        quote.getTerms().add("A contract made at your home can usually be cancelled within 14 days; check local law.");
        quote.getTerms().add("Half on order, the rest on completion.");
        quote.getTerms().add("We notify the work and hand over the installation certificate.");
        quote.getCautions()
                .add(
                        "Do not open the unit: it is live even when the water is off. Switch it off at the pull cord and have it"
                                + " looked at by a licensed electrician.");
        quote.getCautions()
                .add(
                        "Hot water scalds within seconds: for children and frail people set no more than 41 °C and test with the"
                                + " hand first.");
        quote.getCautions().add("Local wiring and water rules come first.");
    }

    private static QuoteOption option(String heater, String title, Verdict verdict, String text, boolean cable) {
        QuoteOption option = MAKE.createQuoteOption();
        option.setHeaterId(heater);
        option.setTitle(title);
        option.setVerdict(verdict);
        option.setText(text);
        QuoteSection unit = section(option, "unit", "Shower unit");
        unit.getLines().add(line(heater, title, "1", "each", cable ? "214.90" : "189.45", STANDARD));
        if (cable) {
            QuoteSection work = section(option, "remedial", "Cable and protection");
            work.getLines().add(line("cable-10", "Cable 10 mm², flat twin and earth", "17.05", "m", "6.155", STANDARD));
            work.getLines().add(line("breaker-45", "Breaker 45 A", "1", "each", "18.3", STANDARD));
            work.getLines()
                    .add(line("operator-fuse", "Larger service fuse by the network operator", "1", "each", null, null));
            option.getEnquiries().add("Larger service fuse by the network operator");
        }
        QuoteSection labour = section(option, "labour", "Labour");
        labour.getLines().add(line("labour", "Replace the unit", cable ? "2.75" : "1.5", "h", "52.00", STANDARD));
        QuoteSection testing = section(option, "testing", "Testing and certificate");
        testing.getLines().add(line("certificate", "Certificate", "1", "each", "35.00", STANDARD));
        testing.getLines().add(line("notification", "Notification fee", "1", "each", "4.20", null));
        sum(option);
        return option;
    }

    private static QuoteSection section(QuoteOption option, String key, String title) {
        QuoteSection section = MAKE.createQuoteSection();
        section.setKey(key);
        section.setTitle(title);
        option.getSections().add(section);
        return section;
    }

    static QuoteLine line(
            String code, String text, String quantity, String unit, @Nullable String price, @Nullable BigDecimal rate) {
        QuoteLine line = MAKE.createQuoteLine();
        line.setCode(code);
        line.setDescription(text);
        line.setQuantity(new BigDecimal(quantity));
        line.setUnit(unit);
        line.setTaxClass(rate == null ? "outside" : "standard");
        line.setTaxRate(rate);
        line.setSource("Price book, item " + code + ", 1 September 2026");
        if (price != null) {
            line.setUnitPrice(new BigDecimal(price));
            line.setNet(line.getQuantity().multiply(line.getUnitPrice()).setScale(2, RoundingMode.HALF_UP));
            BigDecimal tax = rate == null ? BigDecimal.ZERO : line.getNet().multiply(rate);
            line.setTax(tax.setScale(2, RoundingMode.HALF_UP));
        }
        return line;
    }

    static void sum(QuoteOption option) {
        BigDecimal net = BigDecimal.ZERO.setScale(2);
        BigDecimal tax = net;
        for (QuoteSection section : option.getSections()) {
            for (QuoteLine line : section.getLines()) {
                net = line.getNet() == null ? net : net.add(line.getNet());
                tax = line.getTax() == null ? tax : tax.add(line.getTax());
            }
        }
        option.setNet(net);
        option.setTax(tax);
        option.setTotal(net.add(tax));
    }
}
