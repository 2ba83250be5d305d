// SPDX-License-Identifier: EPL-2.0
/** Tests of the pressure calculator. */
@NullMarked
package twinfeed.calculator.pressure;

import org.jspecify.annotations.NullMarked;
