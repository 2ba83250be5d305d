// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import java.nio.file.Path;
import java.util.Map;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.core.di.annotations.Optional;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.Dialogs;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.session.JobTemplates;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.window.JobParts;
import twinfeed.document.shape.Tone;

/** Keeps the house of a job as a template of the firm's own. */
public final class SaveTemplateHandler extends JobHandler {
    @Execute
    void keep(
            @Optional @Named(IServiceConstants.ACTIVE_PART) MPart part,
            @Named(IServiceConstants.ACTIVE_SHELL) Shell shell,
            JobParts parts,
            Words words) {
        ActiveJob.of(part).ifPresent(job -> keep(job, shell, parts.templates(), words));
    }

    private static void keep(JobPart job, Shell shell, JobTemplates templates, Words words) {
        job.survey().commit();
        Dialogs.text(
                        shell,
                        words,
                        words.get("template.keep"),
                        words.get("template.keep.question"),
                        JobTemplates::nameable,
                        words.get("template.name.wrong"))
                .ifPresent(name -> keep(job, name, templates, words));
    }

    private static void keep(JobPart job, String name, JobTemplates templates, Words words) {
        try {
            Path file = templates.keep(job.session().survey(), name);
            job.say(Tone.GOOD, words.format("template.kept", Map.of("file", file)));
        } catch (RuntimeException refused) {
            job.say(Tone.BAD, words.format("template.refused", Map.of("reason", String.valueOf(refused.getMessage()))));
        }
    }
}
