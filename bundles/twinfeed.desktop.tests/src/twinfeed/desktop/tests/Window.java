// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.eclipse.e4.core.contexts.IEclipseContext;
import org.eclipse.e4.ui.internal.workbench.E4Workbench;
import org.eclipse.e4.ui.internal.workbench.swt.E4Application;
import org.eclipse.e4.ui.model.application.ui.basic.MPart;
import org.eclipse.e4.ui.workbench.modeling.EPartService;
import org.eclipse.equinox.app.IApplicationContext;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.osgi.framework.Bundle;
import twinfeed.desktop.Settings;
import twinfeed.desktop.part.JobPart;
import twinfeed.desktop.window.JobParts;

/**
 * The whole application with its window, started as the product starts it, in a thread of its own. The platform's test harness
 * is not used: it would bring the older workbench, with which the application's keys stop working.
 */
final class Window implements ExtensionContext.Store.CloseableResource {
    private final CountDownLatch started = new CountDownLatch(1);
    private final Thread thread;
    private volatile Display display;
    private volatile E4Workbench workbench;
    private volatile Throwable failure;

    private final Path shipped;
    private final Path demo;

    /** Starts with arguments as on the command line, and with demonstration files of its own. */
    Window(String... arguments) throws InterruptedException, IOException {
        shipped = Files.createTempDirectory("twinfeed-shipped");
        Offices.demoInto(shipped);
        Offices.onlyOneCandidate(shipped);
        demo = Files.createTempDirectory("twinfeed-demo");
        freshDemo();
        System.setProperty("twinfeed.demo", demo.toString());
        forgetEarlierRuns();
        thread = new Thread(() -> live(arguments), "window");
        thread.setDaemon(true);
        thread.start();
        if (!started.await(120, TimeUnit.SECONDS) || failure != null) {
            throw new IllegalStateException("the window did not start", failure);
        }
    }

