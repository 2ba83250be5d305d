// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.interchange;

import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import org.jspecify.annotations.Nullable;
import twinfeed.document.Firm;
import twinfeed.model.quote.Payment;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.TaxSum;
import twinfeed.model.survey.Customer;
import twinfeed.model.survey.Site;
import twinfeed.model.survey.Survey;
import twinfeed.quotes.QuoteLife;
import twinfeed.units.text.Texts;

/**
 * A quote as a document of the type Quotation of the OASIS Universal Business Language, version 2.1, so that office programs can take it. Such a
 * document has one total, so it holds one option: the accepted one, before that the first; the others are named in a note. Costs are no part of it.
 */
public final class UblQuotation {
    /** Units of sale by UN/ECE Recommendation 20. */
    private static final Map<String, String> UNITS =
            Map.of("each", "C62", "visit", "C62", "m", "MTR", "h", "HUR", "kg", "KGM", "L", "LTR", "m\u00b2", "MTK");

    /** Tax categories by the United Nations code list 5305. */
    private static final Map<String, String> CATEGORIES =
            Map.of("standard", "S", "reduced", "AA", "zero", "Z", "outside", "O", "customer-accounts", "AE");

    private static final String CURRENCY = "currencyID";

    private static final Texts TEXTS = new Texts(UblQuotation.class, "Interchange");

    private final Quote quote;
    private final QuoteOption option;
    private final Survey survey;
    private final Firm firm;
    private final Locale locale;

    private UblQuotation(Quote quote, QuoteOption option, Survey survey, Firm firm, Locale locale) {
        this.quote = quote;
        this.option = option;
        this.survey = survey;
        this.firm = firm;
        this.locale = locale;
    }

    /**
     * Of a quote; empty if the quote has no option with a price, for a Quotation cannot be without a line.
     *
     * @param survey customer and site
     * @param firm who quotes
     * @param locale language of the quote's texts
     */
    public static Optional<UblQuotation> of(Quote quote, Survey survey, Firm firm, Locale locale) {
        return quote.getOptions().stream()
                .filter(each -> quote.getChosen() == null || Objects.equals(quote.getChosen(), each.getName()))
                .filter(each -> lines(each).findAny().isPresent())
                .findFirst()
                .map(option -> new UblQuotation(quote, option, survey, firm, locale));
    }

    private static Stream<QuoteLine> lines(QuoteOption option) {
        return option.getSections().stream().flatMap(section -> section.getLines().stream());
    }

    /** Writes it; the stream is left open. */
    public void write(OutputStream out) throws IOException {
        try (UblXml xml = new UblXml(out)) {
            xml.document("Quotation", () -> content(xml));
        } catch (XMLStreamException failed) {
            throw new IOException(failed);
        }
    }

    private void content(UblXml xml) throws XMLStreamException {
        xml.value("UBLVersionID", "2.1");
        xml.value("ID", quote.getNumber() == null ? null : QuoteLife.name(quote));
        xml.value("IssueDate", quote.getDate());
        for (String note : notes()) {
            xml.value("Note", note);
        }
        xml.value("PricingCurrencyCode", quote.getCurrency());
        xml.value("LineCountNumeric", lines(option).count());
        if (quote.getValidUntil() != null) {
            xml.part("ValidityPeriod", () -> {
                xml.value("StartDate", quote.getDate());
                xml.value("EndDate", quote.getValidUntil());
            });
        }
        xml.part(
                "SellerSupplierParty",
                () -> xml.part("Party", () -> {
                    name(xml, firm.name());
                    address(xml, "PostalAddress", firm.address());
                    if (!firm.headContact().isBlank()) {
                        xml.part("Contact", () -> xml.value("Note", firm.headContact()));
                    }
                }));
        buyer(xml);
        site(xml);
        if (!quote.getTerms().isEmpty()) {
            xml.part("TransactionConditions", () -> {
                for (String term : quote.getTerms()) {
                    xml.value("Description", term);
                }
            });
        }
        taxes(xml);
        xml.part("QuotedMonetaryTotal", () -> {
            amount(xml, "LineExtensionAmount", option.getNet());
            amount(xml, "TaxExclusiveAmount", option.getNet());
            amount(xml, "TaxInclusiveAmount", option.getTotal());
            amount(xml, "PayableAmount", option.getTotal());
        });
        int number = 0;
        for (QuoteLine line : lines(option).toList()) {
            line(xml, ++number, line);
        }
    }

