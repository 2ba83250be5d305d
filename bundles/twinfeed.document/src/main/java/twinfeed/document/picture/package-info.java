// SPDX-License-Identifier: EPL-2.0
/** Pictures of logos and surveys, made small and upright. */
@org.jspecify.annotations.NullMarked
package twinfeed.document.picture;
