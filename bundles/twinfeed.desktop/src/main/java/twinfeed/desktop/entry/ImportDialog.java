// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.FormDialog;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Decimals;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.usecase.BookReport;

/** What taking over a price list would do, row by row, before anything is taken. */
final class ImportDialog extends FormDialog {
    private static final int WIDTH = 940;
    private static final int HEIGHT = 320;

    private final Words words;
    private final Path source;
    private final BookReport report;
    private @Nullable Columns columns;

    ImportDialog(Shell shell, Words words, Path source, BookReport report) {
        super(shell, words, words.get("entry.import.title"), words.get("entry.import.do"), 1);
        this.words = words;
        this.source = source;
        this.report = report;
    }

    /** Whether the list is to be taken over. */
    boolean ask() {
        return open() == OK;
    }

    @Override
    protected void fill(Composite body) {
        Label lead = Controls.wrapped(body);
        lead.setText(words.format(
                report.refused().isEmpty() ? "entry.import.lead" : "entry.import.refused",
                Map.of(
                        "file",
                        String.valueOf(source.getFileName()),
                        "added",
                        report.added().size(),
                        "changed",
                        report.changed().size(),
                        "removed",
                        report.removed().size(),
                        "refused",
                        report.refused().size())));
        ((GridData) lead.getLayoutData()).widthHint = WIDTH;
        Table table = new Table(body, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        table.setData("twinfeed.field", "entry.import.rows");
        Controls.name(table, words.get("entry.import.title"));
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
        data.widthHint = WIDTH;
        data.heightHint = HEIGHT;
        table.setLayoutData(data);
        for (String key :
                List.of("compare.kind", "entry.import.code", "entry.import.what", "compare.before", "compare.after")) {
            new TableColumn(table, SWT.LEFT).setText(words.get(key));
        }
        this.columns = Columns.of(table, 2, 500, 5);
        RowMenu.over(table).copy(words);
        report.refused().forEach(each -> row(table, "\u2717", "refused", Tone.BAD, "", each, "", ""));
        report.added().forEach(each -> row(table, "+", "added", Tone.GOOD, each, "", "", ""));
        report.changed()
                .forEach(each -> row(
                        table,
                        "\u2260",
                        "changed",
                        Tone.DOUBT,
                        each.code(),
                        label(each),
                        figure(each.before()),
                        figure(each.after())));
        report.removed().forEach(each -> row(table, "\u2212", "removed", Tone.BAD, each, "", "", ""));
        String name = source.getFileName() + ", ";
        report.notices().forEach(each -> row(table, "!", "odd", Tone.DOUBT, "", each.replace(name, ""), "", ""));
        report.lacking().stream()
                .flatMap(each -> each.codes().stream())
                .forEach(code -> row(table, "?", "lacking", Tone.DOUBT, code, "", "", ""));
    }

    /** A number as the reader writes it; anything else as it is. */
    private String figure(String text) {
        return Decimals.read(text, Locale.ROOT)
                .map(number -> Decimals.write(number, words.locale()))
                .orElse(text);
    }

    private String label(BookReport.Change change) {
        String key = "label." + (change.code().isEmpty() ? "PriceBook." : "PriceItem.") + change.field();
        String label = words.find(key);
        return label == null ? change.field() : label.replace("&", "");
    }

    private void row(
            Table table, String sign, String kind, Tone tone, String code, String what, String before, String after) {
        TableItem item = new TableItem(table, SWT.NONE);
        item.setText(new String[] {sign + " " + words.get("entry.import.kind." + kind), code, what, before, after});
        item.setForeground(0, ThemeColours.of(tone, table));
    }

    @Override
    protected void look() {
        if (columns != null) {
            columns.fit();
        }
        getButton(IDialogConstants.OK_ID).setEnabled(report.text() != null);
    }
}
