// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.net.URI;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jspecify.annotations.Nullable;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;

/**
 * Installs third parties' calculator bundles at start, from a folder: {@code calculators} in the installation, or the one that the
 * property {@code twinfeed.calculators} names. Each in its own try, so that one bad file keeps no other out; bundles whose
 * file is gone are uninstalled. Nothing has to be entered in a list.
 */
@Component(
        immediate = true,
        service = {})
public final class CalculatorFolder {
    private static final Logger LOG = Logger.getLogger(CalculatorFolder.class.getName());
    private static final String SCHEME = "reference:";

    /** Called by the framework. */
    @Activate
    public CalculatorFolder(BundleContext framework) {
        Path folder = folder(framework);
        if (folder != null) {
            install(framework, folder);
        }
    }

    private static @Nullable Path folder(BundleContext framework) {
        String named = framework.getProperty("twinfeed.calculators");
        if (named != null) {
            return Path.of(named).toAbsolutePath().normalize();
        }
        String installation = framework.getProperty("osgi.install.area");
        return installation == null
                ? null
                : Path.of(URI.create(installation.replace(" ", "%20"))).resolve("calculators");
    }

    private static void install(BundleContext framework, Path folder) {
        Set<String> wanted = new LinkedHashSet<>();
        for (Path jar : jars(folder)) {
            wanted.add(SCHEME + jar.toUri());
        }
        String prefix = SCHEME + folder.toUri();
        for (Bundle bundle : framework.getBundles()) {
            if (bundle.getLocation().startsWith(prefix) && !wanted.contains(bundle.getLocation())) {
                attempt("uninstall", bundle.getLocation(), bundle::uninstall);
            }
        }
        wanted.forEach(location -> attempt(
                "install", location, () -> framework.installBundle(location).start()));
    }

    private static List<Path> jars(Path folder) {
        List<Path> jars = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> found = Files.newDirectoryStream(folder, "*.jar")) {
                found.forEach(jars::add);
            } catch (IOException unreadable) {
                LOG.log(Level.WARNING, "cannot read " + folder, unreadable);
            }
        }
        Collections.sort(jars);
        return jars;
    }

    @FunctionalInterface
    private interface Action {
        void run() throws BundleException;
    }

    private static void attempt(String what, String location, Action action) {
        try {
            action.run();
        } catch (BundleException | RuntimeException | LinkageError refused) {
            LOG.log(Level.WARNING, "cannot " + what + " " + location, refused);
        }
    }
}
