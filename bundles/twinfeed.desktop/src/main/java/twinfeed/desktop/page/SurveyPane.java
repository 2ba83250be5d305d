// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.NeededReadings;
import twinfeed.desktop.form.Page;
import twinfeed.desktop.form.Remark;
import twinfeed.desktop.form.Remarks;
import twinfeed.desktop.form.SurveyPages;
import twinfeed.desktop.look.Columns;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.ChangeNotifier;
import twinfeed.desktop.session.JobSession;
import twinfeed.desktop.session.ModelChange;
import twinfeed.desktop.text.ReadingName;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.model.survey.SurveyPackage;

/** The survey: a list of short pages, and the page that is chosen. Pages are made when they are first looked at. */
public final class SurveyPane {
    private final FormContext context;
    private final List<Page> pages = SurveyPages.all();
    private final Map<Page, PageView> views = new LinkedHashMap<>();
    private final Table list;
    private final Composite stack;
    private final StackLayout layout = new StackLayout();
    private final ChangeNotifier turned = new ChangeNotifier();
    private Remarks remarks;
    private int remarksWidth = -1;

    /** Makes the pane. */
    public SurveyPane(Composite parent, JobSession session, Words words) {
        this.context = FormContext.of(session, words);
        this.remarks = Remarks.of(session, words);
        Composite pane = Controls.pane(parent);
        Controls.heading(pane, words.get("pane.survey"));
        this.list = list(pane);
        this.stack = new Composite(pane, SWT.NONE);
        stack.setLayout(layout);
        stack.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        List<Runnable> ends = new ArrayList<>();
        ends.add(session.edits().changed().listen(this::refresh));
        ends.add(session.resulted().listen(this::remark));
        ends.add(session.faults().resulted().listen(() -> views.values().forEach(PageView::lock)));
        pane.addListener(SWT.Dispose, event -> ends.forEach(Runnable::run));
        remark();
        show(0);
    }

