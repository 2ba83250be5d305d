// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The demonstration's files. */
public final class Demo {
    /** Their folder. */
    public static final Path FOLDER = folder();

    private Demo() {}

    /**
     * Copies a job with its catalogue, to be changed.
     *
     * @param name of its file
     * @param to the folder that takes both
     * @return the copy
     */
    public static Path copyJob(String name, Path to) throws IOException {
        Files.copy(FOLDER.resolve("heaters.catalogue"), to.resolve("heaters.catalogue"));
        return Files.copy(FOLDER.resolve(name), to.resolve(name));
    }

    private static Path folder() {
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isRegularFile(folder.resolve("demo/prices.csv"))) {
            Path above = folder.getParent();
            if (above == null) {
                throw new IllegalStateException("no demo above " + Path.of("").toAbsolutePath());
            }
            folder = above;
        }
        return folder.resolve("demo");
    }
}
