// SPDX-License-Identifier: EPL-2.0
/** Tests of the faults calculator. */
@NullMarked
package twinfeed.calculator.faults;

import org.jspecify.annotations.NullMarked;
