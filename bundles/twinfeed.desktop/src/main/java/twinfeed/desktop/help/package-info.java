// SPDX-License-Identifier: EPL-2.0
/** One page for each check, made from what its calculator says of itself. */
@org.jspecify.annotations.NullMarked
package twinfeed.desktop.help;
