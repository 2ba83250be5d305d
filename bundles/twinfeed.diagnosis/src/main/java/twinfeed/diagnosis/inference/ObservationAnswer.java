// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

/**
 * An observation that was answered.
 *
 * @param key key of the observation
 * @param yes the answer
 * @param origin who answered: a person, a reading of the survey, or the calculators of the supplies
 */
public record ObservationAnswer(String key, boolean yes, Origin origin) {
    /** Who answered. */
    public enum Origin {
        /** A person. */
        SAID,
        /** A reading, by calculation. */
        READING,
        /** A finding about the supplies. */
        FEED
    }
}
