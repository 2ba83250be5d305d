// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator.engine;

import java.util.List;
import twinfeed.calculator.Finding;
import twinfeed.calculator.Outcome;

/** What follows from the outcomes of an option's checks. */
public enum Verdict {
    /** Every deciding check passes or does not apply. */
    SUITS("suits"),
    /** It does after work that is named. */
    SUITS_WITH_WORK("suitsWithWork"),
    /** A deciding check fails and no known work mends it. */
    DOES_NOT_SUIT("doesNotSuit"),
    /** No deciding check fails, but one cannot be answered with certainty. */
    CANNOT_TELL("cannotTell");

    private final String key;

    Verdict(String key) {
        this.key = key;
    }

    /** Its key in message bundles and JSON. */
    public String key() {
        return key;
    }

    /**
     * The verdict from findings alone, without any work. A failure weighs more than a doubt: a unit that fails one check does
     * not suit, whatever else is unknown. Too close to call counts as cannot tell, and so does a heater of which no deciding
     * question was asked, because no calculator that asks one is there.
     */
    public static Verdict of(List<Finding> findings) {
        boolean doubt =
                findings.stream().noneMatch(finding -> finding.check().kind().deciding());
        for (Finding finding : findings) {
            if (finding.check().kind().deciding()) {
                if (finding.outcome() == Outcome.FAILS) {
                    return DOES_NOT_SUIT;
                }
                doubt |= finding.outcome() == Outcome.CANNOT_TELL || finding.outcome() == Outcome.TOO_CLOSE;
            }
        }
        return doubt ? CANNOT_TELL : SUITS;
    }
}
