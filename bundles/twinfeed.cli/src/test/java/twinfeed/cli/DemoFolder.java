// SPDX-License-Identifier: EPL-2.0
package twinfeed.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A job of the demonstration with its prices and heaters, in a folder that a test may change. */
abstract class DemoFolder {
    @TempDir
    Path folder;

    Path job;
    Path book;

    @BeforeEach
    final void copyJob() throws IOException {
        job = copy("alder-beck.job");
        book = copy("prices.csv");
        copy("heaters.catalogue");
    }

    /** Copies another file of the demonstration. */
    final Path copy(String name) throws IOException {
        return Files.copy(Run.DEMO.resolve(name), folder.resolve(name));
    }
}
