// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.data;

/** Where an observation is made. The order is the order of safety. */
public enum ObservationStage {
    /** The customer says it. */
    TOLD,
    /** Seen or measured with the cover on. */
    OUTSIDE,
    /** A dead test with the cover off; asks for a complete safe isolation. */
    COVER,
    /** Computed from the survey of the supplies; nobody is asked. */
    FEED;

    /** Whether it can be done without taking a cover off. */
    public boolean safe() {
        return this == TOLD || this == OUTSIDE;
    }
}
