// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.e4.ui.workbench.modeling.EPartService;

/** Closes the job or list that is shown, after asking where it was changed. */
public final class CloseHandler extends EditorHandler {
    @Execute
    void close(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part, EPartService service) {
        ActiveJob.editor(part).ifPresent(editor -> editor.commit());
        if (part != null && service.savePart(part, true)) {
            service.hidePart(part, true);
        }
    }
}
