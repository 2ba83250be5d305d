// SPDX-License-Identifier: EPL-2.0
/** The calculations written down as on paper, in bar, L/min and mm. */
@NullMarked
package twinfeed.calculator.pressure.working;

import org.jspecify.annotations.NullMarked;
