// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StackLayout;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.RowMenu;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.ModelChange;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;
import twinfeed.model.io.FileFingerprint;

/** The editor of one list: its table, the chosen entry, and what can be done. Checks and files are looked after out of the way. */
final class EntryPane {
    private final EntryList list;
    private final Threads threads;
    private final Words words;
    private final Composite pane;
    private final Label trouble;
    private final Label lacking;
    private final Button addLacking;
    private final EntryTable table;
    private final Composite right;
    private final StackLayout stack = new StackLayout();
    private final EntryForm form;
    private final EntryForm head;
    private final List<Button> onEntry = new ArrayList<>();
    private List<String> missing = List.of();
    private Map<EObject, List<EntryRemark>> remarks = Map.of();
    private int revision;

    EntryPane(Composite parent, EntryList list, Threads threads) {
        this.list = list;
        this.threads = threads;
        this.words = list.words();
        this.pane = Controls.pane(parent);
        pane.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        this.trouble = Controls.wrapped(pane);
        trouble.setForeground(ThemeColours.of(Tone.BAD, trouble));
        trouble.setData("twinfeed.field", "entry.trouble");
        Controls.show(trouble, "");
        Composite actions = Controls.columns(pane, 6);
        Button adding = Controls.push(actions, words.get("entry.add"), "entry.add", this::add);
        onEntry.add(Controls.push(actions, words.get("entry.copy"), "entry.copy", this::copy));
        onEntry.add(Controls.push(actions, words.get("entry.remove"), "entry.remove", this::remove));
        onEntry.add(Controls.push(actions, words.get("entry.old"), "entry.old", this::outOfDate));
        Controls.push(actions, words.get("entry.head"), "entry.head", this::showHead);
        this.addLacking = Controls.push(actions, words.get("entry.lacking.add"), "entry.lacking.add", this::addLacking);
        this.lacking = Controls.wrapped(pane);
        lacking.setForeground(ThemeColours.of(Tone.DOUBT, lacking));
        lacking.setData("twinfeed.field", "entry.lacking");
        Controls.show(lacking, "");
        SashForm halves = new SashForm(pane, SWT.HORIZONTAL);
        halves.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        this.table = new EntryTable(halves, list, this::select);
        RowMenu menu = RowMenu.over(table.control());
        menu.button(adding);
        onEntry.forEach(menu::button);
        menu.copy(words);
        this.right = new Composite(halves, SWT.NONE);
        right.setLayout(stack);
        this.form = new EntryForm(right, list, list.fields(), "");
        this.head = new EntryForm(right, list, list.headFields(), words.get("entry.head.of"));
        head.show(list.root());
        halves.setWeights(64, 36);
        list.edits().changed().listen(this::changed);
        select();
        check();
    }

    /** Shows the values of the list as a whole. */
    private void showHead() {
        commit();
        table.chooseNone();
        select();
        head.setFocus();
    }

    private void add() {
        commit();
        choose(list.add(words.get("entry.new")));
        form.setFocus();
    }

    private void copy() {
        EObject chosen = table.chosen();
        if (commit() && chosen != null) {
            choose(list.copy(chosen));
        }
    }

    private void remove() {
        EObject chosen = table.chosen();
        if (chosen != null) {
            form.revert();
            list.edits().remove(chosen);
        }
    }

    private void outOfDate() {
        EObject chosen = table.chosen();
        if (commit() && chosen != null) {
            list.outOfDate(chosen);
        }
    }

    private void addLacking() {
        commit();
        @Nullable EObject first = null;
        for (String name : missing) {
            EObject added = list.add(name);
            first = first == null ? added : first;
        }
        if (first != null) {
            choose(first);
        }
    }

    /** Chooses an entry. */
    void choose(EObject entry) {
        table.choose(entry);
        select();
    }

    private void select() {
        EObject chosen = table.chosen();
        form.show(chosen);
        form.remark(chosen == null ? List.of() : remarks.getOrDefault(chosen, List.of()));
        head.show(list.root());
        stack.topControl = chosen == null ? head.control() : form.control();
        right.layout();
        (chosen == null ? head : form).fit();
        onEntry.forEach(button -> button.setEnabled(chosen != null));
    }

