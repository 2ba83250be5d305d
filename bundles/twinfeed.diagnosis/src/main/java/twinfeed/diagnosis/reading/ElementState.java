// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.reading;

import org.jspecify.annotations.Nullable;

/**
 * One element, judged.
 *
 * @param name which one
 * @param readingOhm what the meter read, ohm; absent where it showed no continuity
 * @param band where a sound one lies; absent where the heater's data do not say
 */
public record ElementState(String name, @Nullable Double readingOhm, @Nullable ResistanceBand band) {
    /** Whether it is open. */
    public boolean open() {
        return readingOhm == null;
    }

    /** Whether it is open or outside its band. */
    public boolean faulty() {
        return readingOhm == null || (band != null && !band.holds(readingOhm));
    }

    /** Whether it is known to be sound. */
    public boolean sound() {
        return readingOhm != null && band != null && band.holds(readingOhm);
    }
}
