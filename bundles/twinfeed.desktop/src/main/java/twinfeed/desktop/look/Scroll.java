// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.ScrolledComposite;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;

/** A column that scrolls if it does not fit, and is as wide as there is room. */
public final class Scroll {
    private final ScrolledComposite scroll;
    private final Composite content;

    /** An empty one. */
    public Scroll(Composite parent) {
        scroll = new ScrolledComposite(parent, SWT.V_SCROLL);
        scroll.setExpandHorizontal(true);
        scroll.setExpandVertical(true);
        scroll.setShowFocusedControl(true);
        scroll.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        content = Controls.pane(scroll);
        scroll.setContent(content);
        scroll.getVerticalBar().setIncrement(24);
        scroll.addListener(SWT.Resize, event -> fit());
    }

    /** Where its content goes. */
    public Composite content() {
        return content;
    }

    /** The whole. */
    public Composite control() {
        return scroll;
    }

    /** Lays it out again after something on it has grown or shrunk. */
    public void fit() {
        fit(scroll, content);
    }

    /**
     * Lays the content of something that scrolls out again. Measures all of it once, which is what takes long; the places come from what was
     * measured.
     */
    public static void fit(ScrolledComposite scroll, Composite content) {
        int width = scroll.getClientArea().width;
        if (width > 0) {
            scroll.setMinHeight(content.computeSize(width, SWT.DEFAULT, true).y);
            content.layout(false, true);
        }
    }

    /** Scrolls until something stands at the top. */
    public void to(org.eclipse.swt.widgets.Control control) {
        scroll.setOrigin(0, control.getLocation().y);
    }
}
