// SPDX-License-Identifier: EPL-2.0
/** Curves and margins, drawn by our own code; nothing is computed but places on the screen. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.chart;
