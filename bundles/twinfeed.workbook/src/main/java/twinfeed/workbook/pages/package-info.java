// SPDX-License-Identifier: EPL-2.0
/** The sheets of a quote's workbook, one class a sheet and its parts. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.pages;
