// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.ImageLoader;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Listener;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Widget;

/** Looks at a window and uses it as a person does, from another thread than its own. */
final class Ui {
    private static final long PATIENCE_MS = 90_000;
    private static final int MOST_TABS = 60;

    private final Display display;

    Ui(Display display) {
        this.display = display;
    }

    /** Does something in the window's thread and gives its answer. */
    <T> T ask(Callable<T> question) {
        AtomicReference<T> answer = new AtomicReference<>();
        AtomicReference<Throwable> thrown = new AtomicReference<>();
        display.syncExec(() -> {
            try {
                answer.set(question.call());
            } catch (Throwable any) {
                thrown.set(any);
            }
        });
        if (thrown.get() instanceof Error error) {
            throw error;
        }
        if (thrown.get() != null) {
            throw new IllegalStateException(thrown.get());
        }
        return answer.get();
    }

    /** Does something in the window's thread. */
    void run(Runnable action) {
        ask(() -> {
            action.run();
            return null;
        });
    }

    /** Waits until something is so. */
    void await(String what, Callable<Boolean> condition) throws InterruptedException {
        long end = System.currentTimeMillis() + PATIENCE_MS;
        while (!ask(condition)) {
            if (System.currentTimeMillis() > end) {
                shoot("waiting until " + what.replaceAll("[^\\p{L}\\d ]+", " "));
                throw new AssertionError("waited in vain until " + what);
            }
            Thread.sleep(25);
        }
    }

    /** The window; the platform keeps another shell that is never seen. */
    Shell shell() {
        for (Shell shell : display.getShells()) {
            if (shell.isVisible() && shell.getParent() == null) {
                return shell;
            }
        }
        throw new AssertionError("no window is to be seen");
    }

    /** All widgets of a kind that can be seen, in the order of the window. */
    <T extends Control> List<T> all(Class<T> kind, Predicate<T> which) {
        List<T> found = new ArrayList<>();
        for (Shell shell : display.getShells()) {
            walk(shell, control -> {
                if (kind.isInstance(control) && which.test(kind.cast(control))) {
                    found.add(kind.cast(control));
                }
            });
        }
        return found;
    }

    private static void walk(Control control, Consumer<Control> visitor) {
        visitor.accept(control);
        if (control instanceof Composite composite) {
            for (Control child : composite.getChildren()) {
                walk(child, visitor);
            }
        }
    }

    /** The widget of a kind that bears an id of ours. */
    <T extends Control> T field(Class<T> kind, String id) {
        List<T> found = all(kind, control -> id.equals(control.getData("twinfeed.field")) && control.isVisible());
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " visible widgets are called " + id);
        }
        return found.get(0);
    }

    /** Presses a key together with the one for commands. */
    void command(char key) throws InterruptedException {
        takeKeys(display::getFocusControl);
        post(SWT.KeyDown, SWT.MOD1, (char) 0);
        post(SWT.KeyDown, 0, key);
        post(SWT.KeyUp, 0, key);
        post(SWT.KeyUp, SWT.MOD1, (char) 0);
    }

    /** Presses a key that is no letter, by its code, and lets it go; with a modifier unless that is 0. */
    void key(int modifier, int code) throws InterruptedException {
        if (modifier != 0) {
            post(SWT.KeyDown, modifier, (char) 0);
        }
        post(SWT.KeyDown, code, (char) 0);
        post(SWT.KeyUp, code, (char) 0);
        if (modifier != 0) {
            post(SWT.KeyUp, modifier, (char) 0);
        }
    }

    /** Types letters, one after the other. */
    void write(String text) throws InterruptedException {
        for (char letter : text.toCharArray()) {
            post(SWT.KeyDown, 0, letter);
            post(SWT.KeyUp, 0, letter);
        }
    }

    /** Goes on by the Tab key until the cursor is in a field. */
    void tabTo(String field) throws InterruptedException {
        takeKeys(display::getFocusControl);
        for (int i = 0; i < MOST_TABS; i++) {
            if (field.equals(ask(this::cursor))) {
                return;
            }
            key(0, SWT.TAB);
        }
        shoot("tab to " + field);
        throw new AssertionError("the Tab key does not lead to " + field + "; the cursor is in "
                + ask(() -> String.valueOf(display.getFocusControl())));
    }

    /**
     * Puts the cursor into a control and waits until the window hears the keyboard. Without a window manager nobody else makes a window
     * active, and one that has just closed may have taken the keyboard with it; then keys go nowhere.
     *
     * @param where the control, asked for in the window's thread; null for wherever the window puts the cursor
     */
    void takeKeys(Callable<Control> where) throws InterruptedException {
        AtomicBoolean heard = new AtomicBoolean();
        Listener ear = event -> heard.set(true);
        run(() -> display.addFilter(SWT.KeyDown, ear));
        try {
            long end = System.currentTimeMillis() + PATIENCE_MS;
            while (!heard.get()) {
                if (System.currentTimeMillis() > end) {
                    shoot("no keys are heard");
                    throw new AssertionError("the window does not hear the keyboard");
                }
                ask(() -> {
                    Control control = where.call();
                    shell().forceActive();
                    return control == null ? shell().forceFocus() : control.forceFocus();
                });
                draw();
                post(SWT.KeyDown, SWT.SHIFT, (char) 0);
                post(SWT.KeyUp, SWT.SHIFT, (char) 0);
                Thread.sleep(200);
            }
        } finally {
            run(() -> display.removeFilter(SWT.KeyDown, ear));
        }
    }

    private Object cursor() {
        Control focus = display.getFocusControl();
        return focus == null ? null : focus.getData("twinfeed.field");
    }

    private void post(int type, int keyCode, char character) throws InterruptedException {
        ask(() -> {
            Event event = new Event();
            event.type = type;
            event.keyCode = keyCode;
            event.character = character;
            return display.post(event);
        });
        Thread.sleep(40);
    }

    /**
     * Types into a text field of the window in front.
     *
     * @param end the event by which the entry ends, {@link SWT#FocusOut} or {@link SWT#DefaultSelection}
     */
    void type(String field, String typed, int end) {
        run(() -> {
            shell().forceActive();
            Text text = field(Text.class, field);
            text.forceFocus();
            text.setText(typed);
            send(text, end);
        });
    }

    /** Sends an event to a widget, as if a person had caused it. */
    static void send(Widget widget, int type) {
        widget.notifyListeners(type, new Event());
    }

    /** Works off what waits in the window's thread, until everything is drawn. */
    void draw() {
        run(() -> {
            while (display.readAndDispatch()) {
                // on to the next
            }
        });
    }

    /** Writes a picture of the screen for people to look at. */
    void shoot(String name) {
        draw();
        run(() -> {
            Rectangle area = display.getBounds();
            Image image = new Image(display, area.width, area.height);
            GC gc = new GC(display);
            gc.copyArea(image, 0, 0);
            gc.dispose();
            ImageData data = image.getImageData();
            image.dispose();
            save(data, name);
        });
    }

    private static void save(ImageData data, String name) {
        try {
            Path folder = Files.createDirectories(Path.of(System.getProperty("twinfeed.shots", "target/screenshots")));
            ImageLoader loader = new ImageLoader();
            loader.data = new ImageData[] {data};
            loader.save(folder.resolve(name + ".png").toString(), SWT.IMAGE_PNG);
        } catch (java.io.IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
