// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import org.eclipse.e4.core.di.annotations.Execute;
import org.eclipse.e4.ui.workbench.IWorkbench;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.window.JobParts;

/** Ends the program, after asking where a job was changed. */
public final class QuitHandler {
    @Execute
    void quit(IWorkbench workbench, JobParts parts, EPartService service) {
        parts.parts().forEach(part -> ((JobPart) part.getObject()).survey().commit());
        if (service.saveAll(true)) {
            workbench.close();
        }
    }
}
