// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.handler;

import org.eclipse.e4.core.di.annotations.Execute;
import twinfeed.desktop.window.JobParts;

/** Shows the quotes that the office has issued. */
public final class IssuedQuotesHandler {
    @Execute
    void show(JobParts parts) {
        parts.showIssued();
    }
}
