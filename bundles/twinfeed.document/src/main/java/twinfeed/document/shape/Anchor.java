// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.shape;

/** Where a text stands: its place is its beginning, its middle or its end. */
public enum Anchor {
    /** It begins there. */
    START(0),
    /** Its middle is there. */
    MIDDLE(0.5),
    /** It ends there. */
    END(1);

    private final double share;

    Anchor(double share) {
        this.share = share;
    }

    /** What share of its width lies ahead of its place. */
    public double share() {
        return share;
    }
}
