// SPDX-License-Identifier: EPL-2.0
/**
 * The faults calculator: from observations and dead-test readings to ranked parts, the next best step and what the readings say.
 *
 * <p>The inference is exported, for the use cases join it with what the calculators of the supplies found and with prices.
 */
@NullMarked
package twinfeed.calculator.faults;

import org.jspecify.annotations.NullMarked;
