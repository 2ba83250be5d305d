// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.function.Consumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.jspecify.annotations.Nullable;

/** Tells a pane when it has become too low for everything, as on a small screen or with large letters, and when it has room again. */
public final class Compact {
    /** A pane of fewer lines of text is low. */
    private static final int LINES = 29;

    private final Composite pane;
    private final Consumer<Boolean> told;
    private @Nullable Boolean low;

    private Compact(Composite pane, Consumer<Boolean> told) {
        this.pane = pane;
        this.told = told;
    }

    /** Looks whenever a pane gets another height, and once at the beginning. */
    public static void of(Composite pane, Consumer<Boolean> told) {
        Compact compact = new Compact(pane, told);
        pane.addListener(SWT.Resize, event -> compact.look());
    }

    private void look() {
        int height = pane.getClientArea().height;
        boolean now = height < LINES * Controls.lineHeight(pane);
        if (height > 0 && (low == null || low != now)) {
            low = now;
            told.accept(now);
        }
    }
}
