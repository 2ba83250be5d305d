// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop;

import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.eclipse.core.runtime.Platform;
import org.eclipse.osgi.service.datalocation.Location;
import org.jspecify.annotations.Nullable;

/**
 * The demonstration files that come with the program: in the folder that the property {@code twinfeed.demo} names, else in
 * {@code demo} of the installation.
 *
 * @param folder the folder; absent if it is not there
 */
public record DemoFolder(Optional<Path> folder) {
    /** Property that names the folder. */
    public static final String PROPERTY = "twinfeed.demo";

    /** The job that is offered first. */
    public static final String FIRST_JOB = "alder-beck.job";

    /** The price book that is used until another one is chosen. */
    public static final String BOOK = "prices.csv";

    /** The heaters that new jobs begin with. */
    public static final String CATALOGUE = "heaters.catalogue";

    /** The folder of this installation. */
    public static DemoFolder find() {
        String named = System.getProperty(PROPERTY);
        Optional<Path> folder = named == null || named.isBlank() ? installed() : Optional.of(Path.of(named));
        return new DemoFolder(folder.filter(Files::isDirectory));
    }

    private static Optional<Path> installed() {
        @Nullable Location installation = Platform.getInstallLocation();
        @Nullable URL url = installation == null ? null : installation.getURL();
        if (url == null || !"file".equals(url.getProtocol())) {
            return Optional.empty();
        }
        try {
            // The framework gives its places as URLs in which spaces may stand unescaped.
            return Optional.of(Path.of(new java.net.URI(url.toString().replace(" ", "%20")))
                    .resolve("demo"));
        } catch (URISyntaxException | IllegalArgumentException odd) {
            return Optional.empty();
        }
    }

    /** The job that is offered first. */
    public Optional<Path> job() {
        return file(FIRST_JOB);
    }

    /** The price book that is used until another one is chosen. */
    public Optional<Path> book() {
        return file(BOOK);
    }

    /** The heaters that new jobs begin with. */
    public Optional<Path> catalogue() {
        return file(CATALOGUE);
    }

    private Optional<Path> file(String name) {
        return folder.map(each -> each.resolve(name)).filter(Files::isRegularFile);
    }
}
