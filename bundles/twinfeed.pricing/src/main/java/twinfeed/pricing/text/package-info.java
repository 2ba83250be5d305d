// SPDX-License-Identifier: EPL-2.0
/** Messages of the pricing bundle in the reader's language. */
@org.jspecify.annotations.NullMarked
package twinfeed.pricing.text;
