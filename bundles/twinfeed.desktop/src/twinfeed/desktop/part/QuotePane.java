// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.time.format.DateTimeFormatter;
import java.time.format.FormatStyle;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Palette;
import twinfeed.desktop.look.Tone;
import twinfeed.desktop.session.Desk.Prices;
import twinfeed.desktop.session.JobResult;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.OptionRows;
import twinfeed.desktop.view.QuoteRow;
import twinfeed.desktop.view.QuoteRow.Level;
import twinfeed.desktop.view.QuoteRows;
import twinfeed.model.assessment.OptionAssessment;
import twinfeed.model.quote.Quote;
import twinfeed.model.quote.QuoteOption;

/** The quote of the chosen option as it stands: lines and totals. */
final class QuotePane {
    private final JobSession session;
    private final Words words;
    private final Composite pane;
    private final Label heading;
    private final Label basis;
    private final Label trouble;
    private final Table table;

    QuotePane(Composite parent, JobSession session, Words words) {
        this.session = session;
        this.words = words;
        this.pane = Controls.pane(parent);
        this.heading = Controls.heading(pane, words.get("pane.quote"));
        this.basis = Controls.wrapped(pane);
        basis.setForeground(Palette.of(Tone.QUIET, basis));
        this.trouble = Controls.wrapped(pane);
        trouble.setForeground(Palette.of(Tone.BAD, trouble));
        this.table = table();
        Runnable results = session.resulted().listen(this::show);
        Runnable choices = session.chose().listen(this::show);
        pane.addListener(SWT.Dispose, event -> {
            results.run();
            choices.run();
        });
        show();
    }

    private Table table() {
        Table made = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        made.setHeaderVisible(true);
        made.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        made.setData("twinfeed.field", "quote");
        Controls.name(made, words.get("pane.quote"));
        column(made, "quote.what", SWT.LEFT, 215);
        column(made, "quote.quantity", SWT.RIGHT, 70);
        column(made, "quote.unitPrice", SWT.RIGHT, 75);
        column(made, "quote.amount", SWT.RIGHT, 85);
        column(made, "quote.note", SWT.LEFT, 240);
        return made;
    }

    private void column(Table made, String key, int style, int width) {
        TableColumn column = new TableColumn(made, style);
        column.setText(words.get(key));
        column.setWidth(width);
    }

    private void show() {
        JobResult result = session.result();
        @Nullable Quote quote = result == null ? null : result.quote();
        String id = OptionRows.chosen(result, session.chosen())
                .map(OptionAssessment::getHeaterId)
                .orElse("");
        Optional<QuoteOption> option = QuoteRows.option(quote, id);
        heading.setText(option.map(each -> words.format("quote.of", Map.of("option", each.getTitle())))
                .orElse(words.get("pane.quote")));
        Controls.show(basis, quote == null ? "" : basis(quote));
        Controls.show(trouble, trouble(result, quote, option.isPresent()));
        table.removeAll();
        if (quote != null) {
            option.ifPresent(offered -> new QuoteRows(words).of(quote, offered).forEach(this::row));
        }
        pane.layout();
    }

    private String basis(Quote quote) {
        DateTimeFormatter days =
                DateTimeFormatter.ofLocalizedDate(FormatStyle.MEDIUM).withLocale(words.locale());
        String text = words.format(
                "quote.basis",
                Map.of(
                        "date", days.format(quote.getDate()),
                        "until", quote.getValidUntil() == null ? "" : days.format(quote.getValidUntil()),
                        "book", quote.getBookTitle() == null ? "" : quote.getBookTitle()));
        return quote.getBookNote() == null ? text : text + "\n" + quote.getBookNote();
    }

    private String trouble(@Nullable JobResult result, @Nullable Quote quote, boolean offered) {
        @Nullable Prices prices = session.desk().prices();
        if (result == null || result.judged() == null) {
            return "";
        }
        if (quote == null) {
            return prices == null ? words.get("quote.noBook") : result.trouble();
        }
        return offered ? "" : words.get("quote.notOffered");
    }

    private void row(QuoteRow row) {
        TableItem item = new TableItem(table, SWT.NONE);
        item.setText(new String[] {
            row.level() == Level.LINE ? "   " + row.text() : row.text(),
            row.quantity(),
            row.unitPrice(),
            row.net(),
            row.note()
        });
        if (row.level() != Level.LINE) {
            item.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        }
        item.setForeground(4, Palette.of(Tone.QUIET, table));
    }
}
