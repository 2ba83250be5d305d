// SPDX-License-Identifier: EPL-2.0
package twinfeed.usecase.quote;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDateTime;

/**
 * A visit that was agreed when a quote was accepted.
 *
 * @param begin when it begins, by the clock at the site
 * @param length how long it is thought to take; more than 0
 * @param calendar the calendar's entry to write, *.ics
 */
public record Visit(LocalDateTime begin, Duration length, Path calendar) {
    public Visit {
        if (length.isZero() || length.isNegative()) {
            throw new IllegalArgumentException("a visit takes more than no time, not " + length);
        }
    }
}
