// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.numeric;

/**
 * Why a question has no number for an answer, or why an argument was refused.
 *
 * <p>The names are stable keys: user interfaces look up their text by them.
 */
public enum FailureReason {
    /** An argument is NaN or infinite, or so large that the result (then the argument is called "result") would be. */
    NOT_FINITE,
    /** An argument is below zero where only zero and above has a meaning. */
    NEGATIVE,
    /** An argument is zero or below where only a positive value has a meaning. */
    NOT_POSITIVE,
    /** An argument lies outside the range that the function states. */
    OUTSIDE_RANGE,
    /** A temperature or enthalpy lies outside liquid water from 0 to 100 degC. */
    OUTSIDE_WATER_RANGE,
    /** The target outlet temperature is at or below the intake temperature. */
    NO_HEATING_NEEDED,
    /** There is no power, so no flow reaches the target outlet temperature. */
    NO_POWER,
    /** The outlet would pass 100 degC, where this model of liquid water ends: the cut-out must have opened before. */
    ABOVE_100_DEGC,
    /** In a two-point test the running pressure is at or above the static pressure. */
    RUNNING_NOT_BELOW_STATIC,
    /** A flow that must be positive is zero or below. */
    FLOW_NOT_POSITIVE,
    /** The supply cannot give what was asked at any flow. */
    SUPPLY_TOO_WEAK,
    /** The pressure asked for is already missed with no other draw-off at all. */
    BELOW_WITHOUT_DRAW_OFF,
    /** No draw-off, however large, brings the pressure down to the value asked for. */
    NEVER_REACHED,
    /** Nothing resists the flow, so no flow belongs to a pressure. */
    NO_RESISTANCE,
    /** The heating chamber stays above the switch pressure at any flow, down to none. */
    HELD_BY_HEIGHT,
    /** The strainer and the solenoid valve take all pressure before the switch. */
    ALL_PRESSURE_LOST,
    /** The device's rating is above the capacity of the cable, so the cable is not protected at any load. */
    DEVICE_ABOVE_CAPACITY,
    /** The limit is used up before the first metre of cable. */
    NO_LENGTH_LEFT,
    /** A disconnection faster than 0.1 s: the device's let-through energy is needed instead of current and time. */
    LET_THROUGH_NEEDED,
    /** A current below the time/current characteristic of a fuse, which then blows too late or not at all. */
    FUSE_TOO_SLOW,
    /** A conductor does not stand even the shortest fault of a fuse. */
    CONDUCTOR_TOO_THIN,
    /** A function has the same sign at both ends of the bracket. */
    NO_SIGN_CHANGE
}
