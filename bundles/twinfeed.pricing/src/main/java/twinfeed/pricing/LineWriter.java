// SPDX-License-Identifier: EPL-2.0
package twinfeed.pricing;

import java.util.Locale;
import java.util.Objects;
import org.joda.money.Money;
import twinfeed.model.quote.QuoteFactory;
import twinfeed.model.quote.QuoteLine;
import twinfeed.pricing.texts.FigureText;

/** Puts texts and tax to a line. */
final class LineWriter {
    private final PriceList prices;
    private final Locale locale;
    private final FigureText figures;
    private final String discountReason;

    LineWriter(PriceList prices, QuoteRequest request) {
        this.prices = prices;
        locale = request.locale();
        figures = new FigureText(locale);
        Discount discount = request.discount();
        discountReason = discount == null ? "" : discount.reason();
    }

    QuoteLine write(PricedLine line) {
        QuoteLine written = QuoteFactory.eINSTANCE.createQuoteLine();
        written.setCode(line.code());
        written.setDescription(description(line));
        written.setQuantity(line.quantity());
        written.setUnit(unit(line));
        written.setUnitPrice(line.unitPrice().getAmount());
        written.setNet(line.net().getAmount());
        Money cost = line.cost();
        written.setCost(cost == null ? null : cost.getAmount());
        tax(line, written);
        written.setSource(source(line));
        BillItem ask = line.ask();
        written.setReason(ask == null || ask.reasons().isEmpty() ? null : ask.reasons());
        written.setNote(note(line));
        return written;
    }

    private void tax(PricedLine line, QuoteLine written) {
        TaxTable.Rate rate = prices.taxes().rate(line.taxClass());
        written.setTaxClass(line.taxClass().key());
        written.setTaxRate(rate.charged());
        if (prices.rounding() == Rounding.LINE) {
            written.setTax(Rounding.share(line.net(), rate.charged()).getAmount());
        }
    }

    private String description(PricedLine line) {
        PricedItem item = line.item();
        return switch (line.kind()) {
            case ITEM -> Objects.requireNonNull(item).description();
            case LABOUR -> labour(Objects.requireNonNull(item));
            case MINIMUM -> text("line.minimum", prices.minimumMinutes());
            case CONTINGENCY -> text("line.contingency");
            case DISCOUNT -> discountReason.isBlank() ? text("line.discount") : discountReason;
        };
    }

    /** Where the thing is charged too, its labour is told apart from it. */
    private String labour(PricedItem item) {
        return item.price() == null ? item.description() : text("line.labour", item.description());
    }

    private String unit(PricedLine line) {
        PricedItem item = line.item();
        return switch (line.kind()) {
            case ITEM -> itemUnit(Objects.requireNonNull(item).unit());
            case LABOUR -> text("unit.hour");
            case CONTINGENCY -> text("unit.share");
            case MINIMUM, DISCOUNT -> text("unit.sum");
        };
    }

    /** Units that are words are said in the language; those of the SI are the same in all. */
    private String itemUnit(String unit) {
        return switch (unit) {
            case "each" -> text("unit.each");
            case "visit" -> text("unit.visit");
            default -> unit;
        };
    }

    private String source(PricedLine line) {
        PricedItem item = line.item();
        BillItem ask = line.ask();
        return switch (line.kind()) {
            case ITEM ->
                text(
                        "source.item",
                        line.code(),
                        figures.day(Objects.requireNonNull(item).date()));
            case LABOUR ->
                text(
                        "source.labour",
                        line.code(),
                        figures.number(Objects.requireNonNull(ask).quantity()),
                        figures.number(Objects.requireNonNull(item).minutes()),
                        figures.amount(prices.labourRate()),
                        figures.day(prices.date()));
            case MINIMUM ->
                text(
                        "source.minimum",
                        prices.minimumMinutes(),
                        figures.amount(prices.labourRate()),
                        figures.day(prices.date()));
            case CONTINGENCY ->
                text("source.contingency", figures.percent(line.quantity()), figures.amount(line.unitPrice()));
            case DISCOUNT -> text("source.discount");
        };
    }

    /** Remarks of the remedies, and why more is charged than is built in. */
    private @org.jspecify.annotations.Nullable String note(PricedLine line) {
        BillItem ask = line.ask();
        PricedItem item = line.item();
        if (ask == null || item == null || line.kind() != PricedLine.Kind.ITEM) {
            return null;
        }
        String notes = ask.notes();
        if (line.quantity().compareTo(ask.quantity()) != 0) {
            String built = figures.number(ask.quantity()) + " " + item.unit();
            String more = item.wholeLength() == null
                    ? text("note.waste", built, figures.percent(item.waste()))
                    : text("note.wholeLengths", built, figures.percent(item.waste()), lengthOf(item));
            notes = notes.isEmpty() ? more : notes + "; " + more;
        }
        return notes.isEmpty() ? null : notes;
    }

    private String lengthOf(PricedItem item) {
        return figures.number(Objects.requireNonNull(item.wholeLength())) + " " + item.unit();
    }

    private String text(String key, Object... arguments) {
        return QuoteException.MESSAGES.inOrder(locale, key, arguments);
    }
}
