// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.form.Choice;
import twinfeed.desktop.form.FieldForm;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.Page.Several;
import twinfeed.desktop.form.ReadingPath;
import twinfeed.desktop.form.Remarks;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.RowMenu;
import twinfeed.model.check.ModelPath;
import twinfeed.model.survey.Photo;
import twinfeed.model.survey.SurveyPackage.Literals;

/** Elements of one form, for example the pieces of a pipe run: a short table, and under it the fields of the one chosen. */
final class ListView implements ItemView {
    private static final int MOST_ROWS = 6;
    private static final int LEAST_NAME = 60;
    private static final int LEAST_TABLE = 80;

    private final FormContext context;
    private final EObject root;
    private final Several several;
    private final Composite body;
    private final Table table;
    private final Columns columns;
    private @Nullable Button add;
    private final List<Button> onElement = new ArrayList<>();
    private final Composite detail;
    private final @Nullable PhotoBar photos;
    private List<EObject> elements = List.of();
    private @Nullable EObject chosen;
    private @Nullable ItemViews fields;
    private @Nullable Remarks remarks;

    ListView(Composite parent, FormContext context, EObject root, Several several) {
        this.context = context;
        this.root = root;
        this.several = several;
        this.body = Controls.columns(parent, 1);
        body.setLayoutData(Controls.across(parent));
        this.table = table();
        this.columns = Columns.of(table, 0, LEAST_NAME, several.columns().size());
        if (several.grows()) {
            buttons();
        }
        @Nullable PhotoBar bar = several.path().last() == Literals.SURVEY__PHOTOS ? new PhotoBar(body, context) : null;
        this.photos = bar;
        menu(bar);
        this.detail = Controls.columns(body, 2);
        detail.setLayoutData(Controls.across(body));
        ((org.eclipse.swt.layout.GridLayout) detail.getLayout()).marginLeft = 10;
        refresh();
        if (!elements.isEmpty()) {
            choose(elements.get(0));
        }
    }