    /**
     * What an earlier test saved there is gone: each finds the demonstration as it is shipped, with one candidate. Files that are so
     * already are left alone, for the window that has just started may be reading them.
     */
    private void freshDemo() throws IOException {
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                if (!Files.exists(shipped.resolve(file.getFileName()))) {
                    Files.delete(file);
                }
            }
        }
        try (Stream<Path> files = Files.list(shipped)) {
            for (Path file : files.toList()) {
                Path copy = demo.resolve(file.getFileName());
                if (!Files.exists(copy) || Files.mismatch(file, copy) >= 0) {
                    Files.copy(file, copy, StandardCopyOption.REPLACE_EXISTING);
                }
            }
        }
    }

    /** Settings of a run that was stopped half-way would be found by the next. */
    private static void forgetEarlierRuns() throws IOException {
        Path home = Path.of(System.getProperty("twinfeed.home"));
        if (Files.exists(home)) {
            try (Stream<Path> files = Files.walk(home)) {
                for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(file);
                }
            }
        }
    }

    private void live(String... arguments) {
        try {
            display = new Display();
            E4Application application = new E4Application();
            workbench = application.createE4Workbench(new Start(arguments), display);
            display.asyncExec(started::countDown);
            workbench.createAndRunUI(workbench.getApplication());
        } catch (Throwable any) {
            failure = any;
            started.countDown();
        } finally {
            // Whoever still waits for this thread would wait for ever.
            if (display != null && !display.isDisposed()) {
                display.dispose();
            }
        }
    }

    /** The one window of all tests, for the display can be had once only. It closes when all tests are over. */
    static final class Shared implements BeforeAllCallback {
        private static Window window;

        @Override
        public void beforeAll(ExtensionContext test) {
            window = test.getRoot()
                    .getStore(ExtensionContext.Namespace.GLOBAL)
                    .getOrComputeIfAbsent(Window.class, each -> start(), Window.class);
            window.fresh();
        }

        private static Window start() {
            try {
                return new Window();
            } catch (InterruptedException | IOException failed) {
                throw new IllegalStateException(failed);
            }
        }

        static Window get() {
            return window;
        }
    }

    /** As after the start: no job is open, none was, and nothing was saved. */
    private void fresh() {
        ui().run(() -> {
            EPartService service = partService();
            for (MPart part : service.getParts().stream().toList()) {
                if (!part.getElementId().equals("twinfeed.desktop.start")) {
                    part.setDirty(false);
                    service.hidePart(part, true);
                }
            }
            Settings settings = context().get(Settings.class);
            settings.recent().forEach(settings::forget);
            service.showPart("twinfeed.desktop.start", EPartService.PartState.ACTIVATE);
            if (!parts().parts().isEmpty()) {
                throw new IllegalStateException("a job is still open");
            }
        });
        try {
            freshDemo();
        } catch (IOException unwritable) {
            throw new java.io.UncheckedIOException(unwritable);
        }
    }

    /** The service of the window's parts, whether or not the window is active: on a screen without a window manager nothing makes it so again. */
    EPartService partService() {
        return workbench.getApplication().getChildren().get(0).getContext().get(EPartService.class);
    }

    /** The demonstration files. */
    Path demo() {
        return demo;
    }

    Ui ui() {
        return new Ui(display);
    }

    /** The open jobs. */
    JobParts parts() {
        return context().get(JobParts.class);
    }

    /** The job that was opened first. */
    JobPart job() {
        return (JobPart) parts().parts().get(0).getObject();
    }

    /** Opens the demonstration's job out of a folder. */
    void open(Path folder) throws InterruptedException {
        ui().run(() -> parts().open(folder.resolve("alder-beck.job")));
        ui().await("the job is open", () -> !parts().parts().isEmpty());
    }

    /**
     * Waits until a page for heaters or prices shows a file. When it comes to be seen it opens the one of the settings, which an
     * earlier test may have chosen; what that one has put on the page is gone when this one is there.
     */
    void awaitFile(String page, Path file) throws InterruptedException {
        ui().await("the file is open", () -> file.toString()
                .equals(partService().findPart(page).getTooltip()));
    }

    /** Waits until everything that follows from the job is there. */
    void settled() throws InterruptedException {
        ui().await("everything is worked out", () -> job().session().current());
    }

    /** Gives up what was not saved, so that nobody is asked at the end. */
    void giveUp() {
        ui().run(() -> parts().parts().forEach(part -> part.setDirty(false)));
    }

    /** The context of the application. */
    IEclipseContext context() {
        return workbench.getContext();
    }

    @Override
    public void close() throws InterruptedException {
        if (!display.isDisposed()) {
            display.asyncExec(workbench::close);
        }
        thread.join(30_000);
        if (thread.isAlive()) {
            throw new IllegalStateException("the window does not close");
        }
    }

    /** How the framework describes a start of the product. */
    private record Start(String... arguments) implements IApplicationContext {
        private static final Map<String, String> PRODUCT = Map.of(
                "appName", "Twinfeed",
                "applicationXMI", "twinfeed.desktop/Application.e4xmi",
                "clearPersistedState", "true",
                "persistState", "false");

        @Override
        public Map<?, ?> getArguments() {
            return Map.of(APPLICATION_ARGS, arguments);
        }

        @Override
        public void applicationRunning() {
            // nobody waits for it
        }

        @Override
        public String getBrandingApplication() {
            return "org.eclipse.e4.ui.workbench.swt.E4Application";
        }

        @Override
        public String getBrandingName() {
            return "Twinfeed";
        }

        @Override
        public String getBrandingDescription() {
            return "";
        }

        @Override
        public String getBrandingId() {
            return "twinfeed.desktop.product";
        }

        @Override
        public String getBrandingProperty(String key) {
            return PRODUCT.get(key);
        }

        @Override
        public Bundle getBrandingBundle() {
            return org.osgi.framework.FrameworkUtil.getBundle(twinfeed.desktop.Settings.class);
        }

        @Override
        public void setResult(Object result, org.eclipse.equinox.app.IApplication application) {
            throw new IllegalStateException("the result is given by returning");
        }
    }
}
