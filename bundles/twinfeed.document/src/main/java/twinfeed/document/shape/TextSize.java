// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.shape;

/** How large the letters of a text are, as a share of those of running text. */
public enum TextSize {
    /** As running text. */
    NORMAL(1),
    /** Values and remarks on a drawing. */
    SMALL(0.86);

    private final double share;

    TextSize(double share) {
        this.share = share;
    }

    /** The share of the size of running text. */
    public double share() {
        return share;
    }
}
