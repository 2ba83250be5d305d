// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CLabel;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.FewLines;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Days;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.ManualChanges;
import twinfeed.desktop.view.OptionPrice;
import twinfeed.desktop.view.OptionTable;
import twinfeed.desktop.view.QuoteRow;
import twinfeed.desktop.view.QuoteRow.Level;
import twinfeed.desktop.view.QuoteRows;
import twinfeed.document.shape.Tone;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.usecase.AssessedJob;
import twinfeed.usecase.quote.IssuedQuote;

/** The quote of the chosen option as it stands: lines and totals. */
final class QuotePane {
    /** Stands before what somebody has added or changed. */
    private static final String HAND = "\u270E ";

    /** Lines of the day and the price book. */
    private static final int BASIS = 4;

    /** Lines of the works that could not be priced; the tooltip has the rest. */
    private static final int UNPRICED = 3;

    private final JobSession session;
    private final Words words;
    private final Composite pane;
    private final CLabel heading;
    private final FewLines basis;
    private final Label issued;
    private final Label trouble;
    private final FewLines unpriced;
    private final Label byHand;
    private final QuoteChanges changes;
    private final Table table;
    private final Columns columns;
    private List<QuoteRow> rows = List.of();

    QuotePane(Composite parent, JobSession session, Words words) {
        this.session = session;
        this.words = words;
        this.pane = Controls.pane(parent);
        this.heading = Controls.title(pane, words.get("pane.quote"));
        heading.setData("twinfeed.field", "quote.heading");
        Label day = Controls.wrapped(pane);
        day.setForeground(ThemeColours.of(Tone.QUIET, day));
        this.basis = new FewLines(day, BASIS);
        this.issued = Controls.wrapped(pane);
        issued.setForeground(ThemeColours.of(Tone.GOOD, issued));
        issued.setData("twinfeed.field", "quote.issued");
        this.trouble = Controls.wrapped(pane);
        trouble.setForeground(ThemeColours.of(Tone.DOUBT, trouble));
        Label prices = Controls.wrapped(pane);
        prices.setForeground(ThemeColours.of(Tone.DOUBT, prices));
        prices.setData("twinfeed.field", "quote.unpriced");
        this.unpriced = new FewLines(prices, UNPRICED);
        this.byHand = Controls.wrapped(pane);
        byHand.setForeground(ThemeColours.of(Tone.WATER, byHand));
        byHand.setData("twinfeed.field", "quote.byHand");
        this.changes = new QuoteChanges(parent.getShell(), session, words);
        Button change = new Button(pane, SWT.PUSH);
        change.setText(words.get("quote.change"));
        change.setData("twinfeed.field", "quote.change");
        Controls.name(change, words.get("quote.change"));
        this.table = table();
        QuoteMenu menu = new QuoteMenu(words, changes, this::changeable);
        menu.under(change);
        menu.over(table);
        this.columns = Columns.of(table, 0, 120, 4);
        Runnable results = session.resulted().listen(this::show);
        Runnable choices = session.chose().listen(this::show);
        pane.addListener(SWT.Dispose, event -> {
            results.run();
            choices.run();
        });
        show();
    }

    /** Whether there is little room: the lines of the quote need it then. */
    void low(boolean now) {
        basis.most(now ? 1 : BASIS);
        unpriced.most(now ? 1 : UNPRICED);
        pane.layout();
    }

    private Table table() {
        Table made = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        made.setHeaderVisible(true);
        made.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        made.setData("twinfeed.field", "quote");
        Controls.name(made, words.get("pane.quote"));
        column(made, "quote.what", SWT.LEFT);
        column(made, "quote.quantity", SWT.RIGHT);
        column(made, "quote.unitPrice", SWT.RIGHT);
        column(made, "quote.amount", SWT.RIGHT);
        column(made, "quote.note", SWT.LEFT);
        return made;
    }

    private void column(Table made, String key, int style) {
        new TableColumn(made, style).setText(words.get(key));
    }

    /** The sum comes first: on a small screen it is not to be looked for at the end of the lines. */
    private String title(QuoteOption option, @Nullable Quote quote) {
        String total = quote == null ? "" : OptionPrice.of(option, quote, words);
        String text = total.isEmpty()
                ? words.get("pane.quote") + ": " + option.getTitle()
                : words.format("quote.of", Map.of("option", option.getTitle(), "total", total));
        return text.replace("&", "&&");
    }

