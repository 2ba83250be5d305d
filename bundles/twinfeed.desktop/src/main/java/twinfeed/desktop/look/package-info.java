// SPDX-License-Identifier: EPL-2.0
/**
 * Colours, signs, and how tables, dialogues and texts look and answer alike everywhere.
 *
 * <p>More than twenty classes: each is one small habit of the toolkit that all parts share, and none belongs to fewer of them.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.look;
