// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import jakarta.inject.Named;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.services.IServiceConstants;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.look.FileQuestion;
import twinfeed.desktop.text.Words;
import twinfeed.desktop.window.JobParts;

/** Opens a job from its file. */
public final class OpenHandler {
    @Execute
    void open(@Named(IServiceConstants.ACTIVE_SHELL) Shell shell, JobParts parts, Words words) {
        FileQuestion.job(shell, words).open("open.title", parts.jobFolder()).ifPresent(parts::open);
    }
}
