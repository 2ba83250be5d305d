// SPDX-License-Identifier: EPL-2.0
/**
 * The parts of the window: panes, fields, drawing.
 *
 * <p>More than twenty classes: the panes of one job show the same session and one another's choices.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.part;
