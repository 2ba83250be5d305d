// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.form.Choice;
import twinfeed.desktop.form.InvalidFieldException;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Scroll;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.shape.Tone;

/** The values of one entry, each with what is wrong with it beside it. */
final class EntryForm {
    private static final int FIELD_WIDTH = 120;
    private static final int LABEL_WIDTH = 150;

    private final EntryList list;
    private final String title;
    private final Scroll scroll;
    private final Label heading;
    private final Map<EntryField, Control> controls = new LinkedHashMap<>();
    private final Map<EntryField, Label> messages = new LinkedHashMap<>();
    private final Map<EntryField, String> faults = new LinkedHashMap<>();
    private @Nullable EObject entry;
    private boolean filling;

    /**
     * A form.
     *
     * @param fields what it asks for
     * @param title what stands above it where no entry is shown by its name
     */
    EntryForm(Composite parent, EntryList list, List<EntryField> fields, String title) {
        this.list = list;
        this.title = title;
        this.scroll = new Scroll(parent);
        Composite pane = scroll.content();
        this.heading = Controls.heading(pane, "");
        Composite body = Controls.columns(pane, 2);
        body.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        fields.forEach(field -> row(body, field));
        show(null);
    }

    private void row(Composite body, EntryField field) {
        Label label = new Label(body, SWT.WRAP);
        label.setText(field.label());
        label.setToolTipText(field.help());
        GridData narrow = new GridData(SWT.FILL, SWT.CENTER, false, false);
        narrow.widthHint = LABEL_WIDTH;
        label.setLayoutData(narrow);
        Control control = field.choices().isEmpty() ? text(body, field) : choice(body, field);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = FIELD_WIDTH;
        control.setLayoutData(wide);
        control.setToolTipText(field.help());
        control.setData("twinfeed.field", "entry." + field.name());
        Controls.describe(control, field.label(), () -> (message(field) + " " + field.help()).strip());
        Label message = Controls.wrapped(body);
        message.setForeground(ThemeColours.of(Tone.BAD, message));
        ((GridData) message.getLayoutData()).horizontalIndent = 8;
        Controls.show(message, "");
        controls.put(field, control);
        messages.put(field, message);
    }

    private String message(EntryField field) {
        Label message = messages.get(field);
        return message == null ? "" : message.getText();
    }

    private Text text(Composite body, EntryField field) {
        Text text = new Text(body, SWT.BORDER);
        text.setMessage(field.hint());
        text.addFocusListener(FocusListener.focusLostAdapter(event -> commit(field)));
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> commit(field)));
        text.addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.ESC) {
                revert(field);
            }
        }));
        return text;
    }

    private CCombo choice(Composite body, EntryField field) {
        CCombo combo = Controls.choice(body);
        combo.setItems(field.choices().stream().map(Choice::text).toArray(String[]::new));
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> commit(field)));
        return combo;
    }

    private static String typed(Control control) {
        return control instanceof Text text ? text.getText() : ((CCombo) control).getText();
    }

    private boolean commit(EntryField field) {
        Control control = controls.get(field);
        EObject present = entry;
        if (filling || present == null || control == null || control.isDisposed()) {
            return true;
        }
        if (typed(control).equals(field.show(present))) {
            fault(field, "");
            return true;
        }
        try {
            field.type(present, typed(control), list.edits());
            fault(field, "");
            fill(field, present);
            return true;
        } catch (InvalidFieldException refused) {
            fault(field, String.valueOf(refused.getMessage()));
            return false;
        }
    }

    private void fault(EntryField field, String text) {
        if (text.isEmpty() ? faults.remove(field) != null : !text.equals(faults.put(field, text))) {
            say(field, text.isEmpty() ? List.of() : List.of(new EntryRemark(0, field.name(), true, text)));
            scroll.fit();
        }
    }

    private boolean revert(EntryField field) {
        EObject present = entry;
        Control control = controls.get(field);
        if (present == null || control == null || typed(control).equals(field.show(present))) {
            return false;
        }
        fault(field, "");
        fill(field, present);
        return true;
    }

    /** Takes what was typed; the answer is whether all of it could be. */
    boolean commit() {
        boolean all = true;
        for (EntryField field : controls.keySet()) {
            all &= commit(field);
        }
        return all;
    }

    /** Takes back what was typed and is not taken yet; the answer is whether there was something. */
    boolean revert() {
        boolean any = false;
        for (EntryField field : controls.keySet()) {
            any |= revert(field);
        }
        return any;
    }

    /** What was typed and cannot be taken: label and text. */
    String unread() {
        return controls.entrySet().stream()
                .filter(each -> faults.containsKey(each.getKey()))
                .map(each -> each.getKey().label() + " \"" + typed(each.getValue()) + "\"")
                .collect(Collectors.joining(", "));
    }

    /** Shows an entry; null shows that none is chosen. */
    void show(@Nullable EObject chosen) {
        boolean other = chosen != entry;
        entry = chosen;
        heading.setText(
                chosen == null || chosen == list.root()
                        ? title
                        : list.name(chosen).replace("&", "&&"));
        if (other) {
            faults.clear();
        }
        for (Map.Entry<EntryField, Control> each : controls.entrySet()) {
            each.getValue().setEnabled(chosen != null);
            if (!faults.containsKey(each.getKey())) {
                fill(each.getKey(), chosen);
            }
        }
        scroll.fit();
    }

    private void fill(EntryField field, @Nullable EObject from) {
        Control control = controls.get(field);
        String now = from == null ? "" : field.show(from);
        filling = true;
        if (control instanceof Text text && !text.getText().equals(now)) {
            text.setText(now);
        } else if (control instanceof CCombo combo) {
            int index = List.of(combo.getItems()).indexOf(now);
            if (index >= 0) {
                combo.select(index);
            } else {
                combo.deselectAll();
                combo.setText(now);
            }
        }
        filling = false;
    }

    /** Says what is wrong or odd in the entry that is shown. */
    void remark(List<EntryRemark> remarks) {
        boolean changed = false;
        for (EntryField field : controls.keySet()) {
            if (!faults.containsKey(field)) {
                List<EntryRemark> here = new ArrayList<>(remarks);
                here.removeIf(each -> !each.field().equals(field.name()));
                changed |= say(field, here);
            }
        }
        if (changed) {
            scroll.fit();
        }
    }

    private boolean say(EntryField field, List<EntryRemark> remarks) {
        Label message = messages.get(field);
        if (message == null) {
            return false;
        }
        boolean wrong = remarks.stream().anyMatch(EntryRemark::error);
        message.setForeground(ThemeColours.of(wrong ? Tone.BAD : Tone.DOUBT, message));
        return Controls.show(
                message,
                remarks.stream()
                        .map(each -> (each.error() ? "\u2717 " : "! ") + each.text())
                        .collect(Collectors.joining("\n")));
    }

    /** Lays it out again. */
    void fit() {
        scroll.fit();
    }

    /** Puts the cursor into the first field. */
    void setFocus() {
        controls.values().stream().findFirst().ifPresent(Control::setFocus);
    }

    /** Puts the cursor into a field, if there is one of that name. */
    void focus(String name) {
        controls.forEach((field, control) -> {
            if (field.name().equals(name)) {
                control.setFocus();
            }
        });
    }

    /** The whole. */
    Composite control() {
        return scroll.control();
    }
}
