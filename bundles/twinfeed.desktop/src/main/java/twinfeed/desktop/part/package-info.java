// SPDX-License-Identifier: EPL-2.0
/** The parts of the window: panes, fields, drawing. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.part;
