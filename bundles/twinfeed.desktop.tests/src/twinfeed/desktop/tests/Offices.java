// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.tests;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Copies of the demonstration files. */
final class Offices {
    private Offices() {}

    /** Leaves one candidate to the first demonstration job, so that the search for work has less to do. */
    static void onlyOneCandidate(Path folder) throws IOException {
        Path job = folder.resolve("alder-beck.job");
        Files.writeString(job, Files.readString(job).replaceAll("<candidates>(h95|h95s|h105)</candidates>\\s*", ""));
    }

    /** Copies the demonstration files into a folder. */
    static void demoInto(Path folder) throws IOException {
        Path demo = Path.of(System.getProperty("twinfeed.root")).resolve("demo");
        try (Stream<Path> files = Files.list(demo)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
        }
    }

    /** What was issued is read-only, which keeps some systems from removing it. */
    static void writable(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            files.forEach(file -> file.toFile().setWritable(true));
        }
    }
}
