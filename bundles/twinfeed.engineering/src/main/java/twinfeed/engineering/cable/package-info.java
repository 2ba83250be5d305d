// SPDX-License-Identifier: EPL-2.0
/** Cables and what protects them: capacity, voltage drop, loop impedance and disconnection. */
@NullMarked
package twinfeed.engineering.cable;

import org.jspecify.annotations.NullMarked;
