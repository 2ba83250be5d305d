// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The program's own version, which the build writes into a resource: it stands in the root pom alone. */
final class ProgramVersion {
    private static final String RESOURCE = "version.properties";

    private ProgramVersion() {}

    /**
     * The version as outputs name it, like 1.2.3.
     *
     * @throws IllegalStateException if the program was built without the resource
     */
    static String read() {
        Properties properties = new Properties();
        try (InputStream in = ProgramVersion.class.getResourceAsStream(RESOURCE)) {
            if (in == null) {
                throw new IllegalStateException("the program was built without " + RESOURCE);
            }
            properties.load(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties.getProperty("version", "");
    }
}
