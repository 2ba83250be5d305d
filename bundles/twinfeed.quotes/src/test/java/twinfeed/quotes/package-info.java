// SPDX-License-Identifier: EPL-2.0
/** Tests of the life of a quote. */
@org.jspecify.annotations.NullMarked
package twinfeed.quotes;
