// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;

/** Takes back what was typed last, or else the last edit. */
public final class UndoHandler extends EditorHandler {
    @Execute
    void undo(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part) {
        ActiveJob.editor(part).ifPresent(editor -> editor.undo());
    }
}
