// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import org.joda.money.BigMoney;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.assessment.Remedy;
import twinfeed.model.pricebook.PaymentTerm;
import twinfeed.model.quote.Payment;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.pricing.texts.FigureText;

/** Writes one option of a quote. */
final class OptionWriter {
    private static final String STANDARD = "standard-work";
    private static final String EXTRA = "estimator";
    private static final String UNIT = "unit";

    /** Eight minutes; common practice for the length of a shower. */
    private static final BigDecimal SHOWER_HOURS =
            new BigDecimal("8").divide(new BigDecimal("60"), MathContext.DECIMAL64);

    private final QuoteRequest request;
    private final PriceList prices;
    private final ContingencyReasons doubts;
    private final Locale locale;
    private final FaultReport.@Nullable Repair repair;

    OptionWriter(QuoteRequest request, PriceList prices, ContingencyReasons doubts) {
        this.request = request;
        this.prices = prices;
        this.doubts = doubts;
        locale = request.locale();
        repair = request.faults().repair();
    }

    /** What the option needs; codes that the book lacks are among its missing ones. */
    BillOfQuantities asks(OptionAssessment option) {
        BillOfQuantities asks = new BillOfQuantities(prices);
        boolean replacement = !OptionChoice.present(option);
        if (replacement) {
            String own = option.getPriceItem();
            asks.unit(own == null ? OptionChoice.name(option) : own, UNIT);
        } else if (repair != null) {
            List<RequiredItem> needs =
                    renewedByWork(option, repair) ? FaultReport.Repair.needs(List.of()) : repair.needs();
            needs.forEach(need -> asks.add(need, String.valueOf(repair.part())));
        }
        for (Remedy remedy : option.getRemedies()) {
            for (RequiredItem need : RequiredItem.of(remedy)) {
                asks.add(need, remedy.getId(), note(remedy, need.code()));
            }
        }
        request.extras().getOrDefault(OptionChoice.name(option), List.of()).forEach(need -> asks.add(need, EXTRA));
        asks.complete(replacement, STANDARD);
        return asks;
    }

    private static String note(Remedy remedy, String code) {
        return remedy.getItems().stream()
                .filter(item -> code.equals(item.getCode()) && item.getNote() != null)
                .map(item -> item.getNote())
                .findFirst()
                .orElse("");
    }

    QuoteOption write(OptionAssessment option, BillOfQuantities asks) {
        QuoteOption written = QuoteFactory.eINSTANCE.createQuoteOption();
        written.setName(OptionChoice.name(option));
        written.setHeaterId(option.getHeaterId());
        written.setTitle(title(option));
        if (option.isSetVerdict()) {
            written.setVerdict(option.getVerdict());
        }
        FaultReport.Repair renewal = renewal(option);
        if (renewal != null) {
            written.setPart(renewal.part());
            written.setRepairWork(renewedByWork(option, renewal) ? null : renewal.work());
        }
        written.setText(new OptionText(locale, renewal != null).of(option));
        List<QuoteLine> lines = sections(written, lines(option, asks));
        totals(written, lines);
        written.getEnquiries().addAll(enquiries(option, asks));
        leadDays(option, asks, written);
        showerCost(option, written);
        return written;
    }

    /** The repair, where the option is the unit that stays and a part of it is renewed. */
    private FaultReport.@Nullable Repair renewal(OptionAssessment option) {
        return OptionChoice.present(option) && repair != null && repair.part() != null ? repair : null;
    }

    /** Whether the work on the supplies renews that part already, such as an isolator: it is neither named nor charged twice. */
    private static boolean renewedByWork(OptionAssessment option, FaultReport.Repair repair) {
        return option.getRemedies().stream()
                .flatMap(remedy -> remedy.getItems().stream())
                .anyMatch(item -> repair.codes().contains(item.getCode()));
    }

    private String title(OptionAssessment option) {
        String title = Objects.requireNonNullElse(option.getTitle(), OptionChoice.name(option));
        if (!OptionChoice.present(option)) {
            return title;
        }
        return text(renewal(option) == null ? "option.present" : "option.repair", title);
    }

    private List<PricedLine> lines(OptionAssessment option, BillOfQuantities asks) {
        List<PricedLine> lines = new ArrayList<>(new Pricer(prices).lines(asks));
        Adjustments adjustments = new Adjustments(prices);
        // Inside the unit no route and no reading of the supplies is in doubt.
        boolean inside = renewal(option) != null && option.getRemedies().isEmpty();
        if (request.book().getContingency() != null && !inside && doubts.any(option)) {
            lines.addAll(
                    adjustments.contingency(lines, Shares.exact(request.book().getContingency())));
        }
        Discount discount = request.discount();
        if (discount != null) {
            lines.addAll(adjustments.discount(lines, discount));
        }
        return lines;
    }

