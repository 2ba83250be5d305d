// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import org.eclipse.osgi.launch.EquinoxFactory;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.ServiceReference;
import org.osgi.framework.launch.Framework;
import twinfeed.calculator.Calculator;
import twinfeed.calculator.engine.CalculatorProblem;
import twinfeed.calculator.engine.CalculatorProblem.Kind;
import twinfeed.usecase.foreign.ShelfActivator;
import twinfeed.usecase.foreign.ShelfCalculator;

/** Jars in the folder for third parties: the good ones are used, each of the others is named. */
class CalculatorFolderTest {
    private static final String CLASS = ShelfCalculator.class.getName().replace('.', '/') + ".class";
    private static final int MAJOR_VERSION = 7;

    @TempDir
    private Path scratch = Path.of("");

    private Path folder = Path.of("");
    private Framework framework = new EquinoxFactory().newFramework(Map.of());

    @BeforeEach
    void start() throws IOException, BundleException {
        folder = Files.createDirectory(scratch.resolve("my calculators"));
        Map<String, String> settings = new HashMap<>();
        settings.put(Constants.FRAMEWORK_STORAGE, scratch.resolve("storage").toString());
        settings.put(Constants.FRAMEWORK_STORAGE_CLEAN, Constants.FRAMEWORK_STORAGE_CLEAN_ONFIRSTINIT);
        settings.put(Constants.FRAMEWORK_SYSTEMPACKAGES_EXTRA, "twinfeed.calculator,twinfeed.units.text");
        settings.put(Constants.FRAMEWORK_BUNDLE_PARENT, Constants.FRAMEWORK_BUNDLE_PARENT_FRAMEWORK);
        settings.put("osgi.parentClassloader", "app");
        settings.put("twinfeed.calculators", folder.toString());
        framework = new EquinoxFactory().newFramework(settings);
        framework.start();
    }

    @AfterEach
    void stop() throws BundleException, InterruptedException {
        framework.stop();
        framework.waitForStop(10_000);
    }

    private Map<String, Kind> problems() {
        Map<String, Kind> problems = new TreeMap<>();
        for (CalculatorProblem problem : new CalculatorFolder(framework.getBundleContext()).problems()) {
            problems.put(problem.source(), problem.kind());
            String text = problem.text(Locale.ENGLISH);
            assertTrue(text.contains(problem.source()) && !text.contains("{"), text);
        }
        return problems;
    }

    private List<Calculator> offered() throws Exception {
        BundleContext context = framework.getBundleContext();
        List<Calculator> offered = new ArrayList<>();
        for (ServiceReference<Calculator> each : context.getServiceReferences(Calculator.class, null)) {
            offered.add(context.getService(each));
        }
        return offered;
    }

    private static Manifest headers(String name, String version) {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue("Bundle-ManifestVersion", "2");
        main.putValue("Bundle-SymbolicName", name);
        main.putValue("Bundle-Version", version);
        main.putValue("Import-Package", "twinfeed.calculator,twinfeed.units.text");
        return manifest;
    }

    private static byte[] content() throws IOException {
        try (InputStream stream = ShelfCalculator.class.getResourceAsStream("/" + CLASS)) {
            if (stream == null) {
                throw new IOException(CLASS);
            }
            return stream.readAllBytes();
        }
    }

