// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase;

import java.nio.file.Files;
import java.nio.file.Path;

/** The demonstration's files. */
public final class Demo {
    /** Their folder. */
    public static final Path FOLDER = folder();

    private Demo() {}

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
