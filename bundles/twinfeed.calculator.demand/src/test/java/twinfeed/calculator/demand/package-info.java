// SPDX-License-Identifier: EPL-2.0
/** Tests of the demand calculator. */
@org.jspecify.annotations.NullMarked
package twinfeed.calculator.demand;
