// SPDX-License-Identifier: EPL-2.0
package twinfeed.assembly;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Makes a product of each folder that the build materialised: {@code PRODUCTS/OS/WS/ARCH}.
 *
 * <p>Signatures are taken off the copied jars, for the Java machine archives no class of a signed jar; the list of bundles of the
 * command line is written; the launcher, the start scripts, completions and manual page, the demo, the JSON schemas, the notices with all licence texts, the list of
 * components and the source are added; what serves an installer goes.
 */
public final class Assembly {
    private static final int PRODUCT_DEPTH = 3;

    private final Path root;
    private final Path product;

    private final String version;

    private Assembly(Path root, Path product, String version) {
        this.root = root;
        this.product = product;
        this.version = version;
    }

    /**
     * Finishes every product below a folder.
     *
     * @param arguments the folder of the products, the root of the project, the launcher's jar, the version of the program,
     *     then the names of the features that the command line needs
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String[] arguments) throws IOException {
        Path products = Path.of(arguments[0]);
        Path root = Path.of(arguments[1]);
        Path launcher = Path.of(arguments[2]);
        List<String> features = List.of(arguments).subList(4, arguments.length);
        for (Path product : productFolders(products)) {
            new Assembly(root, product, arguments[3])
                    .finish(launcher, FeatureFile.bundles(root.resolve("features"), features));
        }
    }

    private static List<Path> productFolders(Path products) throws IOException {
        List<Path> folders = new ArrayList<>();
        try (Stream<Path> found = Files.find(products, PRODUCT_DEPTH, (path, kind) -> kind.isDirectory())) {
            found.filter(path -> products.relativize(path).getNameCount() == PRODUCT_DEPTH)
                    .sorted()
                    .forEach(folders::add);
        }
        if (folders.isEmpty()) {
            throw new IOException("no product in " + products);
        }
        return folders;
    }

    /** Without a native launcher an application folder of macOS has no purpose: its content comes to the top, as elsewhere. */
    private void unfoldApplication() throws IOException {
        Path application = product.resolve("Eclipse.app");
        Path content = application.resolve("Contents/Eclipse");
        if (Files.isDirectory(content)) {
            Folders.copy(content, product);
            Folders.delete(application);
        }
    }

    private void finish(Path launcher, Set<String> headless) throws IOException {
        unfoldApplication();
        Path plugins = product.resolve("plugins");
        for (Path jar : Folders.files(plugins)) {
            Jars.unsign(jar);
        }
        Configuration configuration =
                Configuration.read(product.resolve("configuration").resolve("config.ini"));
        configuration.desktop().write(product.resolve("configuration").resolve("config.ini"));
        configuration
                .headless(headless, root.resolve("releng/product/headless.ini"))
                .write(product.resolve("configuration").resolve("headless.ini"));
        Jars.withClassPath(
                launcher, product.resolve("twinfeed.jar"), "plugins/" + Folders.only(plugins, "org.eclipse.osgi_"));
        addFiles();
        Folders.delete(product.resolve("p2"));
        Files.deleteIfExists(product.resolve("artifacts.xml"));
        // Last, since it is computed from all the rest.
        Files.writeString(product.resolve("configuration").resolve("build"), Folders.fingerprint(product) + "\n");
    }

    private void addFiles() throws IOException {
        Path files = root.resolve("releng/product/files");
        String system = product.resolve("../..").normalize().getFileName().toString();
        Folders.copy(files.resolve("all"), product);
        Folders.copy(files.resolve(system.equals("win32") ? "windows" : "unix"), product);
        Folders.copy(root.resolve("demo"), product.resolve("demo"));
        Folders.copy(
                root.resolve("bundles/twinfeed.cli/src/main/resources/twinfeed/cli/schema"),
                product.resolve("schemas"));
        Files.copy(root.resolve("releng/NOTICES.md"), product.resolve("NOTICES.md"));
        Files.copy(root.resolve("LICENSE"), product.resolve("LICENSE"));
        Path plugins = product.resolve("plugins");
        new Licences(root.resolve("releng/licences"), product.resolve("licences")).collect(plugins);
        Files.writeString(
                product.resolve("components.cdx.json"),
                Components.list(root.resolve("releng/NOTICES.md"), plugins, version));
        String name = "twinfeed-" + version + "-source";
        SourceArchive.write(root, product.resolve("source").resolve(name + ".zip"), name);
    }
}
