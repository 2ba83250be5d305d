// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.pressure.survey;

import java.util.List;

/**
 * How the outlet of a tap was fitted to the flow that it gives when it is open alone, for its workings.
 *
 * @param feed the supply and the pipes from the gauge to the tap's tee, as surveyed
 * @param branch the pipes of its branch, as surveyed
 * @param flowM3PerS the flow, m3/s
 * @param flowOrigin path of the reading of that flow
 */
public record TapFit(Feed feed, List<NamedPipe> branch, double flowM3PerS, String flowOrigin) {
    public TapFit {
        branch = List.copyOf(branch);
    }
}
