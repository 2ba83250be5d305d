// SPDX-License-Identifier: EPL-2.0
/**
 * What the menus and keys do.
 *
 * <p>More than twenty classes: e4 has one class for each command, and each is a few lines.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.handler;
