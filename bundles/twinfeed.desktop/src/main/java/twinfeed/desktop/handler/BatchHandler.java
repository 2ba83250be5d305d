// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import org.eclipse.e4.core.di.annotations.Execute;
import twinfeed.desktop.window.JobParts;

/** Shows the page for a list of dwellings. */
public final class BatchHandler {
    @Execute
    void show(JobParts parts) {
        parts.showBatch();
    }
}
