// SPDX-License-Identifier: EPL-2.0
/** Tests of messages. */
@org.jspecify.annotations.NullMarked
package twinfeed.pricing.text;