    private List<String> notes() {
        return Stream.of(
                        Stream.of(quote.getNumber() == null ? text("draft") : ""),
                        Stream.of(Objects.requireNonNullElse(option.getTitle(), "")),
                        Stream.of(Objects.requireNonNullElse(option.getText(), "")),
                        option.getPayments().stream().map(this::payment),
                        option.getEnquiries().stream().map(each -> text("request") + ": " + each),
                        quote.getOptions().stream()
                                .filter(other -> other != option)
                                .map(other -> text("also") + ": " + other.getTitle()),
                        quote.getCautions().stream())
                .flatMap(each -> each)
                .filter(note -> !note.isBlank())
                .toList();
    }

    private String text(String key) {
        return TEXTS.get(locale, key);
    }

    private String payment(Payment payment) {
        return payment.getTitle() + ": " + payment.getAmount().toPlainString() + " " + quote.getCurrency();
    }

    private void buyer(UblXml xml) throws XMLStreamException {
        Customer customer = survey.getCustomer();
        if (customer == null) {
            return;
        }
        xml.part(
                "BuyerCustomerParty",
                () -> xml.part("Party", () -> {
                    name(xml, customer.getName());
                    address(xml, "PostalAddress", customer.getAddress());
                    if (customer.getPhone() != null || customer.getEmail() != null) {
                        xml.part("Contact", () -> {
                            xml.value("Telephone", customer.getPhone());
                            xml.value("ElectronicMail", customer.getEmail());
                        });
                    }
                }));
    }

    private void site(UblXml xml) throws XMLStreamException {
        Site site = survey.getSite();
        if (site != null && site.getAddress() != null) {
            xml.part("Delivery", () -> address(xml, "DeliveryAddress", site.getAddress()));
        }
    }

    private static void name(UblXml xml, @Nullable String name) throws XMLStreamException {
        if (name != null && !name.isBlank()) {
            xml.part("PartyName", () -> xml.value("Name", name));
        }
    }

    private static void address(UblXml xml, String part, @Nullable String address) throws XMLStreamException {
        if (address == null || address.isBlank()) {
            return;
        }
        xml.part(part, () -> {
            for (String line : Arrays.asList(address.split("[;\\n]"))) {
                if (!line.isBlank()) {
                    xml.part("AddressLine", () -> xml.value("Line", line));
                }
            }
        });
    }

    private void taxes(UblXml xml) throws XMLStreamException {
        xml.part("TaxTotal", () -> {
            amount(xml, "TaxAmount", option.getTax());
            for (TaxSum sum : option.getTaxes()) {
                xml.part("TaxSubtotal", () -> {
                    amount(xml, "TaxableAmount", sum.getNet());
                    amount(xml, "TaxAmount", sum.getTax());
                    xml.value("Percent", percent(sum.getRate()));
                    category(xml, "TaxCategory", sum.getTaxClass(), sum.getLabel(), sum.getRate());
                });
            }
        });
    }

    private static void category(
            UblXml xml, String part, @Nullable String taxClass, @Nullable String label, @Nullable BigDecimal rate)
            throws XMLStreamException {
        xml.part(part, () -> {
            xml.value("ID", CATEGORIES.getOrDefault(String.valueOf(taxClass), "S"));
            xml.value("Name", label);
            xml.value("Percent", percent(rate));
            xml.part("TaxScheme", () -> xml.value("ID", "VAT"));
        });
    }

    private static @Nullable String percent(@Nullable BigDecimal rate) {
        return rate == null ? null : rate.movePointRight(2).stripTrailingZeros().toPlainString();
    }

    private void amount(UblXml xml, String name, @Nullable BigDecimal amount) throws XMLStreamException {
        BigDecimal known = amount == null ? BigDecimal.ZERO : amount;
        xml.value(name, known.toPlainString(), CURRENCY, quote.getCurrency());
    }

    private void line(UblXml xml, int number, QuoteLine line) throws XMLStreamException {
        xml.part("QuotationLine", () -> {
            xml.value("ID", number);
            xml.value("Note", line.getNote());
            xml.part("LineItem", () -> {
                xml.value("ID", number);
                if (line.getQuantity() != null) {
                    xml.value("Quantity", line.getQuantity().toPlainString(), "unitCode", unit(line));
                }
                if (line.getNet() != null) {
                    amount(xml, "LineExtensionAmount", line.getNet());
                }
                if (line.getUnitPrice() != null) {
                    xml.part("Price", () -> amount(xml, "PriceAmount", line.getUnitPrice()));
                }
                xml.part("Item", () -> {
                    xml.value("Description", line.getDescription());
                    xml.value("Name", line.getDescription());
                    if (line.getCode() != null) {
                        xml.part("SellersItemIdentification", () -> xml.value("ID", line.getCode()));
                    }
                    category(xml, "ClassifiedTaxCategory", line.getTaxClass(), null, line.getTaxRate());
                });
            });
        });
    }

    /** A unit that the list does not know is counted. */
    private static String unit(QuoteLine line) {
        return UNITS.getOrDefault(String.valueOf(line.getUnit()), "C62");
    }
}
