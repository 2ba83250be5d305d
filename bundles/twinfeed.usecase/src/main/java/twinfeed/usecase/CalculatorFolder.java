// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.URL;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
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
import org.osgi.framework.Constants;
import org.osgi.framework.ServiceReference;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.engine.CalculatorProblem;
import twinfeed.calculator.engine.CalculatorProblem.Kind;

/**
 * Installs third parties' calculator bundles at start, from a folder: {@code calculators} in the installation, or the one that the
 * property {@code twinfeed.calculators} names. Each in its own try, so that one bad file keeps no other out; bundles whose
 * file is gone are uninstalled. Nothing has to be entered in a list. A bundle offers its calculators as services, or names their
 * classes in {@code META-INF/services}. Whatever brings no calculator is named, never passed over in silence.
 */
@Component(immediate = true, service = CalculatorFolder.class)
public final class CalculatorFolder {
    private static final Logger LOG = Logger.getLogger(CalculatorFolder.class.getName());
    private static final String PROPERTY = "twinfeed.calculators";
    private static final String SCHEME = "reference:";

    private final List<CalculatorProblem> problems = new ArrayList<>();

    /** Called by the framework. */
    @Activate
    public CalculatorFolder(BundleContext framework) {
        Path folder = folder(framework);
        if (folder != null) {
            install(framework, folder);
        }
    }

    /** What brought no calculator, and why. */
    public List<CalculatorProblem> problems() {
        return List.copyOf(problems);
    }

    private static @Nullable Path folder(BundleContext framework) {
        String named = framework.getProperty(PROPERTY);
        if (named != null) {
            return Path.of(named).toAbsolutePath().normalize();
        }
        String installation = framework.getProperty("osgi.install.area");
        return installation == null
                ? null
                : Path.of(URI.create(installation.replace(" ", "%20"))).resolve("calculators");
    }

    private void install(BundleContext framework, Path folder) {
        Set<String> wanted = new LinkedHashSet<>();
        if (framework.getProperty(PROPERTY) != null && !Files.isDirectory(folder)) {
            problems.add(new CalculatorProblem(folder.toString(), Kind.NO_FOLDER, ""));
        }
        for (Path jar : jars(folder)) {
            wanted.add(SCHEME + jar.toUri());
        }
        String prefix = SCHEME + folder.toUri();
        for (Bundle bundle : framework.getBundles()) {
            if (bundle.getLocation().startsWith(prefix) && !wanted.contains(bundle.getLocation())) {
                uninstall(bundle);
            }
        }
        wanted.forEach(location -> start(framework, location));
    }

    private void uninstall(Bundle bundle) {
        try {
            bundle.uninstall();
        } catch (BundleException | IllegalStateException e) {
            tell(bundle.getLocation(), Kind.NOT_STARTED, e);
        }
    }

    private void start(BundleContext framework, String location) {
        try {
            Bundle bundle = framework.installBundle(location);
            if (bundle.getSymbolicName() == null) {
                problems.add(new CalculatorProblem(file(location), Kind.NO_BUNDLE, ""));
                bundle.uninstall();
                return;
            }
            bundle.start();
            offer(framework, bundle);
        } catch (BundleException | RuntimeException | LinkageError e) {
            tell(location, Kind.NOT_STARTED, e);
        }
    }

    /** Looks whether a started bundle has registered its calculators; where it has not, those that it lists are registered for it. */
    private void offer(BundleContext framework, Bundle bundle) throws BundleException {
        List<ServiceReference<?>> own = new ArrayList<>();
        if (bundle.getRegisteredServices() != null) {
            for (ServiceReference<?> each : bundle.getRegisteredServices()) {
                if (Arrays.asList((String[]) each.getProperty(Constants.OBJECTCLASS))
                        .contains(Calculator.class.getName())) {
                    own.add(each);
                }
            }
        }
        for (ServiceReference<?> each : own) {
            if (framework.getService(each) == null) {
                problems.add(new CalculatorProblem(
                        file(bundle.getLocation()),
                        Kind.NOT_LOADED,
                        String.valueOf(each.getProperty("component.name"))));
            }
        }
        List<String> listed = own.isEmpty() ? listed(bundle) : List.of();
        for (String name : listed) {
            register(bundle, name);
        }
        if (own.isEmpty() && listed.isEmpty()) {
            problems.add(new CalculatorProblem(file(bundle.getLocation()), Kind.NO_CALCULATOR, ""));
        }
    }

    private void register(Bundle bundle, String name) {
        try {
            Object made = bundle.loadClass(name).getConstructor().newInstance();
            bundle.getBundleContext().registerService(Calculator.class, (Calculator) made, null);
        } catch (ReflectiveOperationException | RuntimeException | LinkageError e) {
            tell(bundle.getLocation(), Kind.NOT_LOADED, e);
        }
    }

    /** The classes that a bundle lists, without comments. */
    private List<String> listed(Bundle bundle) {
        URL list = bundle.getEntry("META-INF/services/" + Calculator.class.getName());
        if (list == null) {
            return List.of();
        }
        try (InputStream stream = list.openStream()) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .map(line -> line.replaceFirst("#.*", "").strip())
                    .filter(line -> !line.isEmpty())
                    .toList();
        } catch (IOException e) {
            tell(bundle.getLocation(), Kind.NOT_LOADED, e);
            return List.of();
        }
    }

    private void tell(String location, Kind kind, Throwable thrown) {
        LOG.log(Level.FINE, "cannot use " + location, thrown);
        problems.add(new CalculatorProblem(file(location), kind, reason(thrown)));
    }

    private static String file(String location) {
        String decoded = URLDecoder.decode(location.replace("+", "%2B"), StandardCharsets.UTF_8);
        return decoded.substring(decoded.lastIndexOf('/') + 1);
    }

    /** What the innermost cause says, in one line. */
    private static String reason(Throwable thrown) {
        Throwable last = thrown;
        while (last.getCause() != null && last.getCause() != last) {
            last = last.getCause();
        }
        String text = last.getMessage() == null ? last.getClass().getSimpleName() : last.getMessage();
        return text.strip().replaceAll("\\s+", " ");
    }

    private List<Path> jars(Path folder) {
        List<Path> jars = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> found = Files.newDirectoryStream(folder)) {
                for (Path each : found) {
                    String name = String.valueOf(each.getFileName());
                    if (Files.isRegularFile(each) && name.endsWith(".jar")) {
                        jars.add(each);
                    } else if (!name.startsWith(".")) {
                        problems.add(new CalculatorProblem(name, Kind.NO_JAR, ""));
                    }
                }
            } catch (IOException | DirectoryIteratorException e) {
                tell(folder.toString(), Kind.NO_FOLDER, e);
            }
        }
        Collections.sort(jars);
        return jars;
    }
}
