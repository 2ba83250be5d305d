// SPDX-License-Identifier: EPL-2.0
/** Properties of water, the heat that a flow takes up, and the temperature at which it comes in. */
@NullMarked
package twinfeed.engineering.water;

import org.jspecify.annotations.NullMarked;