    private void changed() {
        if (!pane.isDisposed()) {
            table.refill();
            select();
            check();
        }
    }

    /** Looks what is wrong, in a copy and out of the way; an older answer is not shown. */
    private void check() {
        int mine = ++revision;
        EObject copy = EcoreUtil.copy(list.root());
        List<EObject> entries = List.copyOf(list.entries());
        threads.quick().execute(() -> {
            if (mine == revision) {
                List<EntryRemark> found = list.remarks(copy);
                List<String> lacks = list.lacking(copy);
                threads.display().execute(() -> {
                    if (mine == revision && !pane.isDisposed()) {
                        show(entries, found, lacks);
                    }
                });
            }
        });
    }

    private void show(List<EObject> entries, List<EntryRemark> found, List<String> lacks) {
        Map<EObject, List<EntryRemark>> by = new HashMap<>();
        found.stream()
                .filter(each -> each.entry() >= 0 && each.entry() < entries.size())
                .forEach(each -> by.computeIfAbsent(entries.get(each.entry()), any -> new ArrayList<>())
                        .add(each));
        remarks = by;
        missing = lacks;
        table.remarks(by);
        EObject chosen = table.chosen();
        form.remark(chosen == null ? List.of() : by.getOrDefault(chosen, List.of()));
        List<EntryRemark> ofHead =
                found.stream().filter(each -> each.entry() < 0).toList();
        head.remark(ofHead);
        String whole =
                ofHead.stream().map(each -> each.field() + ": " + each.text()).collect(Collectors.joining("\n"));
        addLacking.setEnabled(!lacks.isEmpty());
        addLacking.setVisible(!lacks.isEmpty());
        boolean moved = Controls.show(
                lacking,
                lacks.isEmpty()
                        ? ""
                        : words.format(
                                "entry.lacking", Map.of("count", lacks.size(), "codes", String.join(", ", lacks))));
        moved |= Controls.show(trouble, whole);
        if (moved) {
            pane.layout();
        }
    }

    /** Says something; an empty text takes that back. */
    void say(String text) {
        if (!pane.isDisposed() && Controls.show(trouble, text)) {
            pane.layout();
        }
    }

    /** Takes what was typed; says what cannot be taken. */
    boolean commit() {
        boolean all = form.commit() & head.commit();
        String unread = form.unread() + head.unread();
        say(all ? "" : words.format("entry.unread", Map.of("typed", unread)));
        return all;
    }

    /** Takes back what was typed last, or else the last edit. */
    void undo() {
        if (!form.revert() & !head.revert()) {
            list.edits().undo().ifPresent(this::reveal);
        }
    }

    /** Makes the edit that was taken back again. */
    void redo() {
        if (commit()) {
            list.edits().redo().ifPresent(this::reveal);
        }
    }

    /** Chooses the entry that was changed; what went, or belongs to the list as a whole, leaves none chosen. */
    private void reveal(ModelChange change) {
        @Nullable EObject entry = change.element() == null ? change.owner() : change.element();
        while (entry != null && !list.entries().contains(entry)) {
            entry = entry.eContainer();
        }
        if (entry == null) {
            table.chooseNone();
            select();
            head.focus(change.path().get(0).getName());
        } else {
            choose(entry);
            form.focus(change.path().get(0).getName());
        }
    }

    /**
     * Writes the list in the caller's thread, which waits: what is closed next must be known to be written.
     *
     * @param target where to
     * @param done told where it was written
     */
    boolean save(Path target, Consumer<Path> done) {
        if (!commit()) {
            return false;
        }
        boolean same = target.equals(list.file());
        if (same && !FileFingerprint.of(target).equals(list.mark())) {
            say(words.format("entry.outside", Map.of("file", target)));
            return false;
        }
        try {
            list.write(EcoreUtil.copy(list.root()), target);
            list.saved(target, FileFingerprint.of(target));
            say("");
            done.accept(target);
            return true;
        } catch (RuntimeException refused) {
            say(words.format("save.refused", Map.of("reason", String.valueOf(refused.getMessage()))));
            return false;
        }
    }

    /** Puts the cursor into the table. */
    void setFocus() {
        table.setFocus();
    }

    /** Takes it away, for another list. */
    void dispose() {
        revision++;
        pane.dispose();
    }
}
