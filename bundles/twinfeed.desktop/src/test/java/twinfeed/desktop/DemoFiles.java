// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import twinfeed.usecase.TwinfeedService;

/** Copies of the demonstration's files, and the use cases with the calculators of the class path. */
public final class DemoFiles {
    private DemoFiles() {}

    /** The use cases. */
    public static TwinfeedService service() {
        return TwinfeedService.onClassPath();
    }

    /** Copies the demonstration's files into a folder. */
    public static void copyInto(Path folder) throws IOException {
        Path demo = Path.of(System.getProperty("twinfeed.root")).resolve("demo");
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }
}
