// SPDX-License-Identifier: EPL-2.0
/** The editors of lists: price book and catalogue of heaters, entry by entry. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.entry;
