// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.jface.dialogs.Dialog;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.GridData;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.text.Words;

/** Asks something in a form of a few columns, with a key that takes what was entered and one that cancels. */
public abstract class FormDialog extends Dialog {
    private final Words words;
    private final String title;
    private final String take;
    private final int columns;

    /**
     * Not open yet.
     *
     * @param title what stands above the dialog
     * @param take what stands on the key that takes the entries
     * @param columns columns of the form
     */
    protected FormDialog(Shell shell, Words words, String title, String take, int columns) {
        super(shell);
        this.words = words;
        this.title = title;
        this.take = take;
        this.columns = columns;
    }

    /** Fills the form. */
    protected abstract void fill(Composite body);

    /** Shows what follows from the entries; called once all keys are there. */
    protected abstract void look();

    /** Fills the space above the form, which is empty otherwise. */
    protected void fillAbove(Composite area) {}

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(title);
    }

    @Override
    protected boolean isResizable() {
        return true;
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Composite area = (Composite) super.createDialogArea(parent);
        fillAbove(area);
        Composite body = Controls.columns(area, columns);
        body.setLayoutData(new GridData(SWT.FILL, SWT.FILL, true, true));
        fill(body);
        return area;
    }

    @Override
    protected void createButtonsForButtonBar(Composite parent) {
        createButton(parent, IDialogConstants.OK_ID, take, true);
        createButton(parent, IDialogConstants.CANCEL_ID, words.get("dialog.cancel"), false);
        look();
    }
}
