// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/** What a check is about. Only the deciding ones can rule an option out. */
public enum FindingClass {
    /** People can be hurt. */
    SAFETY(true),
    /** A rule asks for it. */
    COMPLIANCE(true),
    /** The maker's instructions ask for it, the least flow and pressure included. */
    INSTRUCTIONS(true),
    /** Comfort. */
    PERFORMANCE(false),
    /** Worth knowing. */
    ADVICE(false);

    private final boolean deciding;

    FindingClass(boolean deciding) {
        this.deciding = deciding;
    }

    /** Whether a failure of such a check rules an option out. */
    public boolean deciding() {
        return deciding;
    }
}
