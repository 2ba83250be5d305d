// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Link;
import twinfeed.document.shape.Tone;

/** Links that can be read in every theme, and that a screen reader calls links. */
public final class Links {
    /** Contrast that text needs, by WCAG 2.1, 1.4.3. */
    private static final double READABLE = 4.5;

    private Links() {}

    /** A link without a text yet. */
    public static Link of(Composite parent) {
        Link link = new Link(parent, SWT.NONE);
        if (ThemeColours.contrast(
                        link.getLinkForeground().getRGB(), link.getBackground().getRGB())
                < READABLE) {
            // The usual dark theme has a blue that was meant for grounds in the colour of a selection.
            link.setLinkForeground(ThemeColours.of(Tone.WATER, link));
        }
        if (NativeNames.link(link)) {
            // The toolkit would tell GTK that a link is a text; unless it is asked last, it says nothing, and what GTK
            // was told counts.
            link.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
                @Override
                public void getRole(AccessibleControlEvent event) {
                    if (event.childID == ACC.CHILDID_SELF) {
                        event.detail = -1;
                    }
                }
            });
        }
        return link;
    }
}
