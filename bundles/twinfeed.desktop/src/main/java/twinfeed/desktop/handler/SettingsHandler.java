// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import org.eclipse.e4.core.di.annotations.Execute;
import twinfeed.desktop.window.JobParts;

/** Shows the page of settings. */
public final class SettingsHandler {
    @Execute
    void show(JobParts parts) {
        parts.showSettings();
    }
}
