// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.text.MessageFormat;
import java.util.ResourceBundle;

/** What the launcher says, on standard error only. */
final class Messages {
    private Messages() {}

    /** The text of a key with its gaps filled. */
    static String text(String key, Object... values) {
        return MessageFormat.format(
                ResourceBundle.getBundle("twinfeed.launcher.messages").getString(key), values);
    }
}
