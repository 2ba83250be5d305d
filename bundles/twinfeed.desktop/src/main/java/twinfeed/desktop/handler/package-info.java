// SPDX-License-Identifier: EPL-2.0
/** What the menus and keys do. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.handler;
