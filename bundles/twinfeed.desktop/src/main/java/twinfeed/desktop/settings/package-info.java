// SPDX-License-Identifier: EPL-2.0
/** The page of settings: the firm, its texts, languages, folders and lists. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.settings;
