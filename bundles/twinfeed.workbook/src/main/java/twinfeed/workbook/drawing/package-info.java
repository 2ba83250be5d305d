// SPDX-License-Identifier: EPL-2.0
/** The sheet with the drawing of the house. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.drawing;