    private void jar(String file, Manifest manifest, byte[] code, boolean listed) throws IOException {
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(folder.resolve(file)), manifest)) {
            jar.putNextEntry(new ZipEntry(CLASS));
            jar.write(code);
            if (listed) {
                jar.putNextEntry(new ZipEntry("META-INF/services/" + Calculator.class.getName()));
                jar.write(("# made up\n\n" + ShelfCalculator.class.getName() + " # the only one\n")
                        .getBytes(StandardCharsets.UTF_8));
            }
        }
    }

    @Test
    void aBundleThatListsItsCalculatorNeedsNothingElse() throws Exception {
        jar("shelf+1.jar", headers("shelf", "1.0.0"), content(), true);
        assertEquals(Map.of(), problems());
        assertEquals(
                List.of("shelf"),
                offered().stream().map(each -> each.descriptor().id()).toList());
        assertTrue(offered().get(0).getClass() != ShelfCalculator.class, "the bundle's own copy of the class");
    }

    @Test
    void whateverBringsNoCalculatorIsNamedAndTheRestIsUsed() throws Exception {
        jar("shelf.jar", headers("shelf", "1.0.0"), content(), true);
        jar("no-headers.jar", new Manifest(), content(), true);
        jar("nothing.jar", headers("nothing", "1.0.0"), content(), false);
        Files.writeString(folder.resolve("broken.jar"), "no jar");
        Files.writeString(folder.resolve("readme.txt"), "no jar either");
        Files.createDirectory(folder.resolve("deeper"));
        byte[] newer = content();
        newer[MAJOR_VERSION] = 99;
        jar("newer-class.jar", headers("newer", "1.0.0"), newer, true);
        Manifest demanding = headers("demanding", "1.0.0");
        demanding
                .getMainAttributes()
                .putValue("Require-Capability", "osgi.ee;filter:=\"(&(osgi.ee=JavaSE)(version=99))\"");
        jar("newer-java.jar", demanding, content(), true);
        Manifest lonely = headers("lonely", "1.0.0");
        lonely.getMainAttributes().putValue("Import-Package", "nobody.has.this");
        jar("lonely.jar", lonely, content(), true);
        assertEquals(
                new TreeMap<>(Map.of(
                        "no-headers.jar", Kind.NO_BUNDLE,
                        "nothing.jar", Kind.NO_CALCULATOR,
                        "broken.jar", Kind.NOT_STARTED,
                        "readme.txt", Kind.NO_JAR,
                        "deeper", Kind.NO_JAR,
                        "newer-class.jar", Kind.NOT_LOADED,
                        "newer-java.jar", Kind.NOT_STARTED,
                        "lonely.jar", Kind.NOT_STARTED)),
                problems());
        assertEquals(1, offered().size());
    }

    @Test
    void anOldJarBesideTheNewOneStopsNothing() throws Exception {
        jar("shelf-1.jar", headers("shelf", "1.0.0"), content(), true);
        jar("shelf-2.jar", headers("shelf", "2.0.0"), content(), true);
        assertEquals(Map.of(), problems());
        TwinfeedService service = new TwinfeedService(offered());
        assertEquals(1, service.calculators().size());
        assertEquals(
                List.of(Kind.OLDER),
                service.problems().stream().map(CalculatorProblem::kind).toList());
    }

    @Test
    void aFolderThatIsNotThereIsNamed() throws IOException {
        Files.delete(folder);
        assertEquals(Map.of(folder.toString(), Kind.NO_FOLDER), problems());
    }

    /** A framework of which only the properties are asked. */
    private static BundleContext saying(Map<String, String> properties) {
        return (BundleContext) java.lang.reflect.Proxy.newProxyInstance(
                BundleContext.class.getClassLoader(),
                new Class<?>[] {BundleContext.class},
                (proxy, method, arguments) -> {
                    if (method.getName().equals("getProperty")) {
                        return properties.get(String.valueOf(arguments[0]));
                    }
                    return method.getName().equals("getBundles") ? new org.osgi.framework.Bundle[0] : null;
                });
    }

    @Test
    void withoutANamedFolderThatOfTheInstallationIsTakenIfThereIsOne() {
        assertEquals(List.of(), new CalculatorFolder(saying(Map.of())).problems());
        String installed = "file:" + scratch.resolve("an installation") + "/";
        assertEquals(List.of(), new CalculatorFolder(saying(Map.of("osgi.install.area", installed))).problems());
        CalculatorFolder wrong = new CalculatorFolder(
                saying(Map.of("twinfeed.calculators", scratch.resolve("nowhere").toString())));
        assertEquals(Kind.NO_FOLDER, wrong.problems().get(0).kind());
    }

    /** A jar whose bundle registers its calculator itself. */
    private void registering(String file, Manifest manifest) throws IOException {
        manifest.getMainAttributes().putValue("Bundle-Activator", ShelfActivator.class.getName());
        jarOfTheShelf(file, manifest, ShelfCalculator.class);
    }

    private void jarOfTheShelf(String file, Manifest manifest, Class<?> listed) throws IOException {
        manifest.getMainAttributes()
                .putValue("Import-Package", "twinfeed.calculator,twinfeed.units.text,org.osgi.framework");
        try (JarOutputStream jar = new JarOutputStream(Files.newOutputStream(folder.resolve(file)), manifest)) {
            for (String name :
                    List.of("ShelfCalculator", "ShelfActivator", "ShelfActivator$1", "ShelfActivator$Unmakeable")) {
                String entry = "twinfeed/usecase/foreign/" + name + ".class";
                jar.putNextEntry(new ZipEntry(entry));
                try (InputStream stream = ShelfActivator.class.getResourceAsStream("/" + entry)) {
                    jar.write(stream.readAllBytes());
                }
            }
            jar.putNextEntry(new ZipEntry("META-INF/services/" + Calculator.class.getName()));
            jar.write(listed.getName().getBytes(StandardCharsets.UTF_8));
        }
    }

    private List<CalculatorProblem> inOrder() {
        return new CalculatorFolder(framework.getBundleContext()).problems();
    }

    @Test
    void whatABundleRegistersItselfIsNotRegisteredOnceMore() throws Exception {
        registering("shelf.jar", headers("shelf", "1.0.0"));
        assertEquals(Map.of(), problems());
        assertEquals(1, offered().size());
    }

    @Test
    void aCalculatorThatItsBundleCannotMakeIsNamed() throws IOException {
        Manifest broken = headers("shelf", "1.0.0");
        broken.getMainAttributes().putValue("Shelf-Broken", "yes");
        registering("shelf.jar", broken);
        assertEquals(List.of(new CalculatorProblem("shelf.jar", Kind.NOT_LOADED, "the shelf")), inOrder());
    }

    @Test
    void aJarThatWasTakenAwayIsUninstalled() throws Exception {
        jar("gone.jar", headers("gone", "1.0.0"), content(), true);
        jar("shelf.jar", headers("shelf", "1.0.0"), content(), true);
        assertEquals(Map.of(), problems());
        assertEquals(2, offered().size());
        Files.delete(folder.resolve("gone.jar"));
        assertEquals(List.of(), inOrder());
        assertEquals(1, offered().size());
        assertEquals(
                List.of("shelf"),
                Arrays.stream(framework.getBundleContext().getBundles())
                        .filter(bundle -> bundle.getLocation().startsWith("reference:"))
                        .map(Bundle::getSymbolicName)
                        .toList());
    }

    @Test
    void aJarThatIsNoBundleDoesNotStayInTheFramework() throws IOException {
        int before = framework.getBundleContext().getBundles().length;
        jar("no-headers.jar", new Manifest(), content(), true);
        assertEquals(List.of(new CalculatorProblem("no-headers.jar", Kind.NO_BUNDLE, "")), inOrder());
        assertEquals(before, framework.getBundleContext().getBundles().length);
    }

    /** The innermost reason, in one line: what a person can act on. */
    @Test
    void theReasonIsToldAndTheJarsComeByTheirNames() throws IOException {
        byte[] newer = content();
        newer[MAJOR_VERSION] = 99;
        for (String name : List.of("m", "c", "x", "a", "k")) {
            jar(name + ".jar", headers(name, "1.0.0"), newer, true);
        }
        List<CalculatorProblem> problems = inOrder();
        assertEquals(
                List.of("a.jar", "c.jar", "k.jar", "m.jar", "x.jar"),
                problems.stream().map(CalculatorProblem::source).toList());
        for (CalculatorProblem problem : problems) {
            assertTrue(problem.detail().contains("class file version 99"), problem.detail());
            assertFalse(problem.detail().contains("\n"), problem.detail());
        }
    }

    @Test
    void theFolderOfAnInstallationMayLieBelowAFolderWithABlank() throws IOException {
        Path calculators = Files.createDirectories(scratch.resolve("an installation/calculators"));
        Files.writeString(calculators.resolve("readme.txt"), "no jar");
        Files.writeString(calculators.resolve(".hidden"), "no jar, and nobody's business");
        String installed = "file:" + scratch.resolve("an installation") + "/";
        assertEquals(
                List.of(new CalculatorProblem("readme.txt", Kind.NO_JAR, "")),
                new CalculatorFolder(saying(Map.of("osgi.install.area", installed))).problems());
    }

    @Test
    void aCalculatorThatThrowsWhenItIsMadeIsNamedWithWhatItSays() throws IOException {
        jarOfTheShelf("shelf.jar", headers("shelf", "1.0.0"), ShelfActivator.Unmakeable.class);
        assertEquals(List.of(new CalculatorProblem("shelf.jar", Kind.NOT_LOADED, "the shelf is empty")), inOrder());
    }
}
