// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.text.Words;
import twinfeed.document.shape.Tone;

/** Goes to the next reading that a check waits for. */
public final class NextNeededHandler extends JobHandler {
    @Execute
    void go(@Optional @Named(IServiceConstants.ACTIVE_PART) MPart part, Words words) {
        ActiveJob.of(part).filter(job -> !job.survey().nextNeeded()).ifPresent(job -> say(job, words));
    }

    private static void say(JobPart job, Words words) {
        job.say(Tone.GOOD, words.get("needed.none"));
    }
}
