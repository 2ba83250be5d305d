// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.QuoteRow.Level;
import twinfeed.document.Figures;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteLine;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteSection;
import twinfeed.model.quote.TaxSum;
import twinfeed.usecase.LineQuantity;
import twinfeed.usecase.choices.AppliedChoices;
import twinfeed.usecase.choices.QuoteChoices;

/** The quote of one option as it stands. Nothing is added up here: every sum is the quote's own. */
public final class QuoteRows {
    private final Words words;
    private final Figures figures;

    /** In one language. */
    public QuoteRows(Words words) {
        this.words = words;
        this.figures = new Figures(words.locale());
    }

    /** The part of a quote that offers an option; the unit that is there is offered only where somebody asks for it. */
    public static Optional<QuoteOption> option(@Nullable Quote quote, @Nullable OptionAssessment option) {
        return quote == null || option == null
                ? Optional.empty()
                : quote.getOptions().stream()
                        .filter(each -> AppliedChoices.name(option).equals(each.getName()))
                        .findFirst();
    }

    /** Sections, lines and sums. */
    public List<QuoteRow> of(Quote quote, QuoteOption option) {
        return of(quote, option, new ManualChanges(QuoteChoices.NONE, words));
    }

    /** The same, with the lines marked that somebody has added or changed. */
    public List<QuoteRow> of(Quote quote, QuoteOption option, ManualChanges hand) {
        List<QuoteRow> rows = new ArrayList<>();
        for (QuoteSection section : option.getSections()) {
            rows.add(new QuoteRow(Level.SECTION, text(section.getTitle()), ""));
            section.getLines().forEach(line -> rows.add(line(line, quote.getCurrency(), hand)));
        }
        rows.add(sum(words.get("quote.net"), figures.money(option.getNet(), quote.getCurrency())));
        option.getTaxes().forEach(tax -> rows.add(tax(tax, quote.getCurrency())));
        rows.add(sum(words.get("quote.total"), figures.money(option.getTotal(), quote.getCurrency())));
        option.getEnquiries().forEach(each -> rows.add(sum(words.format("quote.enquiry", Map.of("what", each)), "")));
        return rows;
    }

    private QuoteRow line(QuoteLine line, @Nullable String currency, ManualChanges hand) {
        String quantity = LineQuantity.of(line, words.locale());
        return new QuoteRow(
                Level.LINE,
                text(line.getDescription()),
                quantity,
                figures.money(line.getUnitPrice(), currency),
                figures.money(line.getNet(), currency),
                line.getNote() == null ? text(line.getSource()) : line.getNote(),
                line,
                hand.changed(line));
    }

    private QuoteRow tax(TaxSum tax, @Nullable String currency) {
        String label = text(tax.getLabel());
        String text = label.isEmpty() ? words.get("quote.tax") : label;
        String rate = figures.percent(tax.getRate());
        return sum(
                text.contains("%") || rate.isEmpty() ? text : text + " " + rate, figures.money(tax.getTax(), currency));
    }

    private static QuoteRow sum(String text, String amount) {
        return new QuoteRow(Level.SUM, text, amount);
    }

    private static String text(@Nullable String text) {
        return text == null ? "" : text;
    }
}
