// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.office;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.RowLayout;
import org.eclipse.swt.program.Program;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.form.SurveyText;
import twinfeed.desktop.issued.ChoiceDialog;
import twinfeed.desktop.issued.IssuedRow;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.OptionPrice;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteState;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuoteDifference;

/** What can be done with the chosen lines of the office's list. */
final class OfficeActions {
    private final OfficePart office;
    private final Words words;
    private final Composite row;
    private final Button open;
    private final Button survey;
    private final Button pdf;
    private final Button workbook;
    private final Button accept;
    private final Button decline;
    private final Button correct;
    private final Button compare;
    private final Button parts;

    OfficeActions(Composite pane, OfficePart office, Words words) {
        this.office = office;
        this.words = words;
        this.row = new Composite(pane, SWT.NONE);
        RowLayout layout = new RowLayout(SWT.HORIZONTAL);
        layout.marginLeft = 0;
        layout.marginTop = 0;
        layout.marginBottom = 0;
        row.setLayout(layout);
        row.setLayoutData(Controls.across(pane));
        this.open = Controls.push(row, words.get("office.open"), "office.open", office::open);
        this.survey = Controls.push(row, words.get("office.survey"), "office.survey", this::survey);
        this.pdf = Controls.push(row, words.get("office.pdf"), "office.pdf", () -> print(".pdf"));
        this.workbook = Controls.push(row, words.get("office.workbook"), "office.workbook", () -> print(".xlsx"));
        this.accept = Controls.push(row, words.get("issued.accept"), "issued.accept", this::accept);
        this.decline = Controls.push(row, words.get("issued.decline"), "issued.decline", this::decline);
        this.correct = Controls.push(row, words.get("issued.correct"), "issued.correct", this::correct);
        this.compare = Controls.push(row, words.get("issued.compare"), "issued.compare", this::compare);
        this.parts = Controls.push(row, words.get("issued.parts"), "issued.parts", this::parts);
        enable();
    }

    /** The same over the list's lines. */
    void menu(Control table) {
        RowMenu menu = RowMenu.over(table);
        List.of(open, survey, pdf, workbook).forEach(menu::button);
        menu.line();
        List.of(accept, decline, correct).forEach(menu::button);
        menu.line();
        List.of(compare, parts).forEach(menu::button);
        menu.copy(words);
    }

    /** Switches on what can be done with the chosen lines. */
    void enable() {
        List<OfficeRow> chosen = office.chosen();
        boolean one = chosen.size() == 1;
        @Nullable IssuedRow quote = one ? chosen.get(0).issued() : null;
        boolean quotes = !chosen.isEmpty() && chosen.stream().noneMatch(OfficeRow::job);
        open.setEnabled(one && quote == null);
        survey.setEnabled(quote != null);
        pdf.setEnabled(quote != null && quote.issued().unchanged());
        workbook.setEnabled(quote != null && quote.issued().unchanged());
        accept.setEnabled(quote != null && quote.open());
        decline.setEnabled(quote != null && quote.open());
        correct.setEnabled(quote != null && quote.decided());
        compare.setEnabled(quotes
                && (chosen.size() == 2
                        || (quote != null && office.before(quote.issued()).isPresent())));
        parts.setEnabled(quote != null && quote.issued().quote().getState() == QuoteState.ACCEPTED);
    }

    private Optional<IssuedQuote> one() {
        return office.chosen().stream()
                .map(OfficeRow::issued)
                .filter(each -> each != null)
                .map(IssuedRow::issued)
                .findFirst();
    }

    /** Shows the survey that was frozen with the chosen quote. */
    void survey() {
        one().ifPresent(quote -> office.background(
                () -> SurveyText.of(
                        IssuedQuotes.survey(quote.file()),
                        office.services().service().calculators(),
                        words),
                readings -> office.detail().survey(quote, readings)));
    }

    /** Writes the chosen quote beside its file, unless it is there already, and shows it. */
    private void print(String ending) {
        one().ifPresent(quote -> {
            Path out = quote.file().resolveSibling(quote.name() + ending);
            office.background(
                    () -> {
                        if (!Files.exists(out)) {
                            office.services().reprint(quote, out);
                        }
                        return out;
                    },
                    written -> {
                        office.acted("status.done.written", Map.of("file", written));
                        Program.launch(written.toString());
                    });
        });
    }

