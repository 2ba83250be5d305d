// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.lang.reflect.Method;
import java.nio.charset.StandardCharsets;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Scrollable;
import org.eclipse.swt.widgets.Widget;
import org.jspecify.annotations.Nullable;

/**
 * Ellipses where a column of a table or tree is too narrow for a text. The other systems draw them themselves; GTK cuts the text within a
 * letter unless the renderer of the column is told, for which the toolkit has the functions but no interface; hence the reflection.
 */
final class Ellipses {
    /** Of Pango: none, and at the end of the line. */
    private static final int NONE = 0;

    private static final int AT_THE_END = 3;
    private static final byte[] PROPERTY = "ellipsize\0".getBytes(StandardCharsets.US_ASCII);

    private static final @Nullable Ellipses GTK = SWT.getPlatform().equals("gtk") ? find() : null;

    private final Method columns;
    private final Method cells;
    private final Method text;
    private final Method data;
    private final Method next;
    private final Method free;
    private final Method set;

    private Ellipses(Class<?> gtk, Class<?> os) throws ReflectiveOperationException {
        this.columns = gtk.getMethod("gtk_tree_view_get_columns", long.class);
        this.cells = gtk.getMethod("gtk_cell_layout_get_cells", long.class);
        this.text = gtk.getMethod("GTK_IS_CELL_RENDERER_TEXT", long.class);
        this.data = os.getMethod("g_list_data", long.class);
        this.next = os.getMethod("g_list_next", long.class);
        this.free = os.getMethod("g_list_free", long.class);
        this.set = os.getMethod("g_object_set", long.class, byte[].class, int.class, long.class);
    }

    private static @Nullable Ellipses find() {
        try {
            ClassLoader toolkit = Widget.class.getClassLoader();
            return new Ellipses(
                    Class.forName("org.eclipse.swt.internal.gtk.GTK", true, toolkit),
                    Class.forName("org.eclipse.swt.internal.gtk.OS", true, toolkit));
        } catch (ReflectiveOperationException | LinkageError otherRelease) {
            return null;
        }
    }

    /**
     * Has a table or tree draw them.
     *
     * @param on false as long as widths are measured: a text that may be shortened asks for no room
     */
    static void of(Scrollable table, boolean on) {
        if (GTK != null) {
            try {
                GTK.set(Widget.class.getField("handle").getLong(table), on ? AT_THE_END : NONE);
            } catch (ReflectiveOperationException otherRelease) {
                // Texts are cut then, and read in the tooltip.
            }
        }
    }

    private void set(long view, int where) throws ReflectiveOperationException {
        long all = list(columns, view);
        for (long column = all; column != 0; column = list(next, column)) {
            long renderers = list(cells, list(data, column));
            for (long each = renderers; each != 0; each = list(next, each)) {
                long renderer = list(data, each);
                if (Boolean.TRUE.equals(text.invoke(null, renderer))) {
                    set.invoke(null, renderer, PROPERTY, where, 0L);
                }
            }
            free.invoke(null, renderers);
        }
        free.invoke(null, all);
    }

    private static long list(Method method, long of) throws ReflectiveOperationException {
        return method.invoke(null, of) instanceof Long pointer ? pointer : 0;
    }
}
