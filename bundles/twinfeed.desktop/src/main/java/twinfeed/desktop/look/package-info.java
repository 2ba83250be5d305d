// SPDX-License-Identifier: EPL-2.0
/** Colours and signs. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.look;
