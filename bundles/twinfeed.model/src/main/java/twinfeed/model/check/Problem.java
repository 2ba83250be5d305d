// SPDX-License-Identifier: EPL-2.0
package twinfeed.model.check;

import java.util.Locale;
import twinfeed.model.io.InputProblem;

/**
 * Something that cannot be right, or is unlikely to be.
 *
 * @param severity how bad it is
 * @param key what it is, the same in every language
 * @param path where it is, for example {@code survey.water.segments[rising main].bore}; see {@link ModelPath}
 * @param element what the piece is called, for example {@code rising main}; empty if it has no name
 * @param reading what is written there; empty for something that is absent
 * @param wrong what is wrong, as a clause
 * @param right what would be right, as a clause
 */
public record Problem(
        Severity severity, String key, String path, String element, String reading, String wrong, String right) {

    /** Whether it is an error. */
    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /**
     * The same as a refusal of the file that it stands in.
     *
     * @param file name of the file
     */
    public InputProblem in(String file) {
        return new InputProblem(file, 0, path, reading, wrong, right);
    }

    /** All of it in one line: {@code error: survey.unit.age "-1": this cannot be; ...}. */
    @Override
    public String toString() {
        return severity.name().toLowerCase(Locale.ROOT) + ": " + in("");
    }
}
