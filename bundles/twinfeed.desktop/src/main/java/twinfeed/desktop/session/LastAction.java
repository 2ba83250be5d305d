// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.session;

/** What the person did last and how it went, in one sentence, for the status line. Belongs to the user interface's thread. */
public final class LastAction {
    private final ChangeNotifier changed = new ChangeNotifier();
    private String text = "";

    /** Fires when there is another sentence, or none any more. */
    public ChangeNotifier changed() {
        return changed;
    }

    /** The sentence; empty without one. */
    public String text() {
        return text;
    }

    /** Says how an action went; its first line is enough for a line at the foot. */
    public void say(String sentence) {
        text = sentence.lines().findFirst().orElse("");
        changed.fire();
    }

    /** Something else is being done: the sentence would be read beside what it does not speak of. */
    public void forget() {
        if (!text.isEmpty()) {
            text = "";
            changed.fire();
        }
    }
}
