// SPDX-License-Identifier: EPL-2.0
package twinfeed.document.drawing;

/** What a piece of a supply is. */
public enum PieceKind {
    /** Where the water comes from, with the test of the supply. */
    MAIN,
    /** A pipe. */
    PIPE,
    /** A tap or an appliance on the shared part of the pipes. */
    TAP,
    /** The service fuse. */
    FUSE,
    /** What protects the circuit against overcurrent. */
    DEVICE,
    /** The residual-current device. */
    RCD,
    /** A piece of the cable. */
    CABLE,
    /** The local isolator. */
    ISOLATOR,
    /** The unit, where both supplies end. */
    UNIT
}
