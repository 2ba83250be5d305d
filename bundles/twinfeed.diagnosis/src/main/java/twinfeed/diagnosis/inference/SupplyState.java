// SPDX-License-Identifier: EPL-2.0
package twinfeed.diagnosis.inference;

import java.util.Optional;

/**
 * What the calculators of the two supplies found for the unit that is there; empty where they could not tell.
 *
 * @param marginFails whether the water feed's margin at the switch fails, with a tap open or shut
 * @param voltageLow whether the circuit takes more of the power than it may
 */
public record SupplyState(Optional<Boolean> marginFails, Optional<Boolean> voltageLow) {
    /** Nothing is known of them. */
    public static final SupplyState UNKNOWN = new SupplyState(Optional.empty(), Optional.empty());
}
