// SPDX-License-Identifier: EPL-2.0
/** Pressure lost in pipes and fittings, and what flows out at the end of them. */
@NullMarked
package twinfeed.engineering.pipe;

import org.jspecify.annotations.NullMarked;
