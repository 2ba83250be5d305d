// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
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
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;
import twinfeed.document.Figures;
import twinfeed.document.drawing.Mark;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.batch.JudgedDwelling;
import twinfeed.usecase.batch.Refused;

/** The dwellings of a list, most urgent first; below them the rows that could not be used. Only lines that are seen are filled. */
final class BatchTable {
    private static final int[] WIDTHS = {150, 290, 170, 230, 90, 320};
    private static final List<String> HEADS =
            List.of("batch.dwelling", "batch.urgency", "batch.present", "batch.offer", "batch.total", "batch.works");

    private final Words words;
    private final Table table;
    private final List<JudgedDwelling> dwellings = new ArrayList<>();
    private final List<Refused> refused = new ArrayList<>();

    BatchTable(Composite parent, Words words, Runnable selected, Runnable opened) {
        this.words = words;
        this.table = new Table(parent, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE | SWT.VIRTUAL);
        table.setHeaderVisible(true);
        table.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        table.setData("twinfeed.field", "batch.rows");
        Controls.name(table, words.get("batch.rows"));
        for (int i = 0; i < HEADS.size(); i++) {
            TableColumn column = new TableColumn(table, i == 4 ? SWT.RIGHT : SWT.LEFT);
            column.setText(words.get(HEADS.get(i)));
            column.setWidth(WIDTHS[i]);
        }
        table.addListener(SWT.SetData, event -> fill((TableItem) event.item, event.index));
        table.addListener(SWT.Resize, event -> spread());
        Columns.shortened(table);
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> selected.run()));
        table.addListener(SWT.DefaultSelection, event -> opened.run());
    }

    /** The last column takes what the others leave. */
    private void spread() {
        int last = WIDTHS.length - 1;
        int others = 0;
        for (int i = 0; i < last; i++) {
            others += table.getColumn(i).getWidth();
        }
        table.getColumn(last).setWidth(Math.max(WIDTHS[last], table.getClientArea().width - others));
    }

    private void fill(TableItem item, int index) {
        if (index >= dwellings.size()) {
            Refused row = refused.get(index - dwellings.size());
            item.setText(new String[] {
                row.dwelling(),
                "\u2717 " + words.get("batch.rejected"),
                "",
                "",
                "",
                row.reason().replace('\n', ' ')
            });
            item.setForeground(1, ThemeColours.of(Tone.BAD, table));
            return;
        }
        JudgedDwelling dwelling = dwellings.get(index);
        Optional<Mark> present = Optional.ofNullable(dwelling.present()).map(each -> Mark.of(each, words.locale()));
        String works = Stream.of(dwelling.advice(), dwelling.works(), dwelling.why())
                .filter(text -> !text.isEmpty())
                .collect(Collectors.joining("; "));
        item.setText(new String[] {
            dwelling.name(),
            dwelling.urgencyText(),
            present.map(Mark::toString).orElse(""),
            dwelling.offer(),
            new Figures(words.locale()).money(dwelling.total(), dwelling.currency()),
            works.replace('\n', ' ')
        });
        Tone urgency =
                switch (dwelling.urgency()) {
                    case 0, 1 -> Tone.BAD;
                    case 2 -> Tone.POWER;
                    case 3 -> Tone.DOUBT;
                    default -> Tone.GOOD;
                };
        item.setForeground(1, ThemeColours.of(urgency, table));
        present.ifPresent(mark -> item.setForeground(2, ThemeColours.of(mark.tone(), table)));
    }

    /** The control, for the menu over its rows. */
    Table control() {
        return table;
    }

    /** Empties it. */
    void clear() {
        dwellings.clear();
        refused.clear();
        show();
    }

    /** Adds dwellings, each in its place. */
    void add(List<JudgedDwelling> more) {
        dwellings.addAll(more);
        dwellings.sort(JudgedDwelling.MOST_URGENT_FIRST);
        show();
    }

    /** Adds rows that could not be used. */
    void refuse(List<Refused> rows) {
        refused.addAll(rows);
        show();
    }

    private void show() {
        table.setItemCount(dwellings.size() + refused.size());
        table.clearAll();
        table.redraw();
    }

    /** The dwelling that is chosen. */
    Optional<JudgedDwelling> chosen() {
        int index = table.getSelectionIndex();
        return index >= 0 && index < dwellings.size() ? Optional.of(dwellings.get(index)) : Optional.empty();
    }

    /** The whole text of the last column of the line that is chosen, which may not fit there. */
    String text() {
        int index = table.getSelectionIndex();
        return index < 0 ? "" : table.getItem(index).getText(WIDTHS.length - 1);
    }

    /** A place where a job of this name may be kept: beside a file, and nothing that is there already. */
    static Path proposal(Path beside, String name) {
        String plain = name.strip().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-+|-+$", "");
        String stem = plain.isEmpty() ? "dwelling" : plain.toLowerCase(java.util.Locale.ROOT);
        Path file = beside.resolveSibling(stem + ".job");
        for (int i = 2; java.nio.file.Files.exists(file); i++) {
            file = beside.resolveSibling(stem + "-" + i + ".job");
        }
        return file;
    }
}
