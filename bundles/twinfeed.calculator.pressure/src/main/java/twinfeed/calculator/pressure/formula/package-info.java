// SPDX-License-Identifier: EPL-2.0
/** Functions for a quick question about a pipe, a supply, a network or a unit. */
@NullMarked
package twinfeed.calculator.pressure.formula;

import org.jspecify.annotations.NullMarked;
