// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import java.time.LocalDate;
import java.util.stream.Collectors;
import twinfeed.desktop.text.Days;
import twinfeed.desktop.text.Words;
import twinfeed.document.Figures;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteState;
import twinfeed.usecase.quote.IssuedQuote;

/**
 * An issued quote as a line of a table.
 *
 * @param issued the quote
 * @param customer whose it is
 * @param date its date
 * @param until last day on which it holds
 * @param state where it stands
 * @param total what it comes to with tax, option by option
 * @param file whether its file is as it was issued
 * @param open whether the customer can still decide
 * @param decided whether the customer has decided, so that this may be taken back
 */
public record IssuedRow(
        IssuedQuote issued,
        String customer,
        String date,
        String until,
        Mark state,
        String total,
        Mark file,
        boolean open,
        boolean decided) {

    /** The line of a quote on a day. */
    public static IssuedRow of(IssuedQuote issued, LocalDate today, Words words) {
        Quote quote = issued.quote();
        Figures figures = new Figures(words.locale());
        String totals = quote.getOptions().stream()
                .filter(each -> quote.getChosen() == null || quote.getChosen().equals(each.getName()))
                .map(each -> figures.money(each.getTotal(), quote.getCurrency()))
                .collect(Collectors.joining(" / "));
        String who = issued.site().isEmpty() ? issued.customer() : issued.customer() + ", " + issued.site();
        return new IssuedRow(
                issued,
                who,
                Days.of(quote.getDate(), words),
                Days.of(quote.getValidUntil(), words),
                state(issued.stateOn(today), words),
                totals,
                issued.unchanged()
                        ? new Mark("\u2713", words.get("issued.file.unchanged"), Tone.GOOD)
                        : new Mark("\u2717", issued.verification(words.locale()), Tone.BAD),
                issued.unchanged() && issued.stateOn(today) == QuoteState.ISSUED,
                issued.unchanged()
                        && (quote.getState() == QuoteState.ACCEPTED || quote.getState() == QuoteState.DECLINED));
    }

    /** Sign, word and colour of a state. */
    public static Mark state(QuoteState state, Words words) {
        String word = words.get("issued.state." + state.getLiteral());
        return switch (state) {
            case DRAFT -> new Mark("\u2026", word, Tone.QUIET);
            case ISSUED -> new Mark("\u25CB", word, Tone.WATER);
            case ACCEPTED -> new Mark("\u2713", word, Tone.GOOD);
            case DECLINED -> new Mark("\u2717", word, Tone.BAD);
            case LAPSED -> new Mark("\u2013", word, Tone.QUIET);
            case SUPERSEDED -> new Mark("\u2192", word, Tone.QUIET);
        };
    }
}
