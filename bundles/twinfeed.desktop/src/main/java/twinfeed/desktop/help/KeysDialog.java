// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.help;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.FormDialog;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.text.Words;

/** All keys of the window, and those that hold in lists and fields. */
public final class KeysDialog extends FormDialog {
    private static final int ROWS = 20;

    /** Keys that no command is bound to: what they do depends on where the cursor is. */
    private static final List<String> ELSEWHERE = List.of("copy", "letters", "tab", "menu");

    private final Words words;
    private final List<Line> lines;

    /**
     * A key and what it does.
     *
     * @param key as it is written on the keyboard
     * @param what what it does
     */
    public record Line(String key, String what) {}

    /** Not open yet. */
    public KeysDialog(Shell shell, Words words, List<Line> bound) {
        super(shell, words, words.get("keys.title"), words.get("dialog.ok"), 1);
        this.words = words;
        this.lines = new ArrayList<>(bound);
        lines.sort(Comparator.comparing(Line::what));
        for (String each : ELSEWHERE) {
            lines.add(new Line(words.get("keys." + each), words.get("keys." + each + ".what")));
        }
    }

    @Override
    protected void fill(Composite body) {
        Table table = new Table(body, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        table.setHeaderVisible(true);
        table.setData("twinfeed.field", "keys");
        Controls.name(table, words.get("keys.title"));
        for (String key : List.of("keys.key", "keys.does")) {
            new TableColumn(table, SWT.NONE).setText(words.get(key));
        }
        for (Line line : lines) {
            new TableItem(table, SWT.NONE).setText(new String[] {line.key(), line.what()});
        }
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
        data.widthHint = 30 * Controls.lineHeight(table);
        data.heightHint = ROWS * table.getItemHeight();
        table.setLayoutData(data);
        Columns.of(table, 1, 260, 2).fit();
        RowMenu.over(table).copy(words);
    }

    /** There is nothing to be given up. */
    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, words.get("dialog.ok"), true);
    }

    @Override
    protected void look() {
        // Nothing follows from entries: there are none.
    }
}
