// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.look;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.util.function.Consumer;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.swt.widgets.Shell;
import twinfeed.desktop.text.Words;

/** Work that takes its time, done off the window's thread while a progress is shown. */
@FunctionalInterface
public interface SlowWork {
    /**
     * Does it.
     *
     * @throws IOException if it cannot be done; its message says why
     * @throws RuntimeException likewise
     */
    void run(IProgressMonitor monitor) throws IOException;

    /**
     * Does some work and waits for it; the answer is whether it was done.
     *
     * @param refused told why it could not be done
     */
    static boolean done(Shell shell, Words words, SlowWork work, Consumer<String> refused) {
        try {
            new ProgressDialog(shell, words).run(true, false, monitor -> {
                try {
                    work.run(monitor);
                } catch (IOException | RuntimeException impossible) {
                    throw new InvocationTargetException(impossible);
                }
            });
            return true;
        } catch (InvocationTargetException impossible) {
            Throwable cause = impossible.getCause() == null ? impossible : impossible.getCause();
            refused.accept(String.valueOf(cause.getMessage()));
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
        }
        return false;
    }
}
