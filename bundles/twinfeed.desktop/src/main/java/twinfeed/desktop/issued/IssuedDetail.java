// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.form.SurveyText;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Days;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.QuoteRow;
import twinfeed.desktop.view.QuoteRows;
import twinfeed.document.shape.Tone;
import twinfeed.model.quote.QuoteOption;
import twinfeed.usecase.quote.IssuedQuote;
import twinfeed.usecase.quote.QuoteCorrection;
import twinfeed.usecase.quote.QuoteDifference;

/** What an issued quote says, or how two of them differ. */
public final class IssuedDetail {
    private final Words words;
    private final Composite pane;
    private final Label heading;
    private final Label basis;
    private final Composite stack;
    private final StackLayout layout = new StackLayout();
    private final Table lines;
    private final Columns lineColumns;
    private final Table differences;
    private final Columns differenceColumns;
    private final Table survey;
    private final Columns surveyColumns;

    /** Shows nothing yet. */
    public IssuedDetail(Composite parent, Words words) {
        this.words = words;
        this.pane = Controls.pane(parent);
        this.heading = Controls.heading(pane, "");
        this.basis = Controls.wrapped(pane);
        basis.setForeground(ThemeColours.of(Tone.QUIET, basis));
        this.stack = new Composite(pane, SWT.NONE);
        stack.setLayout(layout);
        stack.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        this.lines =
                table("issued.lines", "quote.what", "quote.quantity", "quote.unitPrice", "quote.amount", "quote.note");
        this.lineColumns = Columns.of(lines, 0, 160, 4);
        this.differences = table(
                "issued.differences",
                "compare.kind",
                "compare.where",
                "compare.what",
                "compare.before",
                "compare.after");
        this.differenceColumns = Columns.of(differences, 2, 160, 5);
        this.survey = table("issued.survey", "issued.survey.what", "issued.survey.answer");
        this.surveyColumns = Columns.of(survey, 1, 160, 2);
        List.of(lines, differences, survey).forEach(each -> RowMenu.over(each).copy(words));
        layout.topControl = lines;
        differences.addSelectionListener(
                SelectionListener.widgetSelectedAdapter(event -> read((TableItem) event.item)));
    }

    /** Long texts do not fit into a table; the chosen line is written out above it. */
    private void read(TableItem item) {
        Controls.show(
                basis,
                words.format(
                        "compare.full",
                        Map.of("what", item.getText(2), "before", item.getText(3), "after", item.getText(4))));
        pane.layout();
    }

    private Table table(String id, String... keys) {
        Table made = new Table(stack, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        made.setHeaderVisible(true);
        made.setData("twinfeed.field", id);
        Controls.name(made, words.get(id));
        boolean money = id.equals("issued.lines");
        for (int i = 0; i < keys.length; i++) {
            new TableColumn(made, money && i > 0 && i < 4 ? SWT.RIGHT : SWT.LEFT).setText(words.get(keys[i]));
        }
        return made;
    }

    /** Shows a quote; null shows that none, or several, are chosen. */
    public void show(@Nullable IssuedQuote issued, List<QuoteCorrection> corrections) {
        lines.removeAll();
        layout.topControl = lines;
        stack.layout();
        if (issued == null) {
            heading.setText(words.get("issued.choose"));
            Controls.show(basis, "");
            pane.layout();
            lineColumns.fit();
            return;
        }
        heading.setText(words.format("issued.of", Map.of("name", issued.name(), "customer", issued.customer()))
                .replace("&", "&&"));
        String digest = words.format(
                "issued.digest", Map.of("digest", issued.digest(), "file", issued.verification(words.locale())));
        Controls.show(
                basis,
                Stream.concat(Stream.of(digest), corrections.stream().map(each -> correction(each, issued)))
                        .collect(Collectors.joining("\n")));
        for (QuoteOption option : issued.quote().getOptions()) {
            bold(option.getTitle(), ThemeColours.of(Tone.WATER, lines));
            new QuoteRows(words).of(issued.quote(), option).forEach(this::line);
        }
        lineColumns.fit();
        pane.layout();
    }

    private String correction(QuoteCorrection correction, IssuedQuote issued) {
        String option = issued.quote().getOptions().stream()
                .filter(each -> each.getName().equals(correction.chosen()))
                .map(QuoteOption::getTitle)
                .findFirst()
                .orElse("");
        String state = words.get("issued.state." + correction.was().getLiteral());
        return words.format(
                "issued.corrected",
                Map.of(
                        "state", option.isEmpty() ? state : state + ": " + option,
                        "decidedOn", Days.of(correction.decidedOn(), words),
                        "on", Days.of(correction.on(), words),
                        "reason", correction.reason()));
    }

    private void bold(String title, org.eclipse.swt.graphics.Color colour) {
        TableItem item = new TableItem(lines, SWT.NONE);
        item.setText(title);
        item.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        item.setForeground(colour);
    }

    private void line(QuoteRow row) {
        TableItem item = new TableItem(lines, SWT.NONE);
        String indent = row.level() == QuoteRow.Level.LINE ? "      " : "   ";
        item.setText(new String[] {indent + row.text(), row.quantity(), row.unitPrice(), row.net(), row.note()});
        if (row.level() != QuoteRow.Level.LINE) {
            item.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        }
    }

    /** Shows how two quotes differ, line by line. */
    public void compare(IssuedQuote before, IssuedQuote after, List<QuoteDifference> found) {
        heading.setText(words.format("compare.of", Map.of("before", before.name(), "after", after.name())));
        Controls.show(basis, words.get(found.isEmpty() ? "compare.same" : "compare.choose"));
        differences.removeAll();
        for (DifferenceRow row : DifferenceRow.of(found, before.quote(), after.quote(), words)) {
            TableItem item = new TableItem(differences, SWT.NONE);
            item.setText(new String[] {row.kind().toString(), row.where(), row.what(), row.before(), row.after()});
            item.setForeground(0, ThemeColours.of(row.kind().tone(), differences));
        }
        layout.topControl = differences;
        differenceColumns.fit();
        stack.layout();
        differenceColumns.fit();
        pane.layout();
    }

    /** Shows the survey that was frozen with a quote. */
    public void survey(IssuedQuote issued, List<SurveyText.Line> readings) {
        heading.setText(words.format("issued.survey.of", Map.of("name", issued.name(), "customer", issued.customer()))
                .replace("&", "&&"));
        Controls.show(basis, words.get("issued.survey.frozen"));
        survey.removeAll();
        for (SurveyText.Line line : readings) {
            TableItem item = new TableItem(survey, SWT.NONE);
            item.setText(new String[] {line.heading() ? line.what() : "   " + line.what(), line.answer()});
            if (line.heading()) {
                item.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
            }
        }
        layout.topControl = survey;
        stack.layout();
        surveyColumns.fit();
        pane.layout();
    }

    /** Shows what is known of a job, or of several lines that were chosen at once. */
    public void say(String title, String text) {
        lines.removeAll();
        layout.topControl = lines;
        stack.layout();
        heading.setText(title.replace("&", "&&"));
        Controls.show(basis, text);
        pane.layout();
        lineColumns.fit();
    }
}
