// SPDX-License-Identifier: EPL-2.0
package twinfeed.desktop.entry;

/**
 * What is to be said about an entry of a list.
 *
 * @param entry number of the entry, from 0; -1 for the list as a whole
 * @param field name of the value; empty for the entry as a whole
 * @param error whether the list cannot be used as long as it is so
 * @param text what is wrong and what would be right
 */
record EntryRemark(int entry, String field, boolean error, String text) {}
