// SPDX-License-Identifier: EPL-2.0
/** How sure findings are: the tolerances of the readings, sampled. */
@NullMarked
package twinfeed.calculator.sampling;

import org.jspecify.annotations.NullMarked;
