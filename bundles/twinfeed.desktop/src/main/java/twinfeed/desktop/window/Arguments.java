// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.window;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the start was told: {@code -job FILE} as often as there are jobs, or the property {@code twinfeed.job}.
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

    /** The jobs to be opened at once. */
    List<Path> jobs() {
        List<Path> jobs = new ArrayList<>();
        for (int i = 0; i + 1 < all.size(); i++) {
            if (all.get(i).equals(JOB)) {
                path(all.get(i + 1)).ifPresent(jobs::add);
            }
        }
        if (jobs.isEmpty()) {
            path(System.getProperty(PROPERTY, "")).ifPresent(jobs::add);
        }
        return jobs;
    }

    private static Optional<Path> path(String named) {
        try {
            return named.isBlank() ? Optional.empty() : Optional.of(Path.of(named));
        } catch (InvalidPathException notOfThisSystem) {
            return Optional.empty();
        }
    }
}
