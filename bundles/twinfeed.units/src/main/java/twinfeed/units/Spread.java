// SPDX-License-Identifier: EPL-2.0
package twinfeed.units;

/** How the doubt of a reading is stated. */
enum Spread {
    /** Nothing is said. */
    NONE,
    /** A half-width: the value lies within it, any place as likely as any other. */
    RECTANGULAR,
    /** A standard uncertainty of a normal distribution. */
    NORMAL
}
