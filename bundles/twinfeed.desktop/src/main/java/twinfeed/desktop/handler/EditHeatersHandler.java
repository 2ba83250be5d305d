// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import org.eclipse.e4.core.di.annotations.Execute;
import twinfeed.desktop.window.JobParts;

/** Shows the editor of heater catalogues. */
public final class EditHeatersHandler {
    @Execute
    void show(JobParts parts) {
        parts.showHeaters();
    }
}
