// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CCombo;
import org.eclipse.swt.widgets.Event;

/**
 * Makes a list of answers answer typed letters. What was reached counts as chosen when no letter follows, or the list is left. On GTK the
 * input method takes a letter that is pressed over a field which cannot be written in, and nobody hears of it before it is let go.
 */
final class ChoiceKeys {
    private static final int CHOSEN_AFTER_MS = 700;

    private static final int COMMAND = SWT.CTRL | SWT.ALT | SWT.COMMAND;

    /** Of a command such as Ctrl+S or a mnemonic, the letter may be let go as much later than the other key. */
    private static final int TOGETHER_MS = 500;

    private final CCombo choice;
    private final TypedLetters letters = new TypedLetters();
    private final Set<Integer> pressed = new HashSet<>();
    private boolean pending;
    private int keys;
    private long commandUp = Long.MIN_VALUE / 2;

    private ChoiceKeys(CCombo choice) {
        this.choice = choice;
    }

    static void listen(CCombo choice) {
        ChoiceKeys keys = new ChoiceKeys(choice);
        choice.addListener(SWT.KeyDown, keys::press);
        choice.addListener(SWT.KeyUp, keys::letGo);
        choice.addListener(SWT.FocusOut, event -> keys.take());
        choice.addListener(SWT.Selection, event -> keys.pending = false);
    }

    private void press(Event event) {
        pressed.add(event.keyCode);
        type(event);
    }

    private void letGo(Event event) {
        boolean heard = pressed.remove(event.keyCode);
        long atMs = Integer.toUnsignedLong(event.time);
        if (event.keyCode == SWT.CTRL || event.keyCode == SWT.ALT || event.keyCode == SWT.COMMAND) {
            commandUp = atMs;
        } else if (!heard && atMs - commandUp > TOGETHER_MS) {
            type(event);
        }
    }

    private void type(Event event) {
        boolean command = (event.stateMask & COMMAND) != 0;
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
