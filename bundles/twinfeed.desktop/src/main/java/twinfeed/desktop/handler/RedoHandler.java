// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;

/** Makes the edit that was taken back again. */
public final class RedoHandler {
    @CanExecute
    boolean possible(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part) {
        return ActiveJob.editor(part).filter(editor -> editor.canRedo()).isPresent();
    }

    @Execute
    void redo(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part) {
        ActiveJob.editor(part).ifPresent(editor -> editor.redo());
    }
}