    private @Nullable QuoteRow chosen() {
        int index = table.getSelectionIndex();
        return index >= 0 && index < rows.size() ? rows.get(index) : null;
    }

    /** The row that can be changed; none while the quote is worked out anew. */
    private @Nullable QuoteRow changeable() {
        return session.planned() ? chosen() : null;
    }

    private void show() {
        JobResult result = session.whole();
        boolean known = session.planned();
        @Nullable Quote quote = result == null ? null : result.quote();
        @Nullable
        OptionAssessment chosen = OptionTable.chosen(result, session.chosen()).orElse(null);
        Optional<QuoteOption> option = QuoteRows.option(quote, chosen);
        heading.setText(
                option.isPresent() && !known
                        ? words.get("quote.again")
                        : option.map(each -> title(each, quote)).orElse(words.get("pane.quote")));
        basis.show(quote == null ? "" : basis(quote));
        showIssued();
        Controls.show(trouble, option.isPresent() ? "" : trouble(result, quote, chosen));
        unpriced.show(option.isPresent() ? unpriced(result) : "");
        ManualChanges hand = new ManualChanges(session.quoteEdits().choices(), words);
        Controls.show(byHand, (hand.summary() + " " + changes.stays(chosen)).strip());
        QuoteRow before = chosen();
        rows = quote == null
                ? List.of()
                : option.map(offered -> new QuoteRows(words).of(quote, offered, hand))
                        .orElse(List.of());
        fill(known);
        reselect(before);
        columns.fit();
        pane.layout();
    }

    /** Rows that are there get other texts, so that nothing blinks and nothing scrolls away. */
    private void fill(boolean known) {
        table.setRedraw(false);
        table.setItemCount(rows.size());
        for (int i = 0; i < rows.size(); i++) {
            row(table.getItem(i), rows.get(i), known);
        }
        table.setRedraw(true);
    }

    /** A draft goes on after it was issued; what was issued stands as it was then. */
    private void showIssued() {
        IssuedQuote last = session.issued();
        Controls.show(
                issued,
                last == null
                        ? ""
                        : words.format(
                                "quote.issued",
                                Map.of(
                                        "name",
                                        last.name(),
                                        "state",
                                        words.get("issued.state."
                                                + last.stateOn(session.services()
                                                                .today())
                                                        .getLiteral()))));
    }

    private String basis(Quote quote) {
        String text = words.format(
                "quote.basis",
                Map.of(
                        "date", Days.of(quote.getDate(), words),
                        "until", Days.of(quote.getValidUntil(), words),
                        "book", quote.getBookTitle() == null ? "" : quote.getBookTitle()));
        return quote.getBookNote() == null ? text : text + "\n" + quote.getBookNote();
    }

    private String trouble(@Nullable JobResult result, @Nullable Quote quote, @Nullable OptionAssessment option) {
        if (result == null || result.judged() == null || !result.complete()) {
            return "";
        }
        if (quote == null) {
            return session.services().prices(session.survey()) == null ? words.get("quote.noBook") : result.trouble();
        }
        return option == null
                ? ""
                : new OptionTable(words)
                        .whyNotOffered(
                                option,
                                quote,
                                !session.quoteEdits().choices().heaters().isEmpty());
    }

    /** Which works could not be priced, as far as they might have been the least costly. */
    private static String unpriced(@Nullable JobResult result) {
        @Nullable AssessedJob judged = result == null ? null : result.judged();
        return judged == null ? "" : String.join("\n", judged.unpriced());
    }

    /** The row that was chosen stays so, as far as it is still there. */
    private void reselect(@Nullable QuoteRow before) {
        table.deselectAll();
        for (int i = 0; before != null && i < rows.size(); i++) {
            if (rows.get(i).text().equals(before.text())) {
                table.select(i);
                return;
            }
        }
    }

    private void row(TableItem item, QuoteRow row, boolean known) {
        item.setText(new String[] {
            (row.level() == Level.LINE ? "   " : "") + (row.byHand() ? HAND : "") + row.text(),
            row.quantity(),
            row.unitPrice(),
            row.net(),
            row.note()
        });
        item.setFont(
                row.level() == Level.LINE
                        ? null
                        : JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        item.setForeground(known ? null : ThemeColours.of(Tone.QUIET, table));
        item.setForeground(4, ThemeColours.of(Tone.QUIET, table));
    }
}
