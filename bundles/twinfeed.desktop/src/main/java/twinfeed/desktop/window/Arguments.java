// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What the start was told: {@code -job FILE}, or the property {@code twinfeed.job}.
 *
 * @param all the arguments
 */
record Arguments(List<String> all) {
    /** Property that names a job. */
    static final String PROPERTY = "twinfeed.job";

    private static final String JOB = "-job";

    Arguments {
        all = List.copyOf(all);
    }

    /** The job to be opened at once. */
    Optional<Path> job() {
        int at = all.indexOf(JOB);
        String named = at >= 0 && at + 1 < all.size() ? all.get(at + 1) : System.getProperty(PROPERTY, "");
        try {
            return named.isBlank() ? Optional.empty() : Optional.of(Path.of(named));
        } catch (InvalidPathException notOfThisSystem) {
            return Optional.empty();
        }
    }
}
