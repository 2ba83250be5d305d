// SPDX-License-Identifier: EPL-2.0
/** The drawing of the house: its two supplies piece by piece, with what was found at each. */
@org.jspecify.annotations.NullMarked
package twinfeed.document.drawing;
