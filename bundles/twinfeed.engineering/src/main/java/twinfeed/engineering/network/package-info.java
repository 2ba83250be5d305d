// SPDX-License-Identifier: EPL-2.0
/** The water supply of a house: the curve of the supply, branches, taps and the flows that balance in them. */
@NullMarked
package twinfeed.engineering.network;

import org.jspecify.annotations.NullMarked;
