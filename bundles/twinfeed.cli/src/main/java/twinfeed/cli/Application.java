// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Locale;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.jspecify.annotations.Nullable;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.framework.ServiceReference;
import twinfeed.usecase.TwinfeedService;

/** The headless application of the product. */
public final class Application implements IApplication {
    @Override
    public Object start(IApplicationContext context) {
        // Its own words are English whatever the system speaks; so are the messages of the files that it reads.
        Locale.setDefault(Locale.Category.DISPLAY, Locale.ENGLISH);
        PrintStream out = utf8(FileDescriptor.out);
        PrintStream err = utf8(FileDescriptor.err);
        Object arguments = context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        int status = run(arguments instanceof String[] words ? words : new String[0], out, err);
        out.flush();
        err.flush();
        return status;
    }

    private static int run(String[] arguments, PrintStream out, PrintStream err) {
        BundleContext bundles = FrameworkUtil.getBundle(Application.class).getBundleContext();
        @Nullable ServiceReference<TwinfeedService> reference = bundles.getServiceReference(TwinfeedService.class);
        if (reference == null) {
            err.println("internal fault: the use cases did not start");
            return Verbs.FAULT;
        }
        return new Verbs(bundles.getService(reference), LocalDate.now(ZoneId.systemDefault()), out, err).run(arguments);
    }

    /** The real streams: whatever the framework logs to System.out stays out of the answer. */
    private static PrintStream utf8(FileDescriptor descriptor) {
        OutputStream stream = new FileOutputStream(descriptor);
        return new PrintStream(new java.io.BufferedOutputStream(stream, 1 << 14), false, StandardCharsets.UTF_8);
    }

    @Override
    public void stop() {
        // A verb runs to its end; there is nothing to stop.
    }
}
