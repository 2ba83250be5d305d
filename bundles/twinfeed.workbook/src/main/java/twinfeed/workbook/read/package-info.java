// SPDX-License-Identifier: EPL-2.0
/** Reading of sheets row by row, with bounded memory, whatever the file holds. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.read;
