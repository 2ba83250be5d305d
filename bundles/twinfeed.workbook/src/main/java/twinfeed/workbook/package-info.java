// SPDX-License-Identifier: EPL-2.0
/**
 * Spreadsheets in and out: the quote's workbook, the workbook of a batch, and price lists.
 *
 * <p>Written books are deterministic to the byte, carry live formulas with their values beside them, and have no macros and no links
 * to other files. Text that a person typed is always a text cell.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook;
