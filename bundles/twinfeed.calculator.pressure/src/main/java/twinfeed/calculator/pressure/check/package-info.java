// SPDX-License-Identifier: EPL-2.0
/** The questions that are answered for a heater: what the feed leaves at its inlet and at its switch, what open taps do, and the water itself. */
@NullMarked
package twinfeed.calculator.pressure.check;

import org.jspecify.annotations.NullMarked;
