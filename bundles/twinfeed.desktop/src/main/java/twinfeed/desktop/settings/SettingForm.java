// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.settings;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/** A section of the page of settings: a heading, then rows of label, entry and key, each with room for what is wrong below it. */
final class SettingForm {
    private static final int COLUMNS = 3;
    private static final int WIDTH = 380;
    private static final int LABEL_HEIGHTS = 7;

    private final Composite body;
    private final Words words;
    private final Runnable fit;

    /**
     * An empty section.
     *
     * @param title key of its heading
     * @param fit called when it has grown or shrunk
     */
    SettingForm(Composite parent, Words words, String title, Runnable fit) {
        this.words = words;
        this.fit = fit;
        GridData gap = (GridData) Controls.heading(parent, words.get(title)).getLayoutData();
        gap.verticalIndent = 14;
        String lead = words.find(title + ".lead");
        if (lead != null) {
            Controls.text(parent, lead, Tone.QUIET);
        }
        body = Controls.columns(parent, COLUMNS);
        body.setLayoutData(Controls.across(parent));
    }

    /** Where more may stand. */
    Composite body() {
        return body;
    }

    /**
     * A line of text, kept when the cursor leaves it or Enter is pressed, unless something is wrong with it.
     *
     * @param key key of its label
     * @param problem what is wrong with a text; empty if nothing is
     * @param keep takes a text that was changed
     */
    Entry line(String key, String value, UnaryOperator<String> problem, Consumer<String> keep) {
        return entry(key, value, SWT.SINGLE, problem, keep);
    }

    /** Several lines of text; likewise, but Enter begins a line. */
    Entry lines(String key, String value, int height, Consumer<String> keep) {
        Entry entry = entry(key, value, SWT.MULTI | SWT.V_SCROLL | SWT.WRAP, any -> "", keep);
        ((GridData) entry.text.getLayoutData()).heightHint = height * Controls.lineHeight(entry.text);
        // In several lines the Tab key would be a character; here it leads on.
        entry.text.addListener(
                SWT.Traverse,
                event -> event.doit |=
                        event.detail == SWT.TRAVERSE_TAB_NEXT || event.detail == SWT.TRAVERSE_TAB_PREVIOUS);
        return entry;
    }

    private Entry entry(String key, String value, int style, UnaryOperator<String> problem, Consumer<String> keep) {
        label(key, (style & SWT.MULTI) != 0);
        Text text = new Text(body, style | SWT.BORDER);
        text.setText(value);
        prepare(text, key);
        Composite keys = new Composite(body, SWT.NONE);
        org.eclipse.swt.layout.RowLayout row = new org.eclipse.swt.layout.RowLayout(SWT.HORIZONTAL);
        row.marginTop = 0;
        row.marginBottom = 0;
        keys.setLayout(row);
        Label wrong = message(key);
        Entry entry = new Entry(text, keys, wrong, problem, keep, value);
        text.addModifyListener(event -> entry.typed());
        text.addListener(SWT.FocusOut, event -> entry.commit());
        text.addListener(SWT.DefaultSelection, event -> entry.commit());
        return entry;
    }

    /** One of some answers, kept at once. */
    CCombo choice(String key, List<String> answers, int chosen, Consumer<Integer> keep) {
        label(key, false);
        CCombo combo = Controls.choice(body);
        combo.setItems(answers.toArray(String[]::new));
        combo.select(chosen);
        prepare(combo, key);
        new Label(body, SWT.NONE);
        combo.addListener(SWT.Selection, event -> keep.accept(combo.getSelectionIndex()));
        return combo;
    }

    private void label(String key, boolean top) {
        Label label = new Label(body, SWT.NONE);
        label.setText(words.get(key));
        GridData data = new GridData(SWT.BEGINNING, top ? SWT.TOP : SWT.CENTER, false, false);
        // So that the entries of all sections stand below one another.
        int usual = LABEL_HEIGHTS * Controls.lineHeight(label);
        data.widthHint = Math.max(usual, label.computeSize(SWT.DEFAULT, SWT.DEFAULT).x);
        label.setLayoutData(data);
    }

    private void prepare(Control control, String key) {
        GridData data = new GridData(SWT.FILL, SWT.CENTER, true, false);
        data.widthHint = WIDTH;
        control.setLayoutData(data);
        control.setData("twinfeed.field", key);
        String help = words.get(key + ".help");
        control.setToolTipText(help.replace("&", "&&"));
        Controls.describe(control, words.get(key), () -> help);
    }

    /** Room for a message below the last row. */
    Label message(String key) {
        Label wrong = Controls.wrapped(body);
        wrong.setData("twinfeed.field", key + ".problem");
        Controls.show(wrong, "");
        return wrong;
    }

    /** Shows a message in its room. */
    void say(Label room, String text, Tone tone) {
        if (!room.isDisposed()) {
            room.setForeground(ThemeColours.of(tone, room));
            if (Controls.show(room, text)) {
                fit.run();
            }
        }
    }

    /** A line or several lines of text on the page. */
    final class Entry {
        private final Text text;
        private final Composite keys;
        private final Label wrong;
        private final UnaryOperator<String> problem;
        private final Consumer<String> keep;
        private String kept;

        Entry(
                Text text,
                Composite keys,
                Label wrong,
                UnaryOperator<String> problem,
                Consumer<String> keep,
                String kept) {
            this.text = text;
            this.keys = keys;
            this.wrong = wrong;
            this.problem = problem;
            this.keep = keep;
            this.kept = kept;
        }

        /** What stands there. */
        String value() {
            return text.getText().replace(Text.DELIMITER, "\n").strip();
        }

        /** Enters a text, as if it was typed. */
        void enter(String value) {
            text.setText(value);
            commit();
        }

        /** Shows a text that is kept already. */
        void show(String value) {
            kept = value;
            if (!text.isDisposed() && !text.getText().equals(value)) {
                text.setText(value);
            }
        }

        /** A key beside it. */
        void key(String name, Runnable action) {
            Button button = Controls.push(keys, words.get(name), text.getData("twinfeed.field") + "." + name, action);
            Controls.name(button, words.get(name) + " " + words.get(String.valueOf(text.getData("twinfeed.field"))));
        }

        private void typed() {
            say(problem.apply(value()));
        }

        /** Says what is wrong; an empty text takes that back. */
        void say(String trouble) {
            SettingForm.this.say(wrong, trouble.isEmpty() ? "" : "\u2717 " + trouble, Tone.BAD);
        }

        /** Whether nothing is wrong with it. */
        boolean right() {
            return problem.apply(value()).isEmpty();
        }

        private void commit() {
            if (!text.isDisposed() && right() && !value().equals(kept)) {
                kept = value();
                keep.accept(kept);
            }
        }
    }
}
