// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.interchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.xpath.XPath;
import javax.xml.xpath.XPathConstants;
import javax.xml.xpath.XPathFactory;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import twinfeed.document.Firm;
import twinfeed.model.quote.Payment;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.quote.TaxSum;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.model.survey.SurveyFactory;

/**
 * The Quotation says what the quote says. Names and order of its elements are judged by the schemas of OASIS UBL 2.1 where the command line
 * writes one; codes of units and taxes are from UN/ECE Recommendation 20 and the United Nations code list 5305, from memory.
 */
final class UblQuotationTest {
    private static final Firm FIRM = Firm.of("Netherquill (invented)", "1 Quay Lane;Westermere", "01632 960001");

    private final Quote quote = QuoteFactory.eINSTANCE.createQuote();
    private final Survey survey = SurveyFactory.eINSTANCE.createSurvey();

    private @Nullable Document document;

    UblQuotationTest() {
        quote.setNumber("2026-0042");
        quote.setRevision(2);
        quote.setDate(LocalDate.of(2026, 11, 25));
        quote.setCurrency("GBP");
        quote.getOptions().add(option("h85", "Heater 8.5 kW", "480.00", line("unit", "each", "1", "400.00")));
        quote.getOptions().add(option("h95", "Heater 9.5 kW", "510.00", line("unit", "each", "1", "425.00")));
    }

    private static QuoteOption option(String name, String title, String total, QuoteLine... lines) {
        QuoteOption option = QuoteFactory.eINSTANCE.createQuoteOption();
        option.setName(name);
        option.setTitle(title);
        option.setTotal(new BigDecimal(total));
        QuoteSection section = QuoteFactory.eINSTANCE.createQuoteSection();
        section.getLines().addAll(List.of(lines));
        option.getSections().add(section);
        return option;
    }

    private static QuoteLine line(String code, String unit, String quantity, String net) {
        QuoteLine line = QuoteFactory.eINSTANCE.createQuoteLine();
        line.setCode(code);
        line.setDescription("what is " + code);
        line.setUnit(unit);
        line.setQuantity(new BigDecimal(quantity));
        line.setNet(new BigDecimal(net));
        line.setTaxClass("standard");
        line.setTaxRate(new BigDecimal("0.2"));
        return line;
    }

