// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.layout.GridLayout;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import twinfeed.desktop.form.FieldLocation;
import twinfeed.desktop.form.Page;
import twinfeed.desktop.form.Page.Section;
import twinfeed.desktop.form.Page.Several;
import twinfeed.desktop.form.Remark;
import twinfeed.desktop.form.Remarks;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Scroll;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.shape.Tone;

/** One page of the survey; it scrolls if it does not fit. */
final class PageView {
    private static final int LEAST_TOGGLE = 80;

    private final FormContext context;
    private final EObject root;
    private final ScrolledComposite scroll;
    private final Composite content;
    private final List<ItemViews> views = new ArrayList<>();
    private final Map<Section, Label> sectionRemarks = new LinkedHashMap<>();
    private final Map<Section, Label> sectionHeads = new LinkedHashMap<>();
    private final Map<Composite, Label> underCover = new LinkedHashMap<>();
    private final Map<Section, Runnable> unfold = new LinkedHashMap<>();

    PageView(Composite parent, FormContext context, Page page) {
        this.context = context;
        this.root = page.root(context.session().survey());
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        content = Controls.pane(scroll);
        scroll.setContent(content);
        Controls.heading(content, context.words().get("page." + page.key()));
        String lead = context.words().find("page." + page.key() + ".lead");
        if (lead != null) {
            Controls.wrapped(content).setText(lead);
        }
        page.sections().forEach(this::section);
        scroll.addListener(SWT.Resize, event -> fit());
    }

    /** The widget of the page. */
    Control control() {
        return scroll;
    }

    private void section(Section section) {
        String title = context.words().get("section." + section.key());
        Button toggle = section.folded() ? toggle(title) : null;
        if (toggle == null) {
            Label head = Controls.heading(content, title);
            ((GridData) head.getLayoutData()).verticalIndent = 8;
            sectionHeads.put(section, head);
        }
        Label remark = Controls.wrapped(content);
        Controls.show(remark, "");
        sectionRemarks.put(section, remark);
        Label locked = section.underCover() ? Controls.wrapped(content) : null;
        Composite body = Controls.columns(content, 2);
        if (locked != null) {
            locked.setForeground(ThemeColours.of(Tone.DOUBT, locked));
            underCover.put(body, locked);
        }
        ((GridLayout) body.getLayout()).horizontalSpacing = 8;
        body.setLayoutData(Controls.across(content));
        ItemViews view = new ItemViews(body, context, root, section.items());
        views.add(view);
        if (toggle != null) {
            unfold.put(section, fold(toggle, title, body));
        }
    }

    private Button toggle(String title) {
        Button toggle = new Button(content, SWT.TOGGLE);
        toggle.setText("\u25B8 " + title);
        // A button does not wrap: it must not make the page wider than its pane.
        GridData data = new GridData(SWT.FILL, SWT.TOP, true, false);
        data.widthHint = LEAST_TOGGLE;
        data.verticalIndent = 8;
        toggle.setLayoutData(data);
        toggle.setToolTipText(title);
        toggle.setAlignment(SWT.LEFT);
        return toggle;
    }

    /** Folds a section away; the answer unfolds it. */
    private static Runnable fold(Button toggle, String title, Composite body) {
        Runnable show = () -> {
            toggle.setText((toggle.getSelection() ? "\u25BE " : "\u25B8 ") + title);
            body.setVisible(toggle.getSelection());
            ((GridData) body.getLayoutData()).exclude = !toggle.getSelection();
            relayout(body);
        };
        toggle.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> show.run()));
        show.run();
        return () -> {
            toggle.setSelection(true);
            show.run();
        };
    }

    /** Readings under the cover wait for the safe isolation. */
    void lock() {
        boolean open = context.session().faults().coverMayComeOff();
        boolean changed = false;
        for (Map.Entry<Composite, Label> entry : underCover.entrySet()) {
            if (entry.getKey().getEnabled() != open) {
                enable(entry.getKey(), open);
                // Buttons of lists are enabled by what is chosen there.
                refresh();
            }
            changed |=
                    Controls.show(entry.getValue(), open ? "" : context.words().get("page.faults.locked"));
        }
        if (changed) {
            fit();
        }
    }

    /** Each by itself, too: on some systems what stands on a disabled ground does not look disabled. */
    private static void enable(Control control, boolean open) {
        control.setEnabled(open);
        if (control instanceof Composite composite && !(control instanceof CCombo)) {
            for (Control child : composite.getChildren()) {
                enable(child, open);
            }
        }
    }

    void refresh() {
        views.forEach(ItemViews::refresh);
    }

    void remark(Remarks remarks) {
        boolean changed = false;
        for (Map.Entry<Section, Label> entry : sectionRemarks.entrySet()) {
            List<Remark> all = remarks.on(root, entry.getKey());
            mark(entry.getKey(), Remarks.waiting(withLists(all, remarks, entry.getKey())));
            List<Remark> here = all.stream()
                    .filter(each -> each.level() != Remark.Level.WANTED)
                    .toList();
            entry.getValue().setForeground(ThemeColours.of(FieldRow.tone(here), entry.getValue()));
            changed |= Controls.show(entry.getValue(), FieldRow.text(here));
        }
        for (ItemViews view : views) {
            changed |= view.remark(remarks);
        }
        if (changed) {
            fit();
        }
    }

    /** A list that has no element yet has no field to bear the mark. */
    private List<Remark> withLists(List<Remark> all, Remarks remarks, Section section) {
        List<Remark> more = new ArrayList<>(all);
        section.items().stream()
                .filter(Several.class::isInstance)
                .forEach(item -> more.addAll(remarks.on(root, item.path())));
        return more;
    }

    /** A section of which nothing is there bears the mark of what waits for it; one that is folded away stays quiet. */
    private void mark(Section section, String waiting) {
        Label head = sectionHeads.get(section);
        if (head != null) {
            String title = context.words().get("section." + section.key());
            head.setText(waiting.isEmpty() ? title : context.words().format("field.wanted", Map.of("label", title)));
            head.setToolTipText(waiting.isEmpty() ? null : waiting);
        }
    }

    boolean commit() {
        boolean all = true;
        for (ItemViews view : views) {
            all &= view.commit();
        }
        return all;
    }

    boolean revert() {
        boolean any = false;
        for (ItemViews view : views) {
            any |= view.revert();
        }
        return any;
    }

    void focus(FieldLocation place) {
        unfold.forEach((section, show) -> {
            if (section.asks(root, place)) {
                show.run();
            }
        });
        for (ItemViews view : views) {
            if (view.focus(place)) {
                return;
            }
        }
    }

    private void fit() {
        fit(scroll, content);
    }

    private static void fit(ScrolledComposite scroll, Composite content) {
        int width = scroll.getClientArea().width;
        if (width > 0) {
            FieldRow.narrow(content, width);
            Scroll.fit(scroll, content);
        }
    }

    /** Lays the page around a control out again, after something on it has grown or shrunk. */
    static void relayout(Control control) {
        Composite parent = control.getParent();
        while (parent != null && !(parent instanceof ScrolledComposite)) {
            parent = parent.getParent();
        }
        if (parent instanceof ScrolledComposite scroll && scroll.getContent() instanceof Composite content) {
            fit(scroll, content);
        }
    }
}
