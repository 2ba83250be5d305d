// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import jakarta.inject.Inject;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.BusyIndicator;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.DirectoryDialog;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import twinfeed.desktop.Settings;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.look.Palette;
import twinfeed.desktop.look.Tone;
import twinfeed.desktop.session.Desk;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.OptionPrice;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;
import twinfeed.model.quote.QuoteState;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.IssuedQuotes;
import twinfeed.usecase.quote.QuoteCorrection;

/** The quotes that an office has issued: where they stand, what they say, how revisions differ, what the customer decided. */
public final class IssuedPart {
    private final Desk desk;
    private final Threads threads;
    private final Settings settings;
    private final Words words;
    private final Label folder;
    private final Label trouble;
    private final Table table;
    private final Columns columns;
    private final Button accept;
    private final Button decline;
    private final Button correct;
    private final Button compare;
    private final Button parts;
    private final IssuedDetail detail;
    private List<IssuedRow> rows = List.of();

    /** Made by the platform. */
    @Inject
    public IssuedPart(Composite parent, Desk desk, Threads threads, Settings settings, Words words) {
        this.desk = desk;
        this.threads = threads;
        this.settings = settings;
        this.words = words;
        parent.setLayout(new FillLayout());
        SashForm halves = new SashForm(parent, SWT.VERTICAL);
        Composite pane = Controls.pane(halves);
        Composite head = Controls.columns(pane, 3);
        head.setLayoutData(Controls.across(pane));
        this.folder = new Label(head, SWT.NONE);
        folder.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        Controls.push(head, words.get("issued.folder"), "issued.folder", this::chooseFolder);
        Controls.push(head, words.get("issued.again"), "issued.again", this::read);
        this.trouble = Controls.wrapped(pane);
        trouble.setForeground(Palette.of(Tone.BAD, trouble));
        trouble.setData("twinfeed.field", "issued.trouble");
        Controls.show(trouble, "");
        this.table = table(pane);
        this.columns = Columns.of(table, 1, 140, 7);
        Composite actions = Controls.columns(pane, 4);
        this.accept = Controls.push(actions, words.get("issued.accept"), "issued.accept", this::accept);
        this.decline = Controls.push(actions, words.get("issued.decline"), "issued.decline", this::decline);
        this.correct = Controls.push(actions, words.get("issued.correct"), "issued.correct", this::correct);
        this.compare = Controls.push(actions, words.get("issued.compare"), "issued.compare", this::compare);
        this.parts = Controls.push(actions, words.get("issued.parts"), "issued.parts", this::parts);
        this.detail = new IssuedDetail(halves, words);
        halves.setWeights(45, 55);
        select();
        read();
    }

