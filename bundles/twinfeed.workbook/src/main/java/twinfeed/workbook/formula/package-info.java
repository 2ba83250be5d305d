// SPDX-License-Identifier: EPL-2.0
/** Expressions of workings as spreadsheet formulas. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.formula;
