// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.FocusListener;
import org.eclipse.swt.events.KeyListener;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.form.FieldForm;
import twinfeed.desktop.form.FieldFormat;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.InvalidFieldException;
import twinfeed.desktop.form.Page.Field;
import twinfeed.desktop.form.Remarks;

/** A reading that is typed. It is taken when the cursor leaves the field or Enter is pressed; Esc brings the last one back. */
final class TextField implements ItemView {
    private static final int LINES = 3;

    private final FormContext context;
    private final EObject root;
    private final Field field;
    private final Text text;
    private final FieldRow row;
    /** The reading as the model has it, in the text's form; what differs from it was typed and is not taken yet. */
    private String shown = "";
    /** Whether what stands in the field differs from that. */
    private boolean typing;

    TextField(Composite parent, FormContext context, EObject root, Field field) {
        this.context = context;
        this.root = root;
        this.field = field;
        Label label = FieldRow.label(parent, context, field);
        this.text = new Text(parent, SWT.BORDER | (lines() ? SWT.MULTI | SWT.WRAP | SWT.V_SCROLL : SWT.SINGLE));
        this.row = FieldRow.of(label, text, context, root, field);
        text.setMessage(context.hint(field.path()));
        if (lines()) {
            ((GridData) text.getLayoutData()).heightHint = LINES * text.getLineHeight();
        }
        listen();
        refresh();
        String unread = context.unread().get(row.key());
        if (unread != null) {
            text.setText(unread);
            commit();
        }
    }

    private boolean lines() {
        return field.form() == FieldForm.LINES;
    }

    private void listen() {
        text.addModifyListener(event -> typing());
        text.addFocusListener(FocusListener.focusLostAdapter(event -> commit()));
        text.addSelectionListener(SelectionListener.widgetDefaultSelectedAdapter(event -> commit()));
        text.addKeyListener(KeyListener.keyPressedAdapter(event -> {
            if (event.keyCode == SWT.ESC) {
                event.doit = !revert();
            }
        }));
        if (lines()) {
            // Tab goes on to the next field; in a text of several lines it would be typed.
            text.addTraverseListener(event -> event.doit |= tab(event.detail));
        }
    }

    private void typing() {
        boolean differs = pending();
        if (differs || typing) {
            context.typing(root, field, text.getText());
        }
        typing = differs;
    }

    private static boolean tab(int detail) {
        return detail == SWT.TRAVERSE_TAB_NEXT || detail == SWT.TRAVERSE_TAB_PREVIOUS;
    }

    private String written() {
        Object value = field.path().value(root);
        return lines() ? context.format().showLines(value) : context.format().show(value);
    }

    private boolean pending() {
        return !text.getText().equals(shown);
    }

    @Override
    public void refresh() {
        String now = written();
        if (!now.equals(shown)) {
            forget();
            shown = now;
            text.setText(now);
        }
    }

    @Override
    public boolean remark(Remarks remarks) {
        return row.remark(remarks);
    }

    @Override
    public boolean commit() {
        if (text.isDisposed() || !pending()) {
            return true;
        }
        try {
            Object value = value();
            forget();
            context.session().edits().set(root, field.path().steps(), value);
            // The same reading typed in another way is shown in the one way in which it is written.
            shown = written();
            text.setText(shown);
            return true;
        } catch (InvalidFieldException refused) {
            context.unread().put(row.key(), text.getText());
            row.fault(String.valueOf(refused.getMessage()));
            return false;
        }
    }

    private @Nullable Object value() throws InvalidFieldException {
        return lines()
                ? FieldFormat.readLines(text.getText())
                : context.format().read(field.path().attribute(), text.getText());
    }

    private void forget() {
        if (context.unread().remove(row.key()) != null) {
            row.fault("");
        }
    }

    @Override
    public boolean revert() {
        if (text.isDisposed() || !pending()) {
            return false;
        }
        text.setText(shown);
        forget();
        return true;
    }

    @Override
    public boolean focus(FieldLocation place) {
        return row.focus(place);
    }
}
