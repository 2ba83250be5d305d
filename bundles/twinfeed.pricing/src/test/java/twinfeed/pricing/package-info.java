// SPDX-License-Identifier: EPL-2.0
/** Tests of pricing. */
@org.jspecify.annotations.NullMarked
package twinfeed.pricing;
