// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import java.nio.file.Path;
import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.model.application.ui.menu.MMenuItem;
import twinfeed.desktop.window.JobParts;

/** Opens a recent job. */
public final class OpenRecentHandler {
    /** Key of the job's file in the data of its menu item. */
    static final String FILE = "twinfeed.file";

    @Execute
    void open(MMenuItem item, JobParts parts) {
        if (item.getTransientData().get(FILE) instanceof Path file) {
            parts.open(file);
        }
    }
}
