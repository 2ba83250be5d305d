// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.function.Supplier;
import org.eclipse.swt.accessibility.ACC;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleAttributeAdapter;
import org.eclipse.swt.accessibility.AccessibleAttributeEvent;
import org.eclipse.swt.accessibility.AccessibleControlAdapter;
import org.eclipse.swt.accessibility.AccessibleControlEvent;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Composite;

/** Has a screen reader say what appears in a status line, wherever the cursor is. */
public final class Announcement {
    private Announcement() {}

    /**
     * Makes a line known as the window's status bar, whose changes are read out when the person pauses.
     *
     * @param text its whole text as it is now
     */
    public static void statusBar(Composite line, Supplier<String> text) {
        line.getAccessible().addAccessibleControlListener(new AccessibleControlAdapter() {
            @Override
            public void getRole(AccessibleControlEvent event) {
                if (event.childID == ACC.CHILDID_SELF) {
                    event.detail = ACC.ROLE_STATUSBAR;
                }
            }
        });
        line.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                if (event.childID == ACC.CHILDID_SELF) {
                    event.result = text.get();
                }
            }
        });
        line.getAccessible().addAccessibleAttributeListener(new AccessibleAttributeAdapter() {
            @Override
            public void getAttributes(AccessibleAttributeEvent event) {
                event.attributes = new String[] {"live", "polite"};
            }
        });
    }

    /** Has a sentence read out; an empty one is not. */
    public static void say(Composite line, String sentence) {
        if (!sentence.isEmpty()) {
            line.getAccessible().sendEvent(ACC.EVENT_NAME_CHANGED, null);
            NativeNames.announce(line, sentence);
        }
    }
}
