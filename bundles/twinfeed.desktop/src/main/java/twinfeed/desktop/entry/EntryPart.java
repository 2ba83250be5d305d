// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.e4.ui.di.Persist;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.desktop.session.Editor;
import twinfeed.desktop.session.LastAction;
import twinfeed.desktop.session.Threads;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/** A part of the window in which a list is edited: which file, and below it the list. */
abstract class EntryPart implements Editor {
    private final MPart part;
    private final Threads threads;
    private final Words words;
    private final LastAction last;
    private final Composite parent;
    private final Label file;
    private final Label state;
    private final Composite keys;
    private @Nullable EntryPane pane;
    private @Nullable EntryList list;

    EntryPart(MPart part, Composite parent, Threads threads, Words words, LastAction last) {
        this.part = part;
        this.parent = parent;
        this.threads = threads;
        this.words = words;
        this.last = last;
        parent.setLayout(new org.eclipse.swt.layout.GridLayout(1, false));
        Composite head = Controls.columns(parent, 2);
        head.setLayoutData(new GridData(SWT.FILL, SWT.TOP, true, false));
        this.file = new Label(head, SWT.WRAP);
        GridData wide = new GridData(SWT.FILL, SWT.CENTER, true, false);
        wide.widthHint = 200;
        file.setLayoutData(wide);
        this.keys = new Composite(head, SWT.NONE);
        keys.setLayout(new org.eclipse.swt.layout.RowLayout(SWT.HORIZONTAL));
        this.state = Controls.wrapped(parent);
        state.setForeground(ThemeColours.of(Tone.QUIET, state));
        state.setData("twinfeed.field", "entry.state");
        Controls.show(state, "");
        file.setText(words.get("entry.none"));
    }

    /** A key above the list. */
    void key(String name, Runnable action) {
        Controls.push(keys, words.get(name), name, action);
    }

    /** Over which window to ask. */
    org.eclipse.swt.widgets.Shell shell() {
        return parent.getShell();
    }

    /** The list that is edited; null before one is open. */
    @Nullable
    EntryList list() {
        return list;
    }

    /** Opens a list out of the way, after asking where the present one was changed. */
    void open(Supplier<EntryList> reading, Path from) {
        if (!mayGo()) {
            return;
        }
        threads.quick().execute(() -> {
            try {
                EntryList read = reading.get();
                threads.display().execute(() -> show(read));
            } catch (RuntimeException refused) {
                threads.display()
                        .execute(() -> say(words.format(
                                "entry.refused",
                                Map.of("file", from, "reason", String.valueOf(refused.getMessage())))));
            }
        });
    }

    /** Begins with a copy of a file of the demonstration, which itself is never changed. */
    void begin(Optional<Path> demonstration, FileQuestion question, Consumer<Path> open) {
        demonstration.ifPresentOrElse(
                from -> question.save("entry.begin", ownCopy(from))
                        .ifPresent(to -> threads.quick().execute(() -> {
                            try {
                                Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
                                threads.display().execute(() -> open.accept(to));
                            } catch (IOException refused) {
                                threads.display()
                                        .execute(() -> say(words.format(
                                                "save.refused", Map.of("reason", String.valueOf(refused)))));
                            }
                        })),
                () -> say(words.get("demo.none")));
    }

    private static Path ownCopy(Path from) {
        return Path.of(System.getProperty("user.home", ".")).resolve(from.getFileName());
    }

    private boolean mayGo() {
        EntryList present = list;
        return present == null
                || !present.edits().dirty()
                || Dialogs.ask(
                        parent.getShell(),
                        words,
                        words.get("entry.leave"),
                        words.format("entry.leave.question", Map.of("file", present.file())),
                        words.get("entry.leave.do"));
    }

    private void show(EntryList read) {
        if (parent.isDisposed()) {
            return;
        }
        if (pane != null) {
            pane.dispose();
        }
        list = read;
        pane = new EntryPane(parent, read, threads);
        say("");
        read.edits().changed().listen(this::look);
        read.edits().changed().listen(last::forget);
        look();
        parent.layout(true, true);
    }

    private void look() {
        EntryList present = list;
        if (present != null && !file.isDisposed()) {
            file.setText(present.file().toString());
            part.setDirty(present.edits().dirty());
            part.setTooltip(present.file().toString());
        }
    }

    /** Says something below the head; an empty text takes that back. */
    void say(String text) {
        if (!state.isDisposed() && Controls.show(state, text)) {
            parent.layout();
        }
    }

    /** Told after the list was written. */
    abstract void written(Path target);

    /** Saves under a name; the answer is whether that was done. */
    boolean saveTo(Path target) {
        boolean saved = pane != null && pane.save(target, this::written);
        look();
        if (saved) {
            last.say(words.format("status.done.saved", Map.of("file", target)));
        }
        return saved;
    }

    @Override
    public boolean commit() {
        return pane == null || pane.commit();
    }

    @Persist
    @Override
    public boolean save() {
        return list == null || saveTo(list.file());
    }

    @Override
    public void undo() {
        if (pane != null) {
            pane.undo();
        }
    }

    @Override
    public boolean canRedo() {
        return list != null && list.edits().canRedo();
    }

    @Override
    public void redo() {
        if (pane != null) {
            pane.redo();
        }
    }

    @Focus
    void focus() {
        if (pane == null) {
            keys.setFocus();
        } else {
            pane.setFocus();
        }
    }
}
