// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/** Asks for a few entries, and says beside them what is wrong; the key that takes them is off until nothing is. */
public final class EntryDialog extends FormDialog {
    private static final int WIDTH = 360;

    /**
     * One entry.
     *
     * @param key key of its label
     * @param value what stands there first
     * @param answers answers to pick from; none for a line of text
     */
    public record Entry(String key, String value, List<String> answers) {
        /** A line of text. */
        public static Entry text(String key, String value) {
            return new Entry(key, value, List.of());
        }
    }

    private final Words words;
    private final String lead;
    private final List<Entry> entries;
    private final Function<List<String>, String> problem;
    private final List<Control> controls = new ArrayList<>();
    private List<String> values = List.of();
    private @Nullable Label trouble;

    /**
     * Not open yet.
     *
     * @param title key of the title, which also stands on the key that takes the entries
     * @param lead key of what is said above the entries
     * @param problem what is wrong with the entries, in words; empty if nothing is
     */
    public EntryDialog(
            Shell shell,
            Words words,
            String title,
            String lead,
            List<Entry> entries,
            Function<List<String>, String> problem) {
        super(shell, words, words.get(title), words.get(title), 2);
        this.words = words;
        this.lead = words.get(lead);
        this.entries = List.copyOf(entries);
        this.problem = problem;
    }

    /** What was entered, in the order of the entries; of answers their text. */
    public List<String> values() {
        return values;
    }

    @Override
    protected void fill(Composite body) {
        Label text = Controls.wrapped(body);
        text.setText(lead);
        ((GridData) text.getLayoutData()).widthHint = WIDTH;
        entries.forEach(entry -> entry(body, entry));
        Label wrong = Controls.wrapped(body);
        wrong.setForeground(ThemeColours.of(Tone.DOUBT, wrong));
        wrong.setData("twinfeed.field", "entry.problem");
        GridData data = (GridData) wrong.getLayoutData();
        data.widthHint = WIDTH;
        data.heightHint = 2 * Controls.lineHeight(wrong);
        trouble = wrong;
    }

    private void entry(Composite body, Entry entry) {
        Label label = new Label(body, SWT.NONE);
        label.setText(words.get(entry.key()));
        Control control = entry.answers().isEmpty() ? line(body, entry) : list(body, entry);
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = WIDTH;
        control.setLayoutData(data);
        control.setData("twinfeed.field", entry.key());
        Controls.name(control, words.get(entry.key()));
        controls.add(control);
    }

    private Control line(Composite body, Entry entry) {
        Text text = new Text(body, SWT.BORDER);
        text.setText(entry.value());
        text.addModifyListener(event -> look());
        return text;
    }

    private Control list(Composite body, Entry entry) {
        CCombo combo = Controls.choice(body);
        combo.setItems(entry.answers().toArray(String[]::new));
        combo.select(Math.max(0, entry.answers().indexOf(entry.value())));
        combo.addListener(SWT.Selection, event -> look());
        return combo;
    }

    @Override
    protected void look() {
        values = controls.stream().map(EntryDialog::value).toList();
        Button take = getButton(IDialogConstants.OK_ID);
        if (trouble != null && take != null) {
            String wrong = problem.apply(values);
            trouble.setText(wrong.replace("&", "&&"));
            take.setEnabled(wrong.isEmpty());
        }
    }

    private static String value(Control control) {
        return control instanceof Text text ? text.getText() : ((CCombo) control).getText();
    }
}