    private Table list(Composite pane) {
        Table table = new Table(pane, SWT.BORDER | SWT.FULL_SELECTION | SWT.SINGLE);
        Controls.name(table, context.words().get("pane.survey"));
        table.setData(FieldRow.FIELD, "pages");
        new TableColumn(table, SWT.LEFT);
        new TableColumn(table, SWT.RIGHT);
        for (int i = 0; i < pages.size(); i++) {
            TableItem item = new TableItem(table, SWT.NONE);
            item.setText(
                    0,
                    (i + 1) + "   " + context.words().get("page." + pages.get(i).key()));
        }
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.heightHint = pages.size() * table.getItemHeight();
        table.setLayoutData(data);
        table.addListener(SWT.Resize, event -> {
            remarksWidth = -1;
            spread(table);
        });
        Columns.shortened(table);
        RowMenu.over(table).copy(context.words());
        table.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> show(table.getSelectionIndex())));
        return table;
    }

    /** Remarks take the room that they need, titles the rest. */
    private void spread(Table table) {
        TableColumn count = table.getColumn(1);
        int before = count.getWidth();
        // A text that may be shortened asks for no room.
        Columns.pack(count);
        if (count.getWidth() == remarksWidth) {
            // Asking for the room lays everything out at once and waits for the screen.
            count.setWidth(before);
            return;
        }
        remarksWidth = count.getWidth();
        int width = table.getClientArea().width;
        int remarks = Math.min(count.getWidth(), width / 2);
        count.setWidth(remarks);
        table.getColumn(0).setWidth(width - remarks);
    }

    /** How many pages there are. */
    public int size() {
        return pages.size();
    }

    /** The number of the page that is shown, from 0. */
    public int shown() {
        return list.getSelectionIndex();
    }

    /** Shows a page, from 0. */
    public void show(int index) {
        list.select(index);
        Page page = pages.get(index);
        layout.topControl = views.computeIfAbsent(page, this::make).control();
        stack.layout();
        turned.fire();
    }

    /** Fires when a page is shown. */
    public ChangeNotifier turned() {
        return turned;
    }

    /** Whether the page of a key is shown. */
    public boolean shows(String key) {
        return pages.get(shown()).key().equals(key);
    }

    /** Turns pages, forwards or backwards; at the ends nothing happens. */
    public void turn(int by) {
        int to = shown() + by;
        if (to >= 0 && to < pages.size()) {
            show(to);
        }
    }

    /** Shows the page on which a reading is asked, and puts the cursor into its field. */
    public void open(FieldLocation place) {
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).asks(root(pages.get(i)), place)) {
                show(i);
                PageView view = views.get(pages.get(i));
                if (view != null) {
                    view.focus(place);
                }
                return;
            }
        }
    }

    /**
     * Shows what was changed: its page, and the field or row chosen on it. What is changed elsewhere than on the pages stays where it is.
     *
     * @param change an undo or a redo
     */
    public void reveal(ModelChange change) {
        if (change.path().contains(SurveyPackage.Literals.SURVEY__SYMPTOMS)) {
            // Questions are answered beside the page; the list of answers on it can stay folded away.
            showPage(SurveyPages.FAULTS);
        } else {
            open(FieldLocation.of(change));
        }
    }

    private void showPage(String key) {
        for (int i = 0; i < pages.size(); i++) {
            if (pages.get(i).key().equals(key) && i != shown()) {
                show(i);
            }
        }
    }

    /** Puts the cursor into the next field that a check waits for, behind the one it is in; the answer is whether there is one. */
    public boolean nextNeeded() {
        commit();
        Object here = fieldUnderCursor();
        NeededReadings needed = NeededReadings.of(pages, context.session().survey(), remarks);
        Optional<FieldLocation> next = here instanceof String key && key.startsWith("survey.")
                ? needed.next(key)
                : needed.nextFrom(pages.get(shown()), context.session().survey());
        next.ifPresent(this::open);
        return next.isPresent();
    }

    /** The field with the cursor; in a list of answers the cursor stands in a piece of it. */
    private @Nullable Object fieldUnderCursor() {
        @Nullable Control control = list.getDisplay().getFocusControl();
        while (control != null && control.getData(FieldRow.FIELD) == null) {
            control = control.getParent();
        }
        return control == null ? null : control.getData(FieldRow.FIELD);
    }

    private PageView make(Page page) {
        PageView view = new PageView(stack, context, page);
        view.remark(remarks);
        view.lock();
        return view;
    }

    private void refresh() {
        views.values().forEach(PageView::refresh);
        remark();
    }

    private void remark() {
        remarks = Remarks.of(context.session(), context.words());
        views.values().forEach(view -> view.remark(remarks));
        for (int i = 0; i < pages.size(); i++) {
            mark(list.getItem(i), pages.get(i));
        }
        spread(list);
    }

    private void mark(TableItem item, Page page) {
        int wrong = count(page, Remark.Level.WRONG);
        int odd = count(page, Remark.Level.ODD);
        int wanted = count(page, Remark.Level.WANTED);
        List<String> parts = new ArrayList<>();
        add(parts, wrong, "page.wrong");
        add(parts, odd, "page.odd");
        add(parts, wanted, "page.wanted");
        item.setText(1, String.join(", ", parts));
        item.setForeground(1, ThemeColours.of(wrong > 0 ? Tone.BAD : Tone.DOUBT, list));
    }

    private EObject root(Page page) {
        return page.root(context.session().survey());
    }

    private int count(Page page, Remark.Level level) {
        return remarks.count(page, root(page), level);
    }

    private void add(List<String> parts, int count, String key) {
        if (count > 0) {
            parts.add(context.words().format(key, Map.of("count", String.valueOf(count))));
        }
    }

    /** Takes what was typed; the answer is whether all of it could be used. */
    public boolean commit() {
        boolean all = true;
        for (PageView view : views.values()) {
            all &= view.commit();
        }
        return all && context.unread().isEmpty();
    }

    /** Forgets what was typed and not taken yet, and shows the page that it was typed on; the answer is whether there was anything. */
    public boolean revert() {
        boolean any = false;
        for (Map.Entry<Page, PageView> each : views.entrySet()) {
            if (each.getValue().revert()) {
                any = true;
                showPage(each.getKey().key());
            }
        }
        return any;
    }

    /** What was typed and cannot be used: the reading that it is for, and as it was typed. */
    public List<String> unread() {
        return context.unread().entrySet().stream()
                .map(each -> ReadingName.of(each.getKey(), context.words()) + " \"" + each.getValue() + "\"")
                .toList();
    }

    /** Puts the cursor into the list of pages. */
    public boolean setFocus() {
        return list.setFocus();
    }
}
