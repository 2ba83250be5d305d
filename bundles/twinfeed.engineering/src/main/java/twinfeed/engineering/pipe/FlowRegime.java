// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.pipe;

/** How water flows in a pipe, by its Reynolds number. */
public enum FlowRegime {
    /** No flow. */
    STILL,
    /** Reynolds number below 2000. */
    LAMINAR,
    /** Reynolds number 2000 to 4000: no agreed law; the larger of laminar and turbulent friction is taken. */
    CRITICAL,
    /** Reynolds number above 4000. */
    TURBULENT
}
