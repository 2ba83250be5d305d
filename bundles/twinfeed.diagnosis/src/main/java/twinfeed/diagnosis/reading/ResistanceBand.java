// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.reading;

/**
 * Where a sound part's resistance lies, the error of the meter counted.
 *
 * @param ratedOhm what the rating says, ohm, more than 0
 * @param leastOhm least, ohm
 * @param mostOhm most, ohm
 */
public record ResistanceBand(double ratedOhm, double leastOhm, double mostOhm) {
    /** Whether a reading lies in it. */
    public boolean holds(double readingOhm) {
        return readingOhm >= leastOhm && readingOhm <= mostOhm;
    }
}
