// SPDX-License-Identifier: EPL-2.0
/** The drawing of the feeds and the charts as pictures in files: SVG, which prints at any size, and PNG. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.picture;
