// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.completion;

import org.jspecify.annotations.Nullable;

/**
 * A reading that is taken when the work is finished, judged; or a check of safety that the finished house fails.
 *
 * @param key name of its field in the job's completion; of a check its key, for example {@code circuit.rcd}
 * @param title what is measured
 * @param value what was read; empty if it was not entered
 * @param expected what it should be; empty if nobody can tell
 * @param sound whether it is as it should be; absent if it was not entered or cannot be judged
 * @param safety whether a wrong value makes the unit unsafe to use
 * @param needed whether the work is not complete without it
 */
public record CompletionReading(
        String key,
        String title,
        String value,
        String expected,
        @Nullable Boolean sound,
        boolean safety,
        boolean needed) {
    /** Whether it was entered. */
    public boolean entered() {
        return !value.isEmpty();
    }

    /** Whether it is wrong. */
    public boolean wrong() {
        return Boolean.FALSE.equals(sound);
    }
}
