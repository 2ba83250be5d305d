// SPDX-License-Identifier: EPL-2.0
package twinfeed.launcher;

import java.util.HashMap;
import java.util.Hashtable;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.BlockingQueue;
import org.eclipse.core.runtime.adaptor.EclipseStarter;
import org.jspecify.annotations.Nullable;
import org.osgi.framework.BundleContext;

/** The OSGi framework while it runs. There is one in a process, since the framework's starter is static. */
final class Framework implements AutoCloseable {
    /** Property of the service that hands the window what later starts ask for. */
    private static final String REQUESTS = "twinfeed.requests";

    private final FrameworkArea area;
    private final BundleContext context;

    /**
     * Starts it: every bundle of the list is installed and the services are up.
     *
     * @param settings of the mode
     * @param area where it keeps its state
     * @throws Exception if it does not start
     */
    Framework(Properties settings, FrameworkArea area) throws Exception {
        this.area = area;
        area.put(settings);
        Map<String, String> initial = new HashMap<>();
        for (String name : settings.stringPropertyNames()) {
            // What the command line of the Java machine sets goes before what the product sets.
            initial.put(name, System.getProperty(name, settings.getProperty(name)));
        }
        EclipseStarter.setInitialProperties(initial);
        try {
            context = EclipseStarter.startup(new String[0], null);
        } catch (Exception broken) {
            area.leave();
            throw broken;
        }
    }

    /**
     * Lets the window have what later starts of the program hand over. It looks for a queue with the property {@value #REQUESTS}.
     */
    void offer(BlockingQueue<List<String>> requests) {
        context.registerService(BlockingQueue.class, requests, new Hashtable<>(Map.of(REQUESTS, "window")));
    }

    /**
     * Runs the application on this thread.
     *
     * @param arguments are the application's alone: the framework does not look for options of its own among them
     * @return its exit status
     * @throws Exception what the application throws
     */
    int run(String[] arguments) throws Exception {
        @Nullable Object status = EclipseStarter.run(arguments);
        if (status instanceof Integer number) {
            return number;
        }
        throw new IllegalStateException(Messages.text("no.application"));
    }

    @Override
    public void close() throws Exception {
        EclipseStarter.shutdown();
        area.leave();
    }
}
