// SPDX-License-Identifier: EPL-2.0
/** The sheet of workings: inputs in named cells, everything else in live formulas. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.workings;
