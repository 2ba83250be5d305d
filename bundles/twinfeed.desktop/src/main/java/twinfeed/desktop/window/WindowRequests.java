// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.function.Consumer;
import org.eclipse.core.runtime.ILog;
import org.eclipse.swt.widgets.Shell;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.InvalidSyntaxException;
import org.osgi.framework.ServiceReference;

/** Does what later starts of the program ask this window for: it comes to the front, and opens the jobs that they name. */
public final class WindowRequests {
    /** The launcher's service; nobody else has a queue with this property. */
    private static final String FILTER = "(twinfeed.requests=window)";

    private final Shell shell;
    private final Consumer<Path> open;

    /**
     * For a window.
     *
     * @param open opens a job, in the window's thread
     */
    public WindowRequests(Shell shell, Consumer<Path> open) {
        this.shell = shell;
        this.open = open;
    }

    /** Waits for requests of the launcher from now on, if it was started by one. */
    void listen() {
        BundleContext bundles = FrameworkUtil.getBundle(WindowRequests.class).getBundleContext();
        try {
            Collection<ServiceReference<BlockingQueue>> found =
                    bundles.getServiceReferences(BlockingQueue.class, FILTER);
            found.stream().findFirst().ifPresent(each -> listen(bundles.getService(each)));
        } catch (InvalidSyntaxException neverSo) {
            throw new IllegalStateException(neverSo);
        }
    }

    /**
     * Waits for requests, each a list of file names, until the window is closed.
     *
     * @param requests where they come from
     */
    public void listen(BlockingQueue<?> requests) {
        Thread thread = new Thread(
                () -> {
                    try {
                        while (true) {
                            Object request = requests.take();
                            new DisplayWork(shell.getDisplay()).execute(() -> answer(request));
                        }
                    } catch (InterruptedException | org.eclipse.swt.SWTException closed) {
                        Thread.currentThread().interrupt();
                    }
                },
                "requests of other starts");
        thread.setDaemon(true);
        thread.start();
    }

    private void answer(Object request) {
        if (shell.isDisposed()) {
            return;
        }
        shell.setMinimized(false);
        shell.setVisible(true);
        shell.forceActive();
        files(request).forEach(open);
    }

    private static List<Path> files(Object request) {
        List<Path> files = new ArrayList<>();
        if (request instanceof List<?> names) {
            for (Object name : names) {
                try {
                    files.add(Path.of(String.valueOf(name)));
                } catch (InvalidPathException notOfThisSystem) {
                    ILog.of(WindowRequests.class).warn("no file: " + name, notOfThisSystem);
                }
            }
        }
        return files;
    }
}
