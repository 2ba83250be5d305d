// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

import org.jspecify.annotations.Nullable;

/**
 * Where a piece runs, as far as it was surveyed.
 *
 * @param lengthM its length, m; absent if it was not measured
 * @param riseM how much higher its far end lies, m, of a tap above its tee; absent if it was not measured
 * @param fittings how many fittings it has
 * @param loft whether it lies in a loft
 * @param tee of a tap: how many pipes lie ahead of its tee; of everything else 0
 */
public record PieceExtent(@Nullable Double lengthM, @Nullable Double riseM, int fittings, boolean loft, int tee) {
    /** Of what has no extent. */
    public static final PieceExtent NONE = new PieceExtent(null, null, 0, false, 0);
}
