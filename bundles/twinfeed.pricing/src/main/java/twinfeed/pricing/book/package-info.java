// SPDX-License-Identifier: EPL-2.0
/**
 * The price book: its columns, reading it from rows or from a CSV file with a report, and comparing two of them.
 *
 * <p>A book is read whole or not at all: one refused row refuses the book, and the report says what is wrong with every row.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.pricing.book;
