// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

/** The answer of a check. */
public enum Outcome {
    /** Within the limit. */
    PASSES("passes"),
    /** Beyond the limit. */
    FAILS("fails"),
    /** The tolerances of the readings are larger than the margin. */
    TOO_CLOSE("tooClose"),
    /** A reading is missing. */
    CANNOT_TELL("cannotTell"),
    /** The question does not arise. */
    NOT_APPLICABLE("notApplicable");

    private final String key;

    Outcome(String key) {
        this.key = key;
    }

    /** Its key in message bundles and JSON. */
    public String key() {
        return key;
    }
}
