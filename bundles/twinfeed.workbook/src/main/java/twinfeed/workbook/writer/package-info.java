// SPDX-License-Identifier: EPL-2.0
/** How a workbook is written: cell styles, cells, page set-up, deterministic packing. Knows nothing of quotes. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.writer;
