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
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.SearchRow;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;

/** The office's list: searched as one types, filtered, sorted by the head that is clicked. */
final class OfficeTable {
    private final Words words;
    private final SearchRow search;
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
        this.search = new SearchRow(pane, words, "office", this::fill);
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
        search.offer(Stream.of(OfficeFilter.values())
                .map(each -> words.format(
                        "office.filter." + each.key(),
                        Map.of("count", all.stream().filter(each::accepts).count())))
                .toList());
    }

    /** Shows these lines, as far as search and filter let them. */
    void show(List<OfficeRow> rows) {
        all = List.copyOf(rows);
        offer();
        fill();
    }

    private void fill() {
        Set<Path> chosen = new HashSet<>(chosen().stream().map(OfficeRow::file).toList());
        OfficeFilter which = OfficeFilter.values()[search.which()];
        Comparator<OfficeRow> order = (one, other) -> one.compare(other, sortedBy, words);
        shown = all.stream()
                .filter(which::accepts)
                .filter(row -> row.holds(search.text()))
                .sorted((descending ? order.reversed() : order).thenComparing(OfficeRow::name))
                .toList();
        table.setRedraw(false);
        table.removeAll();
        for (OfficeRow row : shown) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(row.cells().toArray(String[]::new));
            item.setForeground(OfficeRow.STATE, ThemeColours.of(row.state().tone(), table));
            item.setForeground(OfficeRow.NEXT, ThemeColours.of(row.step().tone(), table));
            if (chosen.contains(row.file())) {
                table.select(table.getItemCount() - 1);
            }
        }
        table.setRedraw(true);
        columns.fit();
        search.count(shown.size(), all.size());
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