    private Table table() {
        Table made = new Table(body, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        made.setHeaderVisible(several.columns().size() > 1);
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        // It takes the width of the page, however wide its columns are.
        data.widthHint = LEAST_TABLE;
        made.setLayoutData(data);
        made.setData(FieldRow.FIELD, ModelPath.of(root) + "." + several.path().text());
        Controls.name(made, context.name(several.path()));
        made.setToolTipText(context.help(several.path()));
        for (ReadingPath column : several.columns()) {
            new TableColumn(made, number(column) ? SWT.RIGHT : SWT.LEFT).setText(context.name(column));
        }
        made.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
            commit();
            choose(elements.get(made.getSelectionIndex()));
        }));
        return made;
    }

    private static boolean number(ReadingPath column) {
        FieldForm form = FieldForm.of(column.attribute());
        return form == FieldForm.QUANTITY || form == FieldForm.WHOLE;
    }

    private void buttons() {
        Composite row = Controls.columns(body, 4);
        row.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        add = button(row, "list.add", this::add);
        onElement.add(button(row, "list.remove", this::remove));
        onElement.add(button(row, "list.up", () -> move(-1)));
        onElement.add(button(row, "list.down", () -> move(1)));
    }

    /** What the keys below the list do, over its rows too. */
    private void menu(@Nullable PhotoBar bar) {
        RowMenu menu = RowMenu.over(table);
        if (bar != null) {
            bar.keys().forEach(menu::button);
        }
        if (add != null) {
            menu.button(add);
            menu.button(onElement.get(0));
            menu.button(onElement.get(1), () -> context.words().get("menu.up"));
            menu.button(onElement.get(2), () -> context.words().get("menu.down"));
        }
        menu.copy(context.words());
    }

    private Button button(Composite row, String key, Runnable action) {
        Button button = new Button(row, SWT.PUSH);
        button.setText(context.words().get(key));
        String name = context.words().format(key + ".name", Map.of("list", context.name(several.path())));
        button.setToolTipText(name);
        Controls.name(button, name);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    private void add() {
        commit();
        EClass type = ((EReference) several.path().last()).getEReferenceType();
        EObject element = type.getEPackage().getEFactoryInstance().create(type);
        context.session().edits().add(root, several.path().steps(), element);
        choose(element);
        if (fields != null) {
            fields.focus(new FieldLocation(element, several.columns().get(0).text()));
        }
    }

    private void remove() {
        if (chosen != null) {
            // What was typed into the row and not taken goes with it: nobody could put it right any more.
            String row = ModelPath.of(chosen) + ".";
            context.unread().keySet().removeIf(key -> key.startsWith(row));
            context.session().edits().remove(chosen);
        }
    }

    private void move(int by) {
        commit();
        if (chosen != null) {
            context.session().edits().move(chosen, elements.indexOf(chosen) + by);
        }
    }

    private void choose(@Nullable EObject element) {
        if (element == chosen && fields != null) {
            return;
        }
        chosen = element;
        for (org.eclipse.swt.widgets.Control control : detail.getChildren()) {
            control.dispose();
        }
        fields = element == null ? null : new ItemViews(detail, context, element, several.items());
        if (fields != null && remarks != null) {
            fields.remark(remarks);
        }
        select();
        preview();
        PageView.relayout(detail);
    }

    private void preview() {
        if (photos != null) {
            photos.show(chosen instanceof Photo photo ? photo : null);
        }
    }

    private void select() {
        int index = chosen == null ? -1 : elements.indexOf(chosen);
        if (index >= 0) {
            table.select(index);
        } else {
            table.deselectAll();
        }
        if (several.grows()) {
            onElement.get(0).setEnabled(index >= 0);
            onElement.get(1).setEnabled(index > 0);
            onElement.get(2).setEnabled(index >= 0 && index < elements.size() - 1);
        }
    }

    @Override
    public void refresh() {
        int before = chosen == null ? -1 : elements.indexOf(chosen);
        elements = List.copyOf(several.path().elements(root));
        int rows = table.getItemCount();
        table.setItemCount(elements.size());
        for (int i = 0; i < elements.size(); i++) {
            TableItem item = table.getItem(i);
            for (int column = 0; column < several.columns().size(); column++) {
                item.setText(column, cell(elements.get(i), several.columns().get(column)));
            }
        }
        columns.fit();
        GridData data = (GridData) table.getLayoutData();
        data.heightHint =
                table.getHeaderHeight() + Math.max(1, Math.min(MOST_ROWS, elements.size())) * table.getItemHeight();
        if (chosen != null && !elements.contains(chosen)) {
            // The row in its place: what is gone must not be what the next key works on.
            choose(elements.isEmpty() ? null : elements.get(Math.min(Math.max(0, before), elements.size() - 1)));
        } else if (fields != null) {
            fields.refresh();
        }
        if (photos != null && elements.size() > rows) {
            // One that was just taken is to be seen, and to get its caption.
            choose(elements.get(elements.size() - 1));
        }
        select();
        preview();
        if (rows != elements.size()) {
            PageView.relayout(table);
        }
    }

    private String cell(EObject element, ReadingPath column) {
        Object value = column.value(element);
        boolean picked = FieldForm.of(column.attribute()) == FieldForm.CHOICE
                || context.choices().of(column.attribute(), null).size() > 1;
        if (!picked || value == null) {
            return context.format().show(value);
        }
        return context.choices().of(column.attribute(), value).stream()
                .filter(choice -> value.equals(choice.value()))
                .map(Choice::text)
                .findFirst()
                .orElse("");
    }

    @Override
    public boolean remark(Remarks all) {
        remarks = all;
        String waiting = Remarks.waiting(all.on(root, several.path()));
        table.setToolTipText((waiting + "\n" + context.help(several.path())).strip());
        return fields != null && fields.remark(all);
    }

    @Override
    public boolean commit() {
        return fields == null || fields.commit();
    }

    @Override
    public boolean revert() {
        return fields != null && fields.revert();
    }

    @Override
    public boolean focus(FieldLocation place) {
        elements.stream()
                .filter(element -> EcoreUtil.isAncestor(element, place.root()))
                .findFirst()
                .ifPresent(this::choose);
        if (place.row() && elements.contains(place.root())) {
            table.showSelection();
            return table.setFocus();
        }
        if (place.root() == root && place.path().equals(several.path().text())) {
            return (add == null || !elements.isEmpty() ? table : add).setFocus();
        }
        return fields != null && fields.focus(place);
    }
}
