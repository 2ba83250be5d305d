// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import twinfeed.desktop.form.Choice;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.Page.Field;
import twinfeed.desktop.form.Remarks;
import twinfeed.desktop.look.Controls;

/** A reading that is picked. "Not recorded" is an answer of its own: it is neither no nor nothing. */
final class ChoiceField implements ItemView {
    private final FormContext context;
    private final EObject root;
    private final Field field;
    private final CCombo combo;
    private final FieldRow row;
    private List<Choice> choices = List.of();

    ChoiceField(Composite parent, FormContext context, EObject root, Field field) {
        this.context = context;
        this.root = root;
        this.field = field;
        Label label = FieldRow.label(parent, context, field);
        this.combo = Controls.choice(parent);
        this.row = FieldRow.of(label, combo, context, root, field);
        combo.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> commit()));
        refresh();
    }

    @Override
    public void refresh() {
        Object present = field.path().value(root);
        List<Choice> now = choices(present);
        if (!now.equals(choices)) {
            choices = now;
            combo.setItems(now.stream().map(Choice::text).toArray(String[]::new));
        }
        int index = 0;
        while (index < now.size() - 1 && !Objects.equals(now.get(index).value(), present)) {
            index++;
        }
        if (combo.getSelectionIndex() != index) {
            combo.select(index);
        }
    }

    private List<Choice> choices(@org.jspecify.annotations.Nullable Object present) {
        List<Choice> now = new ArrayList<>(context.choices().of(field.path().attribute(), present));
        String defaultValue = context.defaultValue(field.path());
        if (!defaultValue.isEmpty()) {
            now.set(0, new Choice(null, now.get(0).text() + " (" + defaultValue + ")"));
        }
        return now;
    }

    @Override
    public boolean remark(Remarks remarks) {
        return row.remark(remarks);
    }

    @Override
    public boolean commit() {
        int index = combo.isDisposed() ? -1 : combo.getSelectionIndex();
        if (index >= 0) {
            context.session()
                    .edits()
                    .set(root, field.path().steps(), choices.get(index).value());
        }
        return true;
    }

    @Override
    public boolean revert() {
        return false;
    }

    @Override
    public boolean focus(FieldLocation place) {
        return row.focus(place);
    }
}
