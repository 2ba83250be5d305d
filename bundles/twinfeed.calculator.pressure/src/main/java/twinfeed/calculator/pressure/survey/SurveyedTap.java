// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import java.util.List;
import org.jspecify.annotations.Nullable;
import twinfeed.engineering.network.Tap;

/**
 * A tap on the pipes to the unit.
 *
 * @param name its name in the survey
 * @param flowM3PerS flow when it is open alone, m3/s
 * @param tee how many pieces of the run lie between the gauge and its tee
 * @param branch pipes of its branch
 * @param tap its hydraulics; in the house as surveyed the outlet is fitted so that it gives that flow when it is open alone, and in
 *     a changed house it is still that outlet
 * @param fit how its outlet was fitted; absent where it is given as such
 */
public record SurveyedTap(
        String name, double flowM3PerS, int tee, List<NamedPipe> branch, Tap tap, @Nullable TapFit fit) {
    /** A tap whose outlet is given as such. */
    public SurveyedTap(String name, double flowM3PerS, int tee, List<NamedPipe> branch, Tap tap) {
        this(name, flowM3PerS, tee, branch, tap, null);
    }

    public SurveyedTap {
        branch = List.copyOf(branch);
    }
}
