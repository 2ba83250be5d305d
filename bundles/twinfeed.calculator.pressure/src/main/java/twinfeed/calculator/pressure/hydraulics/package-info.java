// SPDX-License-Identifier: EPL-2.0
/** Flows and pressures of the feed and of a unit on it, in every condition of the year. */
@NullMarked
package twinfeed.calculator.pressure.hydraulics;

import org.jspecify.annotations.NullMarked;
