// SPDX-License-Identifier: EPL-2.0
/** What the sheets have in common: styles, number formats, labels of readings, names of cells. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.sheet;
