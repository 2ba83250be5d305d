// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import org.eclipse.e4.core.di.annotations.Execute;
import twinfeed.desktop.window.JobParts;

/** Explains what each kind of file may hold. */
public final class FilesHandler {
    @Execute
    void explain(JobParts parts) {
        parts.explainFiles();
    }
}
