// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import java.util.concurrent.Executor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.SWTException;
import org.eclipse.swt.widgets.Display;

/**
 * Work for the user interface's thread; forgotten if the window is gone by then.
 *
 * @param display the display
 */
public record DisplayWork(Display display) implements Executor {
    @Override
    public void execute(Runnable work) {
        try {
            display.asyncExec(() -> {
                if (!display.isDisposed()) {
                    work.run();
                }
            });
        } catch (SWTException gone) {
            if (gone.code != SWT.ERROR_DEVICE_DISPOSED) {
                throw gone;
            }
        }
    }
}
