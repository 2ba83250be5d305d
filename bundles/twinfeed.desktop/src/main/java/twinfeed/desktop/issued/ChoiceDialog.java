// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.issued;

import java.util.List;
import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.Controls;
import twinfeed.desktop.text.Words;

/** Asks which of several answers it is, and says what follows from the answer. None is chosen beforehand. */
public final class ChoiceDialog extends Dialog {
    private static final int WIDTH = 460;

    private final Words words;
    private final String title;
    private final String message;
    private final List<String> answers;
    private int chosen = -1;

    /**
     * Not open yet.
     *
     * @param title what stands above the dialogue, and on the key that takes the answer
     * @param message what is asked
     * @param answers the answers
     */
    public ChoiceDialog(Shell shell, Words words, String title, String message, List<String> answers) {
        super(shell);
        this.words = words;
        this.title = title;
        this.message = message;
        this.answers = answers;
    }

    /** The number of the answer, or -1 if the person would rather not say. */
    public int ask() {
        return open() == OK ? chosen : -1;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        Label text = Controls.wrapped(area);
        text.setText(message);
        ((GridData) text.getLayoutData()).widthHint = WIDTH;
        for (int i = 0; i < answers.size(); i++) {
            int index = i;
            Button button = new Button(area, SWT.RADIO);
            button.setText(answers.get(i).replace("&", "&&"));
            button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> {
                if (button.getSelection()) {
                    chosen = index;
                    getButton(IDialogConstants.OK_ID).setEnabled(true);
                }
            }));
        }
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, title, false).setEnabled(false);
        createButton(parent, IDialogConstants.CANCEL_ID, words.get("dialog.cancel"), true);
    }
}
