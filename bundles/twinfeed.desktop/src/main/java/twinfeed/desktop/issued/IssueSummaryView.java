// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.IssueSummary;
import twinfeed.document.shape.Tone;

/** What is to be issued: to whom, what, at which prices; and why it may not be. */
final class IssueSummaryView {
    private static final int WIDTH = 520;
    private static final int ROWS = 4;

    private final Words words;
    private final Composite pane;
    private final Label customer;
    private final Label site;
    private final Label prices;
    private final Label date;
    private final Table options;
    private final Columns columns;
    private final Label refusals;

    IssueSummaryView(Composite parent, Words words) {
        this.words = words;
        this.pane = Controls.columns(parent, 2);
        pane.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        this.customer = line("issue.customer");
        this.site = line("issue.site");
        this.prices = line("issue.prices");
        this.date = line("issue.date");
        this.options = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        options.setHeaderVisible(true);
        options.setData("twinfeed.field", "issue.options");
        Controls.name(options, words.get("issue.options"));
        GridData room = Controls.across(pane);
        room.heightHint = options.getItemHeight() * ROWS;
        options.setLayoutData(room);
        column("issue.option", SWT.LEFT);
        column("issue.verdict", SWT.LEFT);
        column("issue.total", SWT.RIGHT);
        this.columns = Columns.of(options, 0, 120, 3).whole(1);
        RowMenu.over(options).copy(words);
        this.refusals = Controls.wrapped(pane);
        ((GridData) refusals.getLayoutData()).widthHint = WIDTH;
        refusals.setData("twinfeed.field", "issue.refusals");
        Controls.show(refusals, "");
    }

    private Label line(String key) {
        Label name = new Label(pane, SWT.NONE);
        name.setText(words.get(key));
        name.setLayoutData(new GridData(SWT.LEFT, SWT.TOP, false, false));
        Label value = new Label(pane, SWT.WRAP);
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.widthHint = WIDTH;
        value.setLayoutData(data);
        value.setData("twinfeed.field", key);
        value.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
        return value;
    }

    private void column(String key, int style) {
        new TableColumn(options, style).setText(words.get(key));
    }

    void show(IssueSummary summary) {
        value(customer, summary.customer());
        value(site, summary.site());
        value(prices, summary.prices());
        value(date, summary.date());
        options.removeAll();
        for (IssueSummary.Option each : summary.options()) {
            TableItem item = new TableItem(options, SWT.NONE);
            item.setText(new String[] {each.title(), each.verdict().toString(), each.total()});
            item.setForeground(1, ThemeColours.of(each.verdict().tone(), options));
        }
        refusals.setForeground(ThemeColours.of(summary.ready() ? Tone.BAD : Tone.QUIET, refusals));
        Controls.show(refusals, why(summary));
        pane.getShell().layout(true, true);
        pane.getShell().pack();
        columns.fit();
    }

    private String why(IssueSummary summary) {
        if (!summary.ready()) {
            return words.get("issue.working");
        }
        return summary.refusals().isEmpty()
                ? ""
                : "\u2717 " + words.get("issue.refused.why") + "\n" + String.join("\n", summary.refusals());
    }

    /** What is missing is said in the tone of what fails. */
    private void value(Label label, String text) {
        label.setText(text.replace("&", "&&"));
        boolean missing = text.equals(words.get("issue.missing"));
        label.setForeground(missing ? ThemeColours.of(Tone.BAD, label) : null);
    }
}
