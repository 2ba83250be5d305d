// SPDX-License-Identifier: EPL-2.0
/**
 * How sure findings are: the tolerances of the readings, sampled.
 *
 * <p>More than twenty classes: inputs, draws, responses and what is made of them hand one another types that nobody else sees.
 */
@NullMarked
package twinfeed.calculator.sampling;

import org.jspecify.annotations.NullMarked;