    private Table table(Composite pane) {
        Table made = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.MULTI);
        made.setHeaderVisible(true);
        made.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        made.setData("twinfeed.field", "issued");
        Controls.name(made, words.get("part.issued"));
        for (String key : List.of("number", "customer", "date", "until", "state", "total", "file")) {
            new TableColumn(made, key.equals("total") ? SWT.RIGHT : SWT.LEFT).setText(words.get("issued." + key));
        }
        made.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> select()));
        return made;
    }

    private void chooseFolder() {
        DirectoryDialog dialog = new DirectoryDialog(table.getShell());
        dialog.setText(words.get("issue.office"));
        settings.office().ifPresent(path -> dialog.setFilterPath(path.toString()));
        String answer = dialog.open();
        if (answer != null) {
            settings.office(Path.of(answer));
            read();
        }
    }

    /** Reads the folder anew, out of the way. */
    public void read() {
        Optional<Path> office = settings.office();
        folder.setText(office.map(path -> words.format("issued.in", Map.of("folder", path)))
                .orElse(words.get("issue.office.none")));
        office.ifPresent(path -> threads.quick().execute(() -> {
            IssuedQuoteList found = IssuedQuoteList.read(desk, path);
            threads.display().execute(() -> show(found));
        }));
    }

    private void show(IssuedQuoteList found) {
        if (table.isDisposed()) {
            return;
        }
        List<String> chosen = chosen().stream().map(row -> row.issued().name()).toList();
        rows = found.quotes().stream()
                .map(each -> IssuedRow.of(each, desk.today(), words))
                .toList();
        table.removeAll();
        for (IssuedRow row : rows) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(new String[] {
                row.issued().name(),
                row.customer(),
                row.date(),
                row.until(),
                row.state().toString(),
                row.total(),
                row.file().toString()
            });
            item.setForeground(4, Palette.of(row.state().tone(), table));
            item.setForeground(6, Palette.of(row.file().tone(), table));
            if (chosen.contains(row.issued().name())) {
                table.select(table.getItemCount() - 1);
            }
        }
        if (chosen.isEmpty() && !rows.isEmpty()) {
            table.select(rows.size() - 1);
        }
        columns.fit();
        say(String.join("\n", found.troubles()));
        select();
    }

    private void say(String text) {
        if (Controls.show(trouble, text)) {
            trouble.getParent().layout();
        }
    }

    private List<IssuedRow> chosen() {
        return java.util.Arrays.stream(table.getSelectionIndices())
                .filter(index -> index < rows.size())
                .mapToObj(rows::get)
                .toList();
    }

    private void select() {
        List<IssuedRow> chosen = chosen();
        boolean one = chosen.size() == 1;
        accept.setEnabled(one && chosen.get(0).open());
        decline.setEnabled(one && chosen.get(0).open());
        correct.setEnabled(one && chosen.get(0).decided());
        compare.setEnabled(chosen.size() == 2 || (one && before(chosen.get(0)).isPresent()));
        parts.setEnabled(one && chosen.get(0).issued().quote().getState() == QuoteState.ACCEPTED);
        detail.show(
                one ? chosen.get(0).issued() : null,
                one ? corrections(chosen.get(0).issued()) : List.of());
    }

    private Optional<IssuedRow> before(IssuedRow row) {
        String superseded = row.issued().quote().getSupersedes();
        return rows.stream()
                .filter(each -> each.issued().name().equals(superseded))
                .findFirst();
    }

    private void accept() {
        IssuedRow row = chosen().get(0);
        List<QuoteOption> options = row.issued().quote().getOptions();
        String message = words.format(
                "issued.accept.question", Map.of("name", row.issued().name()));
        int answer = new ChoiceDialog(
                        table.getShell(),
                        words,
                        words.get("issued.accept.do"),
                        message,
                        options.stream()
                                .map(option -> answer(row.issued().quote(), option))
                                .toList())
                .ask();
        if (answer >= 0) {
            accept(row.issued(), options.get(answer).getName());
        }
    }

    private String answer(Quote quote, QuoteOption option) {
        return words.format(
                "issued.accept.option",
                Map.of("title", option.getTitle(), "total", OptionPrice.of(option, quote, words)));
    }

    /** Records that the customer accepted an option; a correction takes it back. */
    public void accept(IssuedQuote quote, String option) {
        decided(() -> IssuedQuotes.accept(quote.file(), option, desk.today()));
    }

    private void decline() {
        IssuedRow row = chosen().get(0);
        String question = words.format(
                "issued.decline.question", Map.of("name", row.issued().name()));
        if (Dialogs.ask(
                table.getShell(), words, words.get("issued.decline"), question, words.get("issued.decline.do"))) {
            decline(row.issued());
        }
    }

    /** Records that the customer declined; a correction takes it back. */
    public void decline(IssuedQuote quote) {
        decided(() -> IssuedQuotes.decline(quote.file(), desk.today()));
    }

    private void correct() {
        IssuedRow row = chosen().get(0);
        Dialogs.text(
                        table.getShell(),
                        words,
                        words.get("issued.correct.title"),
                        words.format(
                                "issued.correct.question",
                                Map.of("name", row.issued().name())),
                        reason -> !reason.isBlank(),
                        "")
                .ifPresent(reason -> correct(row.issued(), reason));
    }

    /** Takes a decision back that was recorded by mistake; what was recorded and the reason stay on record. */
    public void correct(IssuedQuote quote, String reason) {
        decided(() -> IssuedQuotes.correct(quote.file(), desk.today(), reason));
    }

    private List<QuoteCorrection> corrections(IssuedQuote quote) {
        try {
            return IssuedQuotes.corrections(quote.file());
        } catch (RuntimeException unreadable) {
            say(String.valueOf(unreadable.getMessage()));
            return List.of();
        }
    }

    private void decided(Runnable step) {
        try {
            step.run();
            desk.decided().fire();
            read();
        } catch (RuntimeException refused) {
            say(String.valueOf(refused.getMessage()));
        }
    }

    private void compare() {
        List<IssuedRow> chosen = chosen();
        IssuedQuote after = chosen.get(chosen.size() - 1).issued();
        IssuedQuote before = chosen.size() == 2
                ? chosen.get(0).issued()
                : before(chosen.get(0)).orElseThrow().issued();
        try {
            detail.compare(before, after, IssuedQuotes.compare(before.file(), after.file()));
        } catch (RuntimeException refused) {
            say(String.valueOf(refused.getMessage()));
        }
    }

    private void parts() {
        IssuedQuote quote = chosen().get(0).issued();
        FileQuestion.print(table.getShell(), words)
                .save("issued.parts.title", quote.file().resolveSibling(quote.name() + "-parts.pdf"))
                .ifPresent(out -> writeParts(quote, out));
    }

    /** Writes the parts to pack for an accepted quote. */
    public void writeParts(IssuedQuote quote, Path out) {
        BusyIndicator.showWhile(table.getDisplay(), () -> {
            try {
                desk.writeParts(quote, out);
                say("");
            } catch (RuntimeException refused) {
                say(String.valueOf(refused.getMessage()));
            }
        });
    }

    @Focus
    void focus() {
        table.setFocus();
        read();
    }
}
