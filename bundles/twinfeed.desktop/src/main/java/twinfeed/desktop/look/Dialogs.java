// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.util.Optional;
import java.util.function.Predicate;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.IInputValidator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.text.Words;

/** Short dialogues whose keys speak the window's language; the platform's own speak English only. */
public final class Dialogs {
    private Dialogs() {}

    /** Says something. */
    public static void say(Shell shell, Words words, String title, String text) {
        show(MessageDialog.INFORMATION, shell, words, title, text);
    }

    /** Warns of something. */
    public static void warn(Shell shell, Words words, String title, String text) {
        show(MessageDialog.WARNING, shell, words, title, text);
    }

    /** Says that something could not be done. */
    public static void complain(Shell shell, Words words, String text) {
        show(MessageDialog.ERROR, shell, words, words.get("application"), text);
    }

    private static void show(int kind, Shell shell, Words words, String title, String text) {
        MessageDialog.open(kind, shell, title, text, 0, words.get("dialog.ok"));
    }

    /**
     * Asks whether something is to be done; closing the dialogue means no.
     *
     * @param action what the key that does it says
     */
    public static boolean ask(Shell shell, Words words, String title, String question, String action) {
        return MessageDialog.open(MessageDialog.QUESTION, shell, title, question, 0, action, words.get("dialog.cancel"))
                == 0;
    }

    /**
     * Asks for a line of text; empty if the person would rather not say.
     *
     * @param usable which texts are an answer
     * @param wrong what is said of one that is none; empty says nothing
     */
    public static Optional<String> text(
            Shell shell, Words words, String title, String question, Predicate<String> usable, String wrong) {
        IInputValidator validator = text -> usable.test(text) ? null : text.isEmpty() ? "" : wrong;
        InputDialog dialog = new InputDialog(shell, title, question, "", validator) {
            @Override
            protected Button createButton(Composite parent, int id, String label, boolean standard) {
                boolean ok = id == IDialogConstants.OK_ID;
                return super.createButton(parent, id, words.get(ok ? "dialog.ok" : "dialog.cancel"), standard);
            }
        };
        return dialog.open() == Window.OK ? Optional.of(dialog.getValue().strip()) : Optional.empty();
    }
}
