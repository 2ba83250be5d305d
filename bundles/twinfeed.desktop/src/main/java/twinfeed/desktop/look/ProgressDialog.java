// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.jface.dialogs.ProgressMonitorDialog;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.text.Words;

/** How far some work is, in the window's language; the platform's own words are English only. */
final class ProgressDialog extends ProgressMonitorDialog {
    private final Words words;

    ProgressDialog(Shell shell, Words words) {
        super(shell);
        this.words = words;
    }

    @Override
    protected void configureShell(Shell shell) {
        super.configureShell(shell);
        shell.setText(words.get("application"));
    }

    @Override
    protected Control createDialogArea(Composite parent) {
        Control area = super.createDialogArea(parent);
        message = words.get("progress.begun");
        messageLabel.setText(message);
        return area;
    }

    @Override
    protected void createCancelButton(Composite parent) {
        cancel = createButton(parent, IDialogConstants.CANCEL_ID, words.get("dialog.cancel"), true);
        setOperationCancelButtonEnabled(enableCancelButton);
    }
}
