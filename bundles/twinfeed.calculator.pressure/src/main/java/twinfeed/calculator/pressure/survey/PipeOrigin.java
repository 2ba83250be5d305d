// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import java.util.List;

/**
 * Where the figures of a pipe come from, for its workings.
 *
 * @param path path of the pipe in the survey; empty for a pipe that is in none
 * @param rise path of the reading of its rise
 * @param fittings its fittings
 */
public record PipeOrigin(String path, String rise, List<Fitting> fittings) {
    /** A pipe that is in no survey. */
    public static final PipeOrigin NONE = new PipeOrigin("", "", List.of());

    /**
     * Fittings of one kind.
     *
     * @param count how many
     * @param counted whether the survey counts them; otherwise it is one
     * @param k loss coefficient of each
     * @param origin origin of that coefficient: a reading, or a figure of the table
     */
    public record Fitting(int count, boolean counted, double k, String origin) {}

    public PipeOrigin {
        fittings = List.copyOf(fittings);
    }

    /** The origin of a figure of the pipe; empty where the pipe is in no survey. */
    public String of(String feature) {
        return path.isEmpty() ? "" : path + "." + feature;
    }

    /** The path of the count of fittings. */
    public String count(int index) {
        return of("fittings[" + (index + 1) + "].count");
    }
}
