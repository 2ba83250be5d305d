// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.EntryDialog;
import twinfeed.desktop.look.EntryDialog.Entry;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.session.JobServices;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Decimals;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.DiscountEntry;
import twinfeed.desktop.view.LineEntry;
import twinfeed.desktop.view.ManualChanges;
import twinfeed.desktop.view.OfferList;
import twinfeed.desktop.view.OptionTable;
import twinfeed.desktop.view.QuoteRow;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.pricebook.PriceItem;
import twinfeed.model.pricebook.TaxRate;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.usecase.choices.OwnLine;
import twinfeed.usecase.choices.QuoteChoices;

/** Asks what is to be changed of the quote by hand, and changes it: one edit each, which undo takes back. */
final class QuoteChanges {
    private final Shell shell;
    private final JobSession session;
    private final Words words;

    QuoteChanges(Shell shell, JobSession session, Words words) {
        this.shell = shell;
        this.session = session;
        this.words = words;
    }

    private QuoteChoices choices() {
        return session.quoteEdits().choices();
    }

    private ManualChanges handMade() {
        return new ManualChanges(choices(), words);
    }

    /** Whether there is a quote that can be changed. */
    boolean possible() {
        JobResult result = session.result();
        return result != null && result.judged() != null && session.services().prices(session.survey()) != null;
    }

    /** Whether anything was changed. */
    boolean any() {
        return choices().any();
    }

    /** What is offered, in which order, and why the first is recommended. */
    void offer() {
        JobResult result = session.result();
        if (result == null || result.judged() == null) {
            return;
        }
        OptionTable rows = new OptionTable(words);
        List<OfferList.Entry> all = result.judged().record().getOptions().stream()
                .map(option -> new OfferList.Entry(
                        OptionTable.offerKey(option), rows.title(option) + ": " + rows.verdict(option, result), false))
                .toList();
        List<String> offered = result.quote() == null
                ? choices().heaters()
                : result.quote().getOptions().stream().map(QuoteOption::getName).toList();
        OfferList list = new OfferList(all, offered);
        OfferDialog dialog = new OfferDialog(shell, words, list, choices().reason());
        if (dialog.open() == Window.OK) {
            session.quoteEdits().change(choices().offering(list.offered(), dialog.reason()));
        }
    }

    /** A line of the price book, or in words of one's own. */
    void add() {
        JobServices.@Nullable Prices prices = session.services().prices(session.survey());
        if (prices == null) {
            return;
        }
        List<PriceItem> items = List.copyOf(prices.book().getItems());
        List<String> codes = new ArrayList<>(List.of(words.get("line.own")));
        items.forEach(item -> codes.add(item.getCode() + " \u2013 " + item.getDescription()));
        List<String> classes = prices.book().getTaxRates().stream()
                .map(TaxRate::getTaxClass)
                .distinct()
                .toList();
        String option = option();
        List<String> scopes = option.isEmpty()
                ? List.of(words.get("line.everyOption"))
                : List.of(words.get("line.thisOption"), words.get("line.everyOption"));
        EntryDialog dialog = new EntryDialog(
                shell,
                words,
                "line.title",
                "line.lead",
                List.of(
                        new Entry("line.item", codes.get(0), codes),
                        Entry.text("line.description", ""),
                        Entry.text("line.quantity", "1"),
                        Entry.text("line.unit", words.get("line.unit.each")),
                        Entry.text("line.price", ""),
                        new Entry("line.tax", classes.isEmpty() ? "" : classes.get(0), classes),
                        new Entry("line.scope", scopes.get(0), scopes)),
                values -> entry(values, codes, items, option).problem(words));
        if (dialog.open() == Window.OK) {
            OwnLine line = entry(dialog.values(), codes, items, option).line(words);
            session.quoteEdits().change(choices().adding(line));
        }
    }

    private LineEntry entry(List<String> values, List<String> codes, List<PriceItem> items, String option) {
        int item = codes.indexOf(values.get(0)) - 1;
        boolean here = values.get(6).equals(words.get("line.thisOption"));
        return new LineEntry(
                here ? option : "",
                item < 0 ? "" : items.get(item).getCode(),
                values.get(2),
                values.get(1),
                values.get(3),
                values.get(4),
                values.get(5));
    }

