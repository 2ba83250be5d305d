// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.CanExecute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;

/** What is possible while something that can be changed is shown: a job, a price book, a catalogue. */
abstract class EditorHandler {
    @CanExecute
    boolean possible(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part) {
        return ActiveJob.editor(part).isPresent();
    }
}
