// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;

/** Saves a job, a price book or a catalogue. Always possible while one is shown: what is typed and not taken yet counts too. */
public final class SaveHandler extends EditorHandler {
    @Execute
    void save(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part) {
        ActiveJob.editor(part).ifPresent(editor -> editor.save());
    }
}
