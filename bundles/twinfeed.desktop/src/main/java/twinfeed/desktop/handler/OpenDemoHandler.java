// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import org.eclipse.e4.core.di.annotations.Execute;
import twinfeed.desktop.window.JobParts;

/** Opens the demonstration job. */
public final class OpenDemoHandler {
    @Execute
    void open(JobParts parts) {
        parts.openDemo();
    }
}
