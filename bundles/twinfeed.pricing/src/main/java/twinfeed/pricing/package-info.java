// SPDX-License-Identifier: EPL-2.0
/**
 * From an assessment and a price book to a quote: required items, lines, labour, tax, rounding, contingency, discounts and payments.
 *
 * <p>Money is never a {@code double}. Every line is rounded half up to the currency's smallest unit, and every total is the sum
 * of what is printed.
 *
 * <p>More than twenty classes: the steps from required items to lines to totals hand one another types that nobody else sees.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.pricing;
