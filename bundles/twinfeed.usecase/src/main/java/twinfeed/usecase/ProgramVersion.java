// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** The program's own version, which the build writes into a resource: it stands in the root pom alone. */
final class ProgramVersion {
    private static final String RESOURCE = "version.properties";
    /** Where the program runs from classes that were not built by Maven. */
    private static final String DEVELOPMENT = "development";

    private ProgramVersion() {}

    /** The version as outputs name it, like 1.2.3. */
    static String read() {
        try (InputStream in = ProgramVersion.class.getResourceAsStream(RESOURCE)) {
            return in == null ? DEVELOPMENT : of(in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The version in such a resource; {@code development} where the build has not filled it in. */
    static String of(InputStream in) throws IOException {
        Properties properties = new Properties();
        properties.load(in);
        String version = properties.getProperty("version", DEVELOPMENT);
        return version.startsWith("$") ? DEVELOPMENT : version;
    }
}
