// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Widget;
import org.jspecify.annotations.Nullable;

/**
 * Names of the system's own widgets for screen readers. On GTK an entry, a table or a tree is asked by nobody what it is called:
 * the listeners of {@link org.eclipse.swt.accessibility.Accessible} are heard on widgets that are drawn by the toolkit only, and the
 * name has to be set on the accessible object of the system. The toolkit has the functions for it, but not in its interface, and not on
 * every system; hence the reflection. Where they are not there, the listeners have to do.
 */
final class NativeNames {
    /** The number of the role of a link in ATK. */
    private static final int LINK = 86;

    private static final @Nullable NativeNames GTK = SWT.getPlatform().equals("gtk") ? find() : null;

    private final Method accessible;
    private final Method set;
    private final Method setNumber;
    private final Method signal;

    private NativeNames(Method accessible, Method set, Method setNumber, Method signal) {
        this.accessible = accessible;
        this.set = set;
        this.setNumber = setNumber;
        this.signal = signal;
    }

    private static @Nullable NativeNames find() {
        try {
            ClassLoader toolkit = Control.class.getClassLoader();
            Class<?> gtk = Class.forName("org.eclipse.swt.internal.gtk3.GTK3", true, toolkit);
            Class<?> os = Class.forName("org.eclipse.swt.internal.gtk.OS", true, toolkit);
            return new NativeNames(
                    gtk.getMethod("gtk_widget_get_accessible", long.class),
                    os.getMethod("g_object_set", long.class, byte[].class, byte[].class, long.class),
                    os.getMethod("g_object_set", long.class, byte[].class, int.class, long.class),
                    os.getMethod("g_signal_emit_by_name", long.class, byte[].class, byte[].class));
        } catch (ReflectiveOperationException | LinkageError otherRelease) {
            return null;
        }
    }

    /** Names a control, and says what it is for. */
    static void set(Control control, String name, String description) {
        if (GTK != null) {
            GTK.name(control, name, description);
        }
    }

    /**
     * Has a sentence read out by the signal {@code announcement} of ATK, which it has since release 2.46 (an older one writes a line
     * into the log and says nothing).
     */
    static void announce(Control control, String sentence) {
        if (GTK != null) {
            GTK.emit(control, sentence);
        }
    }

    /** Makes a control known as a link; the answer is whether that could be done. */
    static boolean link(Control control) {
        return GTK != null && GTK.role(control, LINK);
    }

    private boolean role(Control control, int role) {
        try {
            long object = object(control);
            if (object != 0) {
                setNumber.invoke(null, object, text("accessible-role"), role, 0L);
            }
            return object != 0;
        } catch (ReflectiveOperationException otherRelease) {
            return false;
        }
    }

    private void emit(Control control, String sentence) {
        try {
            long object = object(control);
            if (object != 0) {
                signal.invoke(null, object, text("announcement"), text(sentence));
            }
        } catch (ReflectiveOperationException otherRelease) {
            // The change of the name has to do.
        }
    }

    private long object(Control control) throws ReflectiveOperationException {
        long handle = Widget.class.getField("handle").getLong(control);
        return accessible.invoke(null, handle) instanceof Long pointer ? pointer : 0;
    }

    private void name(Control control, String name, String description) {
        try {
            long pointer = object(control);
            if (pointer != 0) {
                put(pointer, "accessible-name", name);
                if (!description.isEmpty()) {
                    put(pointer, "accessible-description", description);
                }
            }
        } catch (ReflectiveOperationException otherRelease) {
            // The listeners have to do.
        }
    }

    private void put(long object, String property, String value) throws ReflectiveOperationException {
        set.invoke(null, object, text(property), text(value), 0L);
    }

    private static byte[] text(String text) {
        return (text + "\0").getBytes(StandardCharsets.UTF_8);
    }
}
