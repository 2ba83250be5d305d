// SPDX-License-Identifier: EPL-2.0
package twinfeed.engineering.cable;

/** Whether a conductor that carries less than its capacity is taken to be cooler, and so of less resistance. */
public enum ConductorTemperature {
    /** Full temperature everywhere, Ct = 1: for checks against a limit. */
    FULL,
    /**
     * Ct by the current: for the power really delivered. Ct stays 1 where the segment lies in insulation or is behind a
     * rewirable fuse, and the ambient factor counts as at most 1, because the correction would claim too much there.
     */
    BY_CURRENT
}
