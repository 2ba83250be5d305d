// SPDX-License-Identifier: EPL-2.0
/** Maximum demand of a house after diversity. */
@NullMarked
package twinfeed.engineering.demand;

import org.jspecify.annotations.NullMarked;
