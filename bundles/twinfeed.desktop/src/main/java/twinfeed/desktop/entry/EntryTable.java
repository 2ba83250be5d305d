// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.SearchRow;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/** The table of a list's entries, searched as one types; only lines that are seen are filled, for a firm's list may be long. */
final class EntryTable {
    private static final List<String> FILTERS = List.of("all", "wrong", "odd", "old");

    private static final int MEASURED = 150;
    private static final int WIDEST = 200;
    private static final int ROOM = 14;

    private final EntryList list;
    private final Words words;
    private final SearchRow search;
    private final Table table;
    private List<EObject> shown = List.of();
    private Map<EObject, List<EntryRemark>> remarks = Map.of();

    EntryTable(Composite parent, EntryList list, Runnable selected) {
        this.list = list;
        this.words = list.words();
        Composite pane = Controls.pane(parent);
        this.search = new SearchRow(pane, words, "entry", this::fill);
        search.offer(
                FILTERS.stream().map(each -> words.get("entry.filter." + each)).toList());
        this.table = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE | SWT.VIRTUAL);
        table.setHeaderVisible(true);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        table.setData("twinfeed.field", "entries");
        Controls.name(table, words.get("entry.table"));
        for (String name : list.columns()) {
            new TableColumn(table, list.numbers().contains(name) ? SWT.RIGHT : SWT.LEFT)
                    .setText(list.field(name).map(EntryField::label).orElse(name));
        }
        new TableColumn(table, SWT.LEFT).setText(words.get("entry.remark"));
        table.addListener(SWT.SetData, event -> fill((TableItem) event.item, shown.get(event.index)));
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> selected.run()));
        fill();
        measure();
        Columns.of(table, 1, 140, list.columns().size() + 1);
    }

    /** Widths come from what stands in the first lines; filling all of a long list would take its time. */
    private void measure() {
        GC gc = new GC(table);
        for (int i = 0; i < table.getColumnCount(); i++) {
            // Heads are bold.
            gc.setFont(JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT));
            int width = gc.textExtent(table.getColumn(i).getText()).x;
            gc.setFont(table.getFont());
            String name = i < list.columns().size() ? list.columns().get(i) : "";
            for (EObject entry : shown.subList(0, Math.min(MEASURED, shown.size()))) {
                String text = list.field(name).map(field -> field.show(entry)).orElse("");
                width = Math.max(width, gc.textExtent(text).x);
            }
            String marks = name.isEmpty() ? "\u2717 " + words.get("entry.mark.old") : "";
            width = Math.max(width, gc.textExtent(marks).x);
            table.getColumn(i).setWidth(Math.min(WIDEST, width) + ROOM);
        }
        gc.dispose();
    }

    private void fill(TableItem item, EObject entry) {
        List<String> names = list.columns();
        for (int i = 0; i < names.size(); i++) {
            item.setText(
                    i, list.field(names.get(i)).map(field -> field.show(entry)).orElse(""));
        }
        List<EntryRemark> all = remarks.getOrDefault(entry, List.of());
        boolean wrong = all.stream().anyMatch(EntryRemark::error);
        boolean old = list.isOutOfDate(entry);
        item.setText(
                names.size(),
                wrong
                        ? "\u2717 " + words.get("entry.mark.wrong")
                        : old
                                ? "\u2013 " + words.get("entry.mark.old")
                                : all.isEmpty() ? "" : "! " + words.get("entry.mark.odd"));
        item.setForeground(names.size(), ThemeColours.of(wrong ? Tone.BAD : old ? Tone.QUIET : Tone.DOUBT, table));
        item.setForeground(0, old ? ThemeColours.of(Tone.QUIET, table) : null);
    }

    /** Shows other remarks. */
    void remarks(Map<EObject, List<EntryRemark>> now) {
        remarks = Map.copyOf(now);
        refill();
    }

    /** Shows the entries as they are now, in place. */
    void refill() {
        if (search.which() > 0 || shown.size() != visible().size() || !shown.equals(visible())) {
            fill();
        } else {
            table.clearAll();
            table.redraw();
        }
    }

    private List<EObject> visible() {
        return list.entries().stream()
                .filter(entry -> accepts(entry, FILTERS.get(search.which())))
                .filter(entry -> list.holds(entry, search.text()))
                .toList();
    }

    private boolean accepts(EObject entry, String which) {
        List<EntryRemark> all = remarks.getOrDefault(entry, List.of());
        return switch (which) {
            case "wrong" -> all.stream().anyMatch(EntryRemark::error);
            case "odd" -> !all.isEmpty();
            case "old" -> list.isOutOfDate(entry);
            default -> true;
        };
    }

    private void fill() {
        EObject before = chosen();
        shown = visible();
        table.setItemCount(shown.size());
        table.clearAll();
        table.deselectAll();
        int at = before == null ? -1 : shown.indexOf(before);
        if (at >= 0) {
            table.select(at);
        }
        search.count(shown.size(), list.entries().size());
        table.redraw();
    }

    /** The entry that is chosen; null if none is. */
    @Nullable
    EObject chosen() {
        int index = table.getSelectionIndex();
        return index >= 0 && index < shown.size() ? shown.get(index) : null;
    }

    /** Chooses no entry. */
    void chooseNone() {
        table.deselectAll();
    }

    /** Chooses an entry; search and filter give way if they hide it. */
    void choose(EObject entry) {
        if (!visible().contains(entry)) {
            search.showAll();
        }
        fill();
        int index = shown.indexOf(entry);
        if (index >= 0) {
            table.setSelection(index);
            table.showSelection();
        }
    }

    /** The control, for a menu over its rows. */
    Table control() {
        return table;
    }

    /** Puts the cursor into the table. */
    void setFocus() {
        table.setFocus();
    }
}
