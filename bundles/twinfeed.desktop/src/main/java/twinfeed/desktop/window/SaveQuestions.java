// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.e4.ui.workbench.modeling.ISaveHandler;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.session.Editor;
import twinfeed.desktop.text.Words;

/** Asks whether a changed job or list is to be saved before it is closed. A save that could not be done keeps it open. */
public final class SaveQuestions implements ISaveHandler {
    private final Words words;
    private final Shell shell;

    /** Made once, by {@link Startup}. */
    @Inject
    public SaveQuestions(Words words, @Named(IServiceConstants.ACTIVE_SHELL) Shell shell) {
        this.words = words;
        this.shell = shell;
    }

    @Override
    public boolean save(MPart part, boolean confirm) {
        if (!(part.getObject() instanceof Editor editor)) {
            return true;
        }
        return switch (confirm ? promptToSave(part) : Save.YES) {
            case YES -> editor.save();
            case NO -> true;
            case CANCEL -> false;
        };
    }

    @Override
    public boolean saveParts(Collection<MPart> parts, boolean confirm) {
        for (MPart part : List.copyOf(parts)) {
            if (!save(part, confirm)) {
                return false;
            }
        }
        return true;
    }

    @Override
    public Save promptToSave(MPart part) {
        String[] answers = {words.get("close.save"), words.get("close.discard"), words.get("close.stay")};
        String question = words.format("close.question", Map.of("job", part.getLabel()));
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, words.get("application"), question, 0, answers);
        return answer == 0 ? Save.YES : answer == 1 ? Save.NO : Save.CANCEL;
    }

    @Override
    public Save[] promptToSave(Collection<MPart> parts) {
        return parts.stream().map(this::promptToSave).toArray(Save[]::new);
    }
}