    private void write(Locale locale) throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        UblQuotation.of(quote, survey, FIRM, locale).orElseThrow().write(bytes);
        document = DocumentBuilderFactory.newDefaultNSInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(bytes.toByteArray()));
    }

    private List<String> all(String path) throws Exception {
        if (document == null) {
            write(Locale.UK);
        }
        XPath reader = XPathFactory.newDefaultInstance().newXPath();
        NodeList found = (NodeList) reader.evaluate("/*/" + named(path), document, XPathConstants.NODESET);
        return IntStream.range(0, found.getLength())
                .mapToObj(each -> found.item(each).getTextContent())
                .toList();
    }

    /** A path without the prefixes of the namespaces, as the reader takes them. */
    private static String named(String path) {
        return String.join(
                "/",
                Stream.of(path.split("/"))
                        .map(each -> each.startsWith("@") ? each : "*[contains(name(), ':" + each + "')]")
                        .map(each -> each.replace("contains(name(), ':", "substring-after(name(), ':')='")
                                .replace("')]", "']"))
                        .toList());
    }

    private String one(String path) throws Exception {
        List<String> found = all(path);
        assertEquals(1, found.size(), path + " " + found);
        return found.get(0);
    }

    private QuoteOption first() {
        return quote.getOptions().get(0);
    }

    @Test
    void itIsNamedByNumberAndRevision() throws Exception {
        write(Locale.UK);
        assertEquals(
                "urn:oasis:names:specification:ubl:schema:xsd:Quotation-2",
                Objects.requireNonNull(document).getDocumentElement().getNamespaceURI());
        assertEquals("2.1", one("UBLVersionID"));
        assertEquals("2026-0042-r2", one("ID"));
        assertEquals("2026-11-25", one("IssueDate"));
        assertEquals("GBP", one("PricingCurrencyCode"));
        assertEquals(List.of(), all("ValidityPeriod"));
        assertEquals(List.of("Heater 8.5 kW", "Also offered: Heater 9.5 kW"), all("Note"));
    }

    @Test
    void aDraftHasNoNumberAndSaysSoInTheLanguageOfTheQuote() throws Exception {
        quote.setNumber(null);
        first().getEnquiries().add("Fliesen");
        write(Locale.GERMANY);
        assertEquals(List.of(), all("ID"));
        assertEquals(
                List.of(
                        "Entwurf, nicht abgegeben.",
                        "Heater 8.5 kW",
                        "Preis auf Anfrage: Fliesen",
                        "Auch angeboten: Heater 9.5 kW"),
                all("Note"));
    }

    @Test
    void itHoldsUntilTheLastDayOfTheQuote() throws Exception {
        quote.setValidUntil(LocalDate.of(2026, 12, 25));
        assertEquals("2026-11-25", one("ValidityPeriod/StartDate"));
        assertEquals("2026-12-25", one("ValidityPeriod/EndDate"));
    }

    @Test
    void theNotesHaveWhatTheOptionAndTheQuoteSayBesides() throws Exception {
        first().setText("It suits.");
        Payment payment = QuoteFactory.eINSTANCE.createPayment();
        payment.setTitle("On acceptance");
        payment.setAmount(new BigDecimal("120.00"));
        first().getPayments().add(payment);
        first().getEnquiries().add("tiles");
        quote.getCautions().add("Electricity can kill.");
        quote.getCautions().add(" ");
        assertEquals(
                List.of(
                        "Heater 8.5 kW",
                        "It suits.",
                        "On acceptance: 120.00 GBP",
                        "Price on request: tiles",
                        "Also offered: Heater 9.5 kW",
                        "Electricity can kill."),
                all("Note"));
    }

    @Test
    void theAcceptedOptionIsTheOneThatIsWritten() throws Exception {
        quote.setChosen("h95");
        assertEquals("510.00", one("QuotedMonetaryTotal/PayableAmount"));
        assertEquals(List.of("Heater 9.5 kW", "Also offered: Heater 8.5 kW"), all("Note"));
    }

    @Test
    void anOptionWithoutALineIsPassedOver() throws Exception {
        first().getSections().clear();
        assertEquals("510.00", one("QuotedMonetaryTotal/PayableAmount"));
        quote.getOptions().get(1).getSections().clear();
        assertTrue(UblQuotation.of(quote, survey, FIRM, Locale.UK).isEmpty(), "a Quotation needs a line");
    }

    @Test
    void sumsAreThoseOfTheOptionWithTheirCurrency() throws Exception {
        first().setNet(new BigDecimal("400.00"));
        first().setTax(new BigDecimal("80.00"));
        TaxSum sum = QuoteFactory.eINSTANCE.createTaxSum();
        sum.setTaxClass("reduced");
        sum.setLabel("reduced rate");
        sum.setRate(new BigDecimal("0.0525"));
        sum.setNet(new BigDecimal("300.00"));
        sum.setTax(new BigDecimal("15.75"));
        first().getTaxes().add(sum);
        assertEquals("400.00", one("QuotedMonetaryTotal/LineExtensionAmount"));
        assertEquals("400.00", one("QuotedMonetaryTotal/TaxExclusiveAmount"));
        assertEquals("480.00", one("QuotedMonetaryTotal/TaxInclusiveAmount"));
        assertEquals("GBP", one("QuotedMonetaryTotal/PayableAmount/@currencyID"));
        assertEquals("80.00", one("TaxTotal/TaxAmount"));
        assertEquals("300.00", one("TaxTotal/TaxSubtotal/TaxableAmount"));
        assertEquals("15.75", one("TaxTotal/TaxSubtotal/TaxAmount"));
        assertEquals("5.25", one("TaxTotal/TaxSubtotal/Percent"));
        assertEquals("AA", one("TaxTotal/TaxSubtotal/TaxCategory/ID"));
        assertEquals("reduced rate", one("TaxTotal/TaxSubtotal/TaxCategory/Name"));
        assertEquals("5.25", one("TaxTotal/TaxSubtotal/TaxCategory/Percent"));
        assertEquals("VAT", one("TaxTotal/TaxSubtotal/TaxCategory/TaxScheme/ID"));
    }

    @Test
    void anUnknownTaxRateIsLeftOutAndAnUnknownSumIsNothing() throws Exception {
        TaxSum sum = QuoteFactory.eINSTANCE.createTaxSum();
        first().getTaxes().add(sum);
        assertEquals("0", one("TaxTotal/TaxAmount"));
        assertEquals(List.of(), all("TaxTotal/TaxSubtotal/Percent"));
    }

    @Test
    void bothPartiesAndThePlaceOfTheWorkAreNamed() throws Exception {
        Customer customer = SurveyFactory.eINSTANCE.createCustomer();
        customer.setName("A. Tenant (invented)");
        customer.setAddress("2 Mill Row; ;Westermere\nWM1 9XX");
        customer.setPhone("01632 960002");
        survey.setCustomer(customer);
        Site site = SurveyFactory.eINSTANCE.createSite();
        site.setAddress("3 Mill Row");
        survey.setSite(site);
        assertEquals("Netherquill (invented)", one("SellerSupplierParty/Party/PartyName/Name"));
        assertEquals(
                List.of("1 Quay Lane", "Westermere"), all("SellerSupplierParty/Party/PostalAddress/AddressLine/Line"));
        assertEquals("01632 960001", one("SellerSupplierParty/Party/Contact/Note"));
        assertEquals("A. Tenant (invented)", one("BuyerCustomerParty/Party/PartyName/Name"));
        assertEquals(
                List.of("2 Mill Row", "Westermere", "WM1 9XX"),
                all("BuyerCustomerParty/Party/PostalAddress/AddressLine/Line"));
        assertEquals("01632 960002", one("BuyerCustomerParty/Party/Contact/Telephone"));
        assertEquals(List.of(), all("BuyerCustomerParty/Party/Contact/ElectronicMail"));
        assertEquals("3 Mill Row", one("Delivery/DeliveryAddress/AddressLine/Line"));
    }

    @Test
    void aPartyIsNamedAsFarAsItIsKnown() throws Exception {
        Customer customer = SurveyFactory.eINSTANCE.createCustomer();
        customer.setName(" ");
        customer.setAddress(" ");
        customer.setEmail("tenant@example.org");
        survey.setCustomer(customer);
        survey.setSite(SurveyFactory.eINSTANCE.createSite());
        assertEquals(List.of(), all("BuyerCustomerParty/Party/PartyName"));
        assertEquals(List.of(), all("BuyerCustomerParty/Party/PostalAddress"));
        assertEquals("tenant@example.org", one("BuyerCustomerParty/Party/Contact/ElectronicMail"));
        assertEquals(List.of(), all("Delivery"));
        customer.setEmail(null);
        customer.setAddress(null);
        write(Locale.UK);
        assertEquals(List.of(), all("BuyerCustomerParty/Party/Contact"));
        assertEquals(List.of(), all("BuyerCustomerParty/Party/PostalAddress"));
    }

    @Test
    void withoutACustomerThereIsNoBuyer() throws Exception {
        assertEquals(List.of(), all("BuyerCustomerParty"));
        assertEquals(List.of(), all("Delivery"));
    }

    @Test
    void aFirmWithoutContactHasNone() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        UblQuotation.of(quote, survey, Firm.of("", "", ""), Locale.UK)
                .orElseThrow()
                .write(bytes);
        String text = bytes.toString(StandardCharsets.UTF_8);
        assertFalse(text.contains("Contact"), text);
        assertFalse(text.contains("PartyName"), text);
    }

    @Test
    void theTermsAreItsConditions() throws Exception {
        assertEquals(List.of(), all("TransactionConditions"));
        quote.getTerms().addAll(List.of("Paid in 14 days.", "Work by competent persons."));
        write(Locale.UK);
        assertEquals(quote.getTerms(), all("TransactionConditions/Description"));
    }

    @Test
    void linesAreNumberedOverAllSections() throws Exception {
        QuoteSection labour = QuoteFactory.eINSTANCE.createQuoteSection();
        QuoteLine hours = line("labour", "h", "2.5", "125.00");
        hours.setUnitPrice(new BigDecimal("50.00"));
        hours.setNote("two persons");
        hours.setTaxClass("customer-accounts");
        labour.getLines().add(hours);
        QuoteLine bare = QuoteFactory.eINSTANCE.createQuoteLine();
        bare.setDescription("included");
        labour.getLines().add(bare);
        first().getSections().add(labour);
        assertEquals("3", one("LineCountNumeric"));
        assertEquals(List.of("1", "2", "3"), all("QuotationLine/ID"));
        assertEquals(List.of("1", "2", "3"), all("QuotationLine/LineItem/ID"));
        assertEquals(List.of("two persons"), all("QuotationLine/Note"));
        assertEquals(List.of("1", "2.5"), all("QuotationLine/LineItem/Quantity"));
        assertEquals(List.of("C62", "HUR"), all("QuotationLine/LineItem/Quantity/@unitCode"));
        assertEquals(List.of("400.00", "125.00"), all("QuotationLine/LineItem/LineExtensionAmount"));
        assertEquals(List.of("50.00"), all("QuotationLine/LineItem/Price/PriceAmount"));
        assertEquals(
                List.of("what is unit", "what is labour", "included"), all("QuotationLine/LineItem/Item/Description"));
        assertEquals(all("QuotationLine/LineItem/Item/Description"), all("QuotationLine/LineItem/Item/Name"));
        assertEquals(List.of("unit", "labour"), all("QuotationLine/LineItem/Item/SellersItemIdentification/ID"));
        assertEquals(List.of("S", "AE", "S"), all("QuotationLine/LineItem/Item/ClassifiedTaxCategory/ID"));
        assertEquals(List.of("20", "20"), all("QuotationLine/LineItem/Item/ClassifiedTaxCategory/Percent"));
    }

    @Test
    void unitsOfThePriceBookAreThoseOfTheStandard() throws Exception {
        Map<String, String> codes = Map.of("m", "MTR", "kg", "KGM", "L", "LTR", "m\u00b2", "MTK", "roll", "C62");
        for (Map.Entry<String, String> code : codes.entrySet()) {
            first().getSections().get(0).getLines().get(0).setUnit(code.getKey());
            write(Locale.UK);
            assertEquals(code.getValue(), one("QuotationLine/LineItem/Quantity/@unitCode"), code.getKey());
        }
    }

    /** XML 1.0, 2.2: most control characters have no place in a document, not even as references. */
    @Test
    void whatXmlCannotHoldIsLeftOut() throws Exception {
        first().setTitle("Heater\u0007 8.5\uffff kW & <more> ");
        first().setText("\u0001");
        assertEquals("Heater 8.5 kW & <more>", all("Note").get(0));
        assertNotEquals("", all("Note").get(1));
    }

    @Test
    void everyElementIsOnALineOfItsOwn() throws Exception {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        UblQuotation.of(quote, survey, FIRM, Locale.UK).orElseThrow().write(bytes);
        String text = bytes.toString(StandardCharsets.UTF_8);
        assertTrue(text.startsWith("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<Quotation "), text);
        assertTrue(text.contains("\n  <cbc:UBLVersionID>2.1</cbc:UBLVersionID>\n"), text);
        assertTrue(text.contains("\n    <cac:Party>\n      <cac:PartyName>\n        <cbc:Name>"), text);
        assertTrue(text.contains("\n      </cac:PartyName>\n"), text);
        assertTrue(text.endsWith("\n  </cac:QuotationLine>\n</Quotation>"), text);
    }
}
