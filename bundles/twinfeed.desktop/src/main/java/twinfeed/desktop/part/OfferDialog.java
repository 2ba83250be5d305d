// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.part;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.FormDialog;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.view.OfferList;
import twinfeed.document.shape.Tone;

/** Asks which heaters the quote offers and in which order, and why the first one is recommended. */
final class OfferDialog extends FormDialog {
    private static final int WIDTH = 520;
    private static final int ROWS = 9;

    private final Words words;
    private final OfferList list;
    private String reason;
    private @Nullable Table table;
    private @Nullable Label trouble;

    OfferDialog(Shell shell, Words words, OfferList list, String reason) {
        super(shell, words, words.get("offer.title"), words.get("offer.do"), 2);
        this.words = words;
        this.list = list;
        this.reason = reason;
    }

    /** Why the first one is recommended, as it was typed. */
    String reason() {
        return reason;
    }

    @Override
    protected void fill(Composite body) {
        Label lead = Controls.wrapped(body);
        lead.setText(words.get("offer.lead"));
        ((GridData) lead.getLayoutData()).widthHint = WIDTH;
        Table made = new Table(body, SWT.BORDER | SWT.CHECK | SWT.SINGLE | SWT.FULL_SELECTION);
        GridData data = new GridData(SWT.FILL, SWT.FILL, true, true);
        data.heightHint = ROWS * made.getItemHeight();
        made.setLayoutData(data);
        made.setData("twinfeed.field", "offer.list");
        Controls.name(made, words.get("offer.title"));
        made.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> tick(event.item, event.detail)));
        table = made;
        Composite keys = Controls.columns(body, 1);
        keys.setLayoutData(new GridData(SWT.FILL, SWT.TOP, false, false));
        Button up = key(keys, "offer.up", -1);
        Button down = key(keys, "offer.down", 1);
        RowMenu.over(made).button(up).button(down).copy(words);
        why(body);
        show(0);
    }

    private void why(Composite body) {
        Label label = Controls.wrapped(body);
        label.setText(words.get("offer.reason"));
        Text text = new Text(body, SWT.BORDER);
        text.setLayoutData(Controls.across(body));
        text.setText(reason);
        text.setMessage(words.get("offer.reason.example"));
        text.setData("twinfeed.field", "offer.reason");
        Controls.name(text, words.get("offer.reason"));
        text.addModifyListener(event -> reason = text.getText());
        Label wrong = Controls.wrapped(body);
        wrong.setForeground(ThemeColours.of(Tone.DOUBT, wrong));
        ((GridData) wrong.getLayoutData()).heightHint = Controls.lineHeight(wrong);
        trouble = wrong;
    }

    private Button key(Composite keys, String key, int by) {
        Button button = new Button(keys, SWT.PUSH);
        button.setText(words.get(key));
        button.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            if (table != null && table.getSelectionIndex() >= 0) {
                show(list.move(table.getSelectionIndex(), by));
            }
        }));
        return button;
    }

    private void tick(org.eclipse.swt.widgets.Widget item, int detail) {
        if (detail == SWT.CHECK && table != null && item instanceof TableItem row) {
            list.offer(table.indexOf(row), row.getChecked());
            look();
        }
    }

    private void show(int selected) {
        if (table == null) {
            return;
        }
        table.removeAll();
        for (OfferList.Entry entry : list.entries()) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(entry.title());
            item.setChecked(entry.offered());
        }
        table.select(selected);
        look();
    }

    @Override
    protected void look() {
        Button take = getButton(IDialogConstants.OK_ID);
        if (take != null && trouble != null) {
            trouble.setText(list.possible() ? "" : words.get("offer.problem"));
            take.setEnabled(list.possible());
        }
    }
}
