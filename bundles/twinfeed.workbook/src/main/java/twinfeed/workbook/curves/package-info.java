// SPDX-License-Identifier: EPL-2.0
/** The sheet of curves with native charts. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.curves;