    private List<QuoteLine> sections(QuoteOption written, List<PricedLine> lines) {
        LineWriter writer = new LineWriter(prices, request);
        List<QuoteLine> all = new ArrayList<>();
        for (Section section : Section.values()) {
            List<QuoteLine> own = lines.stream()
                    .filter(line -> line.section() == section)
                    .map(writer::write)
                    .toList();
            if (!own.isEmpty()) {
                QuoteSection part = QuoteFactory.eINSTANCE.createQuoteSection();
                part.setKey(section.key());
                part.setTitle(text("section." + section.key()));
                part.getLines().addAll(own);
                written.getSections().add(part);
                all.addAll(own);
            }
        }
        return all;
    }

    private void totals(QuoteOption written, List<QuoteLine> lines) {
        written.getTaxes().addAll(new TaxSums(prices, locale).of(lines));
        Money net = TaxSums.total(
                prices.currency(),
                written.getTaxes().stream().map(sum -> sum.getNet()).toList());
        Money tax = TaxSums.total(
                prices.currency(),
                written.getTaxes().stream().map(sum -> sum.getTax()).toList());
        written.setNet(net.getAmount());
        written.setTax(tax.getAmount());
        written.setTotal(net.plus(tax).getAmount());
        payments(written, net.plus(tax));
    }

    private void payments(QuoteOption written, Money total) {
        List<PaymentTerm> terms = request.book().getPayments();
        if (terms.isEmpty()) {
            return;
        }
        List<BigDecimal> shares =
                terms.stream().map(term -> Shares.orZero(term.getShare())).toList();
        List<Money> amounts = Allocation.divide(total, shares);
        for (int i = 0; i < amounts.size(); i++) {
            Payment payment = QuoteFactory.eINSTANCE.createPayment();
            payment.setTitle(terms.get(i).getTitle());
            payment.setShare(shares.get(i));
            payment.setAmount(amounts.get(i).getAmount());
            written.getPayments().add(payment);
        }
    }

    /** What is still to be priced: items on enquiry, and remedies on enquiry none of whose items says so. */
    private List<String> enquiries(OptionAssessment option, BillOfQuantities asks) {
        List<String> enquiries = new ArrayList<>();
        for (BillItem ask : asks.all()) {
            if (ask.item().onEnquiry() && ask.quantity().signum() > 0) {
                enquiries.add(customerWords(option, ask).orElseGet(() -> enquiry(ask)));
            }
        }
        for (Remedy remedy : option.getRemedies()) {
            boolean said = remedy.getItems().stream().anyMatch(item -> prices.find(item.getCode())
                    .map(PricedItem::onEnquiry)
                    .orElse(false));
            if (Boolean.TRUE.equals(remedy.getEnquiry()) && !said) {
                enquiries.add(Objects.requireNonNullElseGet(
                        remedy.getCustomerTitle(),
                        () -> text("enquiry.remedy", Objects.requireNonNullElse(remedy.getTitle(), remedy.getId()))));
            }
        }
        return enquiries;
    }

    /** What the electricity of a shower costs, so that options can be compared; at rated power, which is more than a winter's voltage gives. */
    private void showerCost(OptionAssessment option, QuoteOption written) {
        BigDecimal price = request.book().getEnergyPrice();
        if (price != null && price.signum() > 0 && option.getPowerKw() != null) {
            BigDecimal energyKwh = BigDecimal.valueOf(option.getPowerKw()).multiply(SHOWER_HOURS);
            written.setShowerCost(Rounding.halfUp(BigMoney.of(prices.currency(), price.multiply(energyKwh)))
                    .getAmount());
        }
    }

    /** What the customer is told of the work that asks for an item, where only one does. */
    private Optional<String> customerWords(OptionAssessment option, BillItem ask) {
        List<Remedy> asking = option.getRemedies().stream()
                .filter(remedy -> remedy.getItems().stream()
                        .anyMatch(item -> ask.item().code().equals(item.getCode())))
                .toList();
        return asking.size() == 1 ? Optional.ofNullable(asking.get(0).getCustomerTitle()) : Optional.empty();
    }

    /** One piece needs no number. */
    private String enquiry(BillItem ask) {
        PricedItem item = ask.item();
        boolean one =
                ask.quantity().compareTo(BigDecimal.ONE) == 0 && item.unit().equals("each");
        return one
                ? text("enquiry.remedy", item.description())
                : text("enquiry.item", new FigureText(locale).number(ask.quantity()), item.unit(), item.description());
    }

    private static void leadDays(OptionAssessment option, BillOfQuantities asks, QuoteOption written) {
        int days = 0;
        for (BillItem ask : asks.all()) {
            days = Math.max(days, ask.item().leadDays());
        }
        for (Remedy remedy : option.getRemedies()) {
            days = Math.max(days, Objects.requireNonNullElse(remedy.getLeadDays(), 0));
        }
        if (days > 0) {
            written.setLeadDays(days);
        }
    }

    private String text(String key, Object... arguments) {
        return QuoteException.MESSAGES.inOrder(locale, key, arguments);
    }
}
