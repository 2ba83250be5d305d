// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import java.util.List;
import java.util.Map;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Compact;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.FewLines;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.OptionRow;
import twinfeed.desktop.view.OptionTable;
import twinfeed.document.shape.Tone;

/** The options side by side, and under them the quote as it stands. */
final class OptionsPane {
    /** Lines of what decides and what work there is. */
    private static final int DETAIL = 4;

    private static final int[] WEIGHTS = {36, 64};
    private static final int[] WEIGHTS_IF_LOW = {40, 60};

    private final JobSession session;
    private final Words words;
    private final Table table;
    private final Columns columns;
    private final Label label;
    private final FewLines detail;
    private List<OptionRow> rows = List.of();

    OptionsPane(SashForm parent, JobSession session, Words words) {
        this.session = session;
        this.words = words;
        SashForm halves = new SashForm(parent, SWT.VERTICAL);
        Composite pane = Controls.pane(halves);
        Controls.heading(pane, words.get("pane.options"));
        this.table = table(pane);
        this.columns = Columns.of(table, 0, 120, 3).whole(1);
        RowMenu.over(table).copy(words);
        this.label = Controls.wrapped(pane);
        this.detail = new FewLines(label, DETAIL);
        QuotePane quote = new QuotePane(halves, session, words);
        halves.setWeights(WEIGHTS);
        Compact.of(halves, low -> {
            detail.most(low ? 1 : DETAIL);
            quote.low(low);
            halves.setWeights(low ? WEIGHTS_IF_LOW : WEIGHTS);
            pane.layout();
        });
        Runnable results = session.resulted().listen(this::show);
        Runnable choices = session.chose().listen(this::select);
        pane.addListener(SWT.Dispose, event -> {
            results.run();
            choices.run();
        });
        show();
    }

    private Table table(Composite pane) {
        Table made = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        made.setHeaderVisible(true);
        made.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        made.setData("twinfeed.field", "options");
        Controls.name(made, words.get("pane.options"));
        column(made, "option.title", SWT.LEFT);
        column(made, "option.verdict", SWT.LEFT);
        column(made, "option.price", SWT.RIGHT);
        column(made, "option.binding", SWT.LEFT);
        column(made, "option.work", SWT.LEFT);
        made.addSelectionListener(SelectionListener.widgetSelectedAdapter(
                event -> session.choose(rows.get(made.getSelectionIndex()).key())));
        return made;
    }

    private void column(Table made, String key, int style) {
        new TableColumn(made, style).setText(words.get(key));
    }

    private void show() {
        rows = new OptionTable(words).of(session.result(), session.whole());
        table.setItemCount(rows.size());
        for (int i = 0; i < rows.size(); i++) {
            row(table.getItem(i), rows.get(i));
        }
        columns.fit();
        proposeOffer();
        select();
    }

    /** Until somebody chooses, the first heater that the quote offers is looked at. */
    private void proposeOffer() {
        if (session.chosen() == null) {
            rows.stream().filter(row -> !row.price().isEmpty()).findFirst().ifPresent(row -> session.choose(row.key()));
        }
    }

    private void row(TableItem item, OptionRow row) {
        item.setText(0, row.title());
        item.setText(1, row.verdict().toString());
        item.setText(2, row.price().isEmpty() ? row.noPrice() : row.price());
        item.setText(3, row.binding());
        item.setText(4, row.work());
        item.setForeground(1, ThemeColours.of(row.verdict().tone(), table));
        // Until it is worked out anew, what belongs to the survey before the change.
        boolean known = session.planned();
        for (int column : new int[] {2, 4}) {
            boolean plain = known && (column == 4 || !row.price().isEmpty());
            item.setForeground(column, plain ? null : ThemeColours.of(Tone.QUIET, table));
        }
    }

    private void select() {
        if (rows.isEmpty() && detail.show("")) {
            label.getParent().layout();
        }
        String key = OptionTable.chosen(session.result(), session.chosen())
                .map(OptionTable::key)
                .orElse("");
        for (int i = 0; i < rows.size(); i++) {
            if (rows.get(i).key().equals(key)) {
                table.setSelection(i);
                detail(rows.get(i));
            }
        }
    }

    private void detail(OptionRow row) {
        String work = row.work().isEmpty() ? "" : "\n" + words.format("option.workIs", Map.of("work", row.work()));
        String text = words.format("option.decidedBy", Map.of("check", row.binding())) + work;
        label.setForeground(session.planned() ? null : ThemeColours.of(Tone.QUIET, label));
        if (detail.show(row.binding().isEmpty() ? "" : text)) {
            label.getParent().layout();
        }
    }

    boolean setFocus() {
        return table.setFocus();
    }
}
