// SPDX-License-Identifier: EPL-2.0
package twinfeed.calculator;

import twinfeed.model.catalogue.Heater;

/**
 * A heater to be judged.
 *
 * @param heater its data
 * @param present whether it is the unit that is there now
 */
public record Candidate(Heater heater, boolean present) {}
