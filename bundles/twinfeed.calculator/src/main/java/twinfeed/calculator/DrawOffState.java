// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import java.util.List;

/**
 * Which taps on the shared pipes are open.
 *
 * @param open how many, in the order of the survey; 0 means that all are shut
 * @param names their names
 */
public record DrawOffState(int open, List<String> names) {
    public DrawOffState {
        names = List.copyOf(names);
    }
}
