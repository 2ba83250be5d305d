// SPDX-License-Identifier: EPL-2.0
/** The workbook of a batch: one table a sheet, written row by row. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.batch;
