// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.util.ResourceBundle;

/** What the launcher says, on standard error only. */
final class Messages {
    private Messages() {}

    /** The text of a key with its gaps filled. */
    static String text(String key, Object... values) {
        String text = ResourceBundle.getBundle("twinfeed.launcher.messages").getString(key);
        for (int i = 0; i < values.length; i++) {
            text = text.replace("{" + i + "}", String.valueOf(values[i]));
        }
        return text;
    }
}
