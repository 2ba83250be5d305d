// SPDX-License-Identifier: EPL-2.0
/** What the desktop remembers between two starts, and the demonstration that comes with it. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop;
