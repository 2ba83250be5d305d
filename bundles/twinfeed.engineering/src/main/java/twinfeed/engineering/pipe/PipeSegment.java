// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

import twinfeed.engineering.numeric.Require;

/**
 * A piece of pipe of one bore, with its fittings and its rise.
 *
 * @param lengthM length, m, zero or more (zero for a fitting alone)
 * @param boreM inside diameter, m, positive
 * @param roughnessM absolute roughness, m, zero to a twentieth of the bore, where Colebrook-White ends
 * @param k sum of the loss coefficients K of the fittings, referred to this bore, zero or more
 * @param riseM height of the far end above the near end, m, negative when the pipe falls
 */
public record PipeSegment(double lengthM, double boreM, double roughnessM, double k, double riseM) {
    /** Checks the ranges. */
    public PipeSegment {
        Require.notNegative(lengthM, "lengthM");
        Require.positive(boreM, "boreM");
        Require.within(roughnessM, 0, boreM * Pipe.LARGEST_RELATIVE_ROUGHNESS, "roughnessM");
        Require.notNegative(k, "k");
        Require.finite(riseM, "riseM");
    }
}
