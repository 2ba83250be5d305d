// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.jspecify.annotations.Nullable;

/** Tells a pane when it has become too low for everything, as on a small screen or with large letters, and when it has room again. */
public final class Compact {
    /** A pane of fewer lines of text is low, where it does not say otherwise. */
    private static final int LINES = 29;

    private final Composite pane;
    private final int lines;
    private final Consumer<Boolean> told;
    private @Nullable Boolean low;

    private Compact(Composite pane, int lines, Consumer<Boolean> told) {
        this.pane = pane;
        this.lines = lines;
        this.told = told;
    }

    /** Looks whenever a pane gets another height, and once at the beginning. */
    public static void of(Composite pane, Consumer<Boolean> told) {
        of(pane, LINES, told);
    }

    /**
     * The same for a pane that needs more.
     *
     * @param lines lines of text below which it is low
     */
    public static void of(Composite pane, int lines, Consumer<Boolean> told) {
        Compact compact = new Compact(pane, lines, told);
        pane.addListener(SWT.Resize, event -> compact.look());
    }

    private void look() {
        int height = pane.getClientArea().height;
        boolean now = height < lines * Controls.lineHeight(pane);
        if (height > 0 && (low == null || low != now)) {
            low = now;
            told.accept(now);
        }
    }
}
