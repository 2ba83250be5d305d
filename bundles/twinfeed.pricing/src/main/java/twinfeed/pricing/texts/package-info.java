// SPDX-License-Identifier: EPL-2.0
/** The standing texts of a quote, which a firm may word anew, and figures and days in a reader's style. */
@org.jspecify.annotations.NullMarked
package twinfeed.pricing.texts;
