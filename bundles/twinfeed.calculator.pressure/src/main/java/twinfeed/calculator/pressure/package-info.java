// SPDX-License-Identifier: EPL-2.0
/** The pressure calculator: what pressure the water supply leaves at a heater's inlet and at its switch. */
@NullMarked
package twinfeed.calculator.pressure;

import org.jspecify.annotations.NullMarked;
