// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.util.ArrayList;
import java.util.List;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.widgets.Composite;
import twinfeed.desktop.form.FieldForm;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.Page.Field;
import twinfeed.desktop.form.Page.Item;
import twinfeed.desktop.form.Page.Offered;
import twinfeed.desktop.form.Page.Several;
import twinfeed.desktop.form.Remarks;

/** Several questions one under the other. */
final class ItemViews implements ItemView {
    private final List<ItemView> views = new ArrayList<>();

    /** Makes them in a parent with two columns. */
    ItemViews(Composite parent, FormContext context, EObject root, List<Item> items) {
        for (Item item : items) {
            views.add(view(parent, context, root, item));
        }
    }

    private static ItemView view(Composite parent, FormContext context, EObject root, Item item) {
        if (item instanceof Field field) {
            return picked(context, field)
                    ? new ChoiceField(parent, context, root, field)
                    : new TextField(parent, context, root, field);
        }
        if (item instanceof Several several) {
            return new ListView(parent, context, root, several);
        }
        return new OfferedView(parent, context, (Offered) item);
    }

    private static boolean picked(FormContext context, Field field) {
        return field.form() == FieldForm.CHOICE
                || (field.form() == FieldForm.KNOWN
                        && context.choices().of(field.path().attribute(), null).size() > 1);
    }

    @Override
    public void refresh() {
        views.forEach(ItemView::refresh);
    }

    @Override
    public boolean remark(Remarks remarks) {
        boolean changed = false;
        for (ItemView view : views) {
            changed |= view.remark(remarks);
        }
        return changed;
    }

    @Override
    public boolean commit() {
        boolean all = true;
        for (ItemView view : views) {
            all &= view.commit();
        }
        return all;
    }

    @Override
    public boolean revert() {
        boolean any = false;
        for (ItemView view : views) {
            any |= view.revert();
        }
        return any;
    }

    @Override
    public boolean focus(FieldLocation place) {
        return views.stream().anyMatch(view -> view.focus(place));
    }
}
