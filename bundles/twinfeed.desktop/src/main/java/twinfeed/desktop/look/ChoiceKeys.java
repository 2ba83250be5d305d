// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.List;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Event;

/** Makes a list of answers answer typed letters. What was reached counts as chosen when no letter follows, or the list is left. */
final class ChoiceKeys {
    private static final int CHOSEN_AFTER_MS = 700;

    private final CCombo choice;
    private final TypedLetters letters = new TypedLetters();
    private boolean pending;
    private int keys;

    private ChoiceKeys(CCombo choice) {
        this.choice = choice;
    }

    static void listen(CCombo choice) {
        ChoiceKeys keys = new ChoiceKeys(choice);
        choice.addListener(SWT.KeyDown, keys::type);
        choice.addListener(SWT.FocusOut, event -> keys.take());
        choice.addListener(SWT.Selection, event -> keys.pending = false);
    }

    private void type(Event event) {
        boolean command = (event.stateMask & (SWT.CTRL | SWT.ALT | SWT.COMMAND)) != 0;
        if (command || !(Character.isLetterOrDigit(event.character) || (pending && event.character == ' '))) {
            return;
        }
        int present = choice.getSelectionIndex();
        int next =
                letters.next(event.character, Integer.toUnsignedLong(event.time), List.of(choice.getItems()), present);
        event.doit = false;
        if (next != present) {
            choice.select(next);
            pending = true;
        }
        int key = ++keys;
        choice.getDisplay().timerExec(CHOSEN_AFTER_MS, () -> {
            if (key == keys) {
                take();
            }
        });
    }

    private void take() {
        if (pending && !choice.isDisposed()) {
            pending = false;
            choice.notifyListeners(SWT.Selection, new Event());
        }
    }
}
