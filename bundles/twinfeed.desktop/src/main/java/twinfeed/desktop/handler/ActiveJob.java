// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import java.util.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.jspecify.annotations.Nullable;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.session.Editor;

/** The job that is looked at. */
final class ActiveJob {
    private ActiveJob() {}

    /** What is changed in a part, if anything is. */
    static Optional<Editor> editor(@Nullable MPart part) {
        return part != null && part.getObject() instanceof Editor editor ? Optional.of(editor) : Optional.empty();
    }

    /** The job that a part shows, if it shows one. */
    static Optional<JobPart> of(@Nullable MPart part) {
        return part != null && part.getObject() instanceof JobPart job ? Optional.of(job) : Optional.empty();
    }
}
