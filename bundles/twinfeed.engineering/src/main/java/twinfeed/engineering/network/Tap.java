// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.network;

import java.util.List;
import twinfeed.engineering.pipe.Outlet;
import twinfeed.engineering.pipe.PipeSegment;

/**
 * An open tap on the pipework: its branch from the tee and its outlet.
 *
 * @param branch segments from the tee to the outlet, in order
 * @param outlet the outlet
 */
public record Tap(List<PipeSegment> branch, Outlet outlet) {
    /** Copies the list. */
    public Tap {
        branch = List.copyOf(branch);
    }
}