    private String option() {
        return OptionTable.chosen(session.result(), session.chosen())
                .map(OptionTable::offerKey)
                .orElse("");
    }

    /** A share or an amount off every option. */
    void discount() {
        DiscountEntry present = DiscountEntry.of(choices(), words);
        EntryDialog dialog = new EntryDialog(
                shell,
                words,
                "discount.title",
                "discount.lead",
                List.of(Entry.text("discount.size", present.size()), Entry.text("discount.reason", present.reason())),
                values -> new DiscountEntry(values.get(0), values.get(1)).problem(words));
        if (dialog.open() == Window.OK) {
            DiscountEntry entry =
                    new DiscountEntry(dialog.values().get(0), dialog.values().get(1));
            session.quoteEdits().change(entry.in(choices(), words));
        }
    }

    /** Whether the quantity of a row can be changed: of an added line, or of what a work needs. */
    boolean mayChangeQuantity(QuoteRow row) {
        QuoteLine line = row.line();
        return line != null && (handMade().added(line).isPresent() || work(line).isPresent());
    }

    /** Another quantity; of what a work needs an empty one takes back what was worked out. */
    void quantity(QuoteRow row) {
        QuoteLine line = row.line();
        if (line == null) {
            return;
        }
        Optional<OwnLine> own = handMade().added(line);
        BigDecimal present = own.map(OwnLine::quantity).orElse(line.getQuantity());
        EntryDialog dialog = new EntryDialog(
                shell,
                words,
                "quantity.title",
                "quantity.lead",
                List.of(Entry.text("line.quantity", Decimals.write(present, words.locale()))),
                values -> mayBe(values.get(0), own.isPresent()) ? "" : words.get("line.problem.quantity"));
        if (dialog.open() != Window.OK) {
            return;
        }
        @Nullable
        BigDecimal quantity =
                Decimals.read(dialog.values().get(0), words.locale()).orElse(null);
        session.quoteEdits()
                .change(
                        own.isPresent() && quantity != null
                                ? handMade().withQuantity(own.get(), quantity)
                                : choices().quantity(line.getCode(), quantity));
    }

    private boolean mayBe(String typed, boolean own) {
        return (typed.isBlank() && !own)
                || Decimals.read(typed, words.locale())
                        .filter(number -> number.signum() > 0)
                        .isPresent();
    }

    /** Whether a row was added by hand, or its quantity changed. */
    boolean mayRemove(QuoteRow row) {
        QuoteLine line = row.line();
        return line != null && handMade().changed(line);
    }

    /** Takes an added line out, or gives a changed one its own quantity back. */
    void remove(QuoteRow row) {
        QuoteLine line = row.line();
        if (line != null) {
            session.quoteEdits().change(handMade().without(line));
        }
    }

    /** Whether a row belongs to a work in whose place another one may do. */
    boolean mayLeaveOut(QuoteRow row) {
        QuoteLine line = row.line();
        return line != null && work(line).isPresent();
    }

    /** From now on another work is looked for in the place of the one that a row belongs to. */
    void without(QuoteRow row) {
        QuoteLine line = row.line();
        if (line != null) {
            work(line).ifPresent(work -> session.quoteEdits().change(choices().without(work)));
        }
    }

    private Optional<String> work(QuoteLine line) {
        Optional<OptionAssessment> option = OptionTable.chosen(session.result(), session.chosen());
        return ManualChanges.work(line, option.orElse(null));
    }

    /** Everything as it is proposed. */
    void proposal() {
        session.quoteEdits().change(QuoteChoices.NONE);
    }

    /** What is said of it: which works stay although they are not wanted. */
    String stays(@Nullable OptionAssessment option) {
        return ManualChanges.staying(choices(), option)
                .map(work -> words.format("change.stays", Map.of("work", work)))
                .orElse("");
    }
}
