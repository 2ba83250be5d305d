// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.model.application.MApplication;
import org.eclipse.e4.ui.model.application.commands.MBindingTable;
import org.eclipse.e4.ui.model.application.commands.MKeyBinding;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.jface.bindings.keys.KeySequence;
import org.eclipse.jface.bindings.keys.ParseException;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.help.KeysDialog;
import twinfeed.desktop.text.Words;

/** Shows all keys, as they are bound. */
public final class KeysHandler {
    @Execute
    void show(@Named(IServiceConstants.ACTIVE_SHELL) Shell shell, MApplication application, Words words) {
        List<KeysDialog.Line> lines = new ArrayList<>();
        for (MBindingTable table : application.getBindingTables()) {
            for (MKeyBinding binding : table.getBindings()) {
                lines.add(new KeysDialog.Line(
                        written(binding.getKeySequence()), binding.getCommand().getLocalizedCommandName()));
            }
        }
        new KeysDialog(shell, words, lines).open();
    }

    private static String written(String sequence) {
        try {
            return KeySequence.getInstance(sequence).format();
        } catch (ParseException odd) {
            return sequence;
        }
    }
}
