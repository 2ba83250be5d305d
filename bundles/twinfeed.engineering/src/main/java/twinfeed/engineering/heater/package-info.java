// SPDX-License-Identifier: EPL-2.0
/** The heater's own hydraulics: its pressure switch, and its throttle when a tap opens. */
@NullMarked
package twinfeed.engineering.heater;

import org.jspecify.annotations.NullMarked;
