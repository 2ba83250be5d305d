// SPDX-License-Identifier: EPL-2.0
/** Tests of price books. */
@org.jspecify.annotations.NullMarked
package twinfeed.pricing.book;
