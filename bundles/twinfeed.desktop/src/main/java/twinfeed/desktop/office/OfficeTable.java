// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.office;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Palette;
import twinfeed.desktop.text.Words;

/** The office's list: searched as one types, filtered, sorted by the head that is clicked. */
final class OfficeTable {
    private final Words words;
    private final Text search;
    private final CCombo filter;
    private final Label count;
    private final Table table;
    private final Columns columns;
    private final Runnable selected;
    private List<OfficeRow> all = List.of();
    private List<OfficeRow> shown = List.of();
    private int sortedBy = OfficeRow.NEXT;
    private boolean descending;

    /**
     * An empty one.
     *
     * @param selected told when other lines are chosen
     * @param opened told when a line is clicked twice, or the key for entering is pressed on it
     */
    OfficeTable(Composite pane, Words words, Runnable selected, Runnable opened) {
        this.words = words;
        this.selected = selected;
        Composite row = Controls.columns(pane, 4);
        row.setLayoutData(Controls.across(pane));
        this.search = new Text(row, SWT.BORDER | SWT.SEARCH | SWT.ICON_CANCEL);
        search.setMessage(words.get("office.search"));
        search.setLayoutData(new GridData(SWT.FILL, SWT.CENTER, true, false));
        search.setData("twinfeed.field", "office.search");
        Controls.name(search, words.get("office.search"));
        search.addListener(SWT.Modify, event -> fill());
        new Label(row, SWT.NONE).setText(words.get("office.filter"));
        this.filter = Controls.choice(row);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, false, false);
        wide.widthHint = 240;
        filter.setLayoutData(wide);
        filter.setData("twinfeed.field", "office.filter");
        Controls.name(filter, words.get("office.filter"));
        filter.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> fill()));
        this.count = new Label(row, SWT.RIGHT);
        GridData right = new GridData(SWT.END, SWT.CENTER, false, false);
        right.widthHint = 110;
        count.setLayoutData(right);
        this.table = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.MULTI);
        table.setHeaderVisible(true);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        table.setData("twinfeed.field", "issued");
        Controls.name(table, words.get("part.issued"));
        for (int i = 0; i < OfficeRow.COLUMNS.size(); i++) {
            column(i);
        }
        this.columns = Columns.of(table, 1, 140, OfficeRow.COLUMNS.size());
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> selected.run()));
        table.addListener(SWT.DefaultSelection, event -> opened.run());
        offer();
        filter.select(0);
        mark();
    }

    private void column(int number) {
        TableColumn column = new TableColumn(table, number == OfficeRow.SUM ? SWT.RIGHT : SWT.LEFT);
        column.setText(words.get(OfficeRow.COLUMNS.get(number)));
        column.setToolTipText(words.get("office.sort"));
        column.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> sort(number)));
    }

    /** Sorts by a column; by the same one again the other way round. */
    void sort(int column) {
        descending = column == sortedBy && !descending;
        sortedBy = column;
        mark();
        fill();
    }

    private void mark() {
        table.setSortColumn(table.getColumn(sortedBy));
        table.setSortDirection(descending ? SWT.DOWN : SWT.UP);
    }

    private void offer() {
        String[] texts = Stream.of(OfficeFilter.values())
                .map(each -> words.format(
                        "office.filter." + each.key(),
                        Map.of("count", all.stream().filter(each::accepts).count())))
                .toArray(String[]::new);
        if (!Arrays.equals(texts, filter.getItems())) {
            int chosen = Math.max(0, filter.getSelectionIndex());
            filter.setItems(texts);
            filter.select(chosen);
        }
    }

    /** Shows these lines, as far as search and filter let them. */
    void show(List<OfficeRow> rows) {
        all = List.copyOf(rows);
        offer();
        fill();
    }

    private void fill() {
        Set<Path> chosen = new HashSet<>(chosen().stream().map(OfficeRow::file).toList());
        OfficeFilter which = OfficeFilter.values()[Math.max(0, filter.getSelectionIndex())];
        Comparator<OfficeRow> order = (one, other) -> one.compare(other, sortedBy, words);
        shown = all.stream()
                .filter(which::accepts)
                .filter(row -> row.holds(search.getText()))
                .sorted((descending ? order.reversed() : order).thenComparing(OfficeRow::name))
                .toList();
        table.setRedraw(false);
        table.removeAll();
        for (OfficeRow row : shown) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(row.cells().toArray(String[]::new));
            item.setForeground(OfficeRow.STATE, Palette.of(row.state().tone(), table));
            item.setForeground(OfficeRow.NEXT, Palette.of(row.step().tone(), table));
            if (chosen.contains(row.file())) {
                table.select(table.getItemCount() - 1);
            }
        }
        table.setRedraw(true);
        columns.fit();
        count.setText(words.format("office.count", Map.of("shown", shown.size(), "all", all.size())));
        selected.run();
    }

    /** Chooses the line of a file, if it is shown. */
    void choose(Path file) {
        for (int i = 0; i < shown.size(); i++) {
            if (shown.get(i).file().equals(file)) {
                table.setSelection(i);
                selected.run();
            }
        }
    }

    /** The lines that are chosen. */
    List<OfficeRow> chosen() {
        return Arrays.stream(table.getSelectionIndices())
                .filter(index -> index < shown.size())
                .mapToObj(shown::get)
                .toList();
    }

    /** The control, for the cursor. */
    Table control() {
        return table;
    }
}
