// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.fault;

import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.look.ThemeColours;
import twinfeed.document.shape.Tone;
import twinfeed.model.io.InputException;

/** Why an answer or a tick was not taken; takes no room while there is nothing. */
final class Complaints {
    private final Label label;
    private final Runnable grown;

    Complaints(Composite parent, Runnable grown) {
        this.grown = grown;
        label = Controls.wrapped(parent);
        label.setForeground(ThemeColours.of(Tone.BAD, label));
        label.setData("twinfeed.field", "faults.complaint");
        Controls.show(label, "");
    }

    /** Does something, and says why where that was refused. */
    void attempt(Runnable action) {
        String reason = "";
        try {
            action.run();
        } catch (InputException refused) {
            reason = "\u2717 " + reason(refused);
        }
        if (Controls.show(label, reason)) {
            grown.run();
        }
    }

    private static String reason(InputException refused) {
        return refused.problems().stream()
                .map(problem -> problem.wrong() + "; " + problem.right())
                .reduce((first, second) -> first + "\n" + second)
                .orElse(String.valueOf(refused.getMessage()));
    }
}