    private void accept() {
        one().ifPresent(quote -> {
            List<QuoteOption> options = quote.quote().getOptions();
            int answer = new ChoiceDialog(
                            row.getShell(),
                            words,
                            words.get("issued.accept.do"),
                            words.format("issued.accept.question", Map.of("name", quote.name())),
                            options.stream()
                                    .map(option -> answer(quote.quote(), option))
                                    .toList())
                    .ask();
            if (answer >= 0) {
                accept(quote, options.get(answer).getName());
            } else {
                cancelled();
            }
        });
    }

    private String answer(Quote quote, QuoteOption option) {
        return words.format(
                "issued.accept.option",
                Map.of("title", option.getTitle(), "total", OptionPrice.of(option, quote, words)));
    }

    void accept(IssuedQuote quote, String option) {
        String title = quote.quote().getOptions().stream()
                .filter(each -> each.getName().equals(option))
                .map(QuoteOption::getTitle)
                .findFirst()
                .orElse(option);
        decided(
                () -> IssuedQuotes.accept(
                        quote.file(), option, office.services().today()),
                "status.done.accepted",
                Map.of("name", quote.name(), "option", title));
    }

    private void decline() {
        one().ifPresent(quote -> {
            if (Dialogs.ask(
                    row.getShell(),
                    words,
                    words.get("issued.decline"),
                    words.format("issued.decline.question", Map.of("name", quote.name())),
                    words.get("issued.decline.do"))) {
                decline(quote);
            } else {
                cancelled();
            }
        });
    }

    void decline(IssuedQuote quote) {
        decided(
                () -> IssuedQuotes.decline(quote.file(), office.services().today()),
                "status.done.declined",
                Map.of("name", quote.name()));
    }

    private void correct() {
        one().ifPresent(quote -> Dialogs.text(
                        row.getShell(),
                        words,
                        words.get("issued.correct.title"),
                        words.format("issued.correct.question", Map.of("name", quote.name())),
                        reason -> !reason.isBlank(),
                        "")
                .ifPresentOrElse(reason -> correct(quote, reason), this::cancelled));
    }

    void correct(IssuedQuote quote, String reason) {
        decided(
                () -> IssuedQuotes.correct(quote.file(), office.services().today(), reason),
                "status.done.corrected",
                Map.of("name", quote.name()));
    }

    private void decided(java.util.function.Supplier<IssuedQuote> step, String key, Map<String, Object> arguments) {
        office.background(step, done -> {
            office.acted(key, arguments);
            // The list listens too.
            office.services().decided().fire();
        });
    }

    private void cancelled() {
        office.acted("status.done.cancelled", Map.of());
    }

    private void compare() {
        List<OfficeRow> chosen = office.chosen();
        IssuedRow last = chosen.get(chosen.size() - 1).issued();
        IssuedRow first = chosen.get(0).issued();
        if (last == null || first == null) {
            return;
        }
        IssuedQuote after = last.issued();
        IssuedQuote before =
                chosen.size() == 2 ? first.issued() : office.before(after).orElseThrow();
        boolean swapped = before.name().compareTo(after.name()) > 0;
        IssuedQuote older = swapped ? after : before;
        IssuedQuote newer = swapped ? before : after;
        office.background(
                () -> IssuedQuotes.compare(older.file(), newer.file()),
                (List<QuoteDifference> found) -> office.detail().compare(older, newer, found));
    }

    private void parts() {
        one().ifPresent(quote -> FileQuestion.print(row.getShell(), words)
                .save("issued.parts.title", quote.file().resolveSibling(quote.name() + "-parts.pdf"))
                .ifPresent(out -> writeParts(quote, out)));
    }

    void writeParts(IssuedQuote quote, Path out) {
        office.background(
                () -> {
                    office.services().writeParts(quote, out);
                    return out;
                },
                written -> office.acted("status.done.written", Map.of("file", written)));
    }
}
