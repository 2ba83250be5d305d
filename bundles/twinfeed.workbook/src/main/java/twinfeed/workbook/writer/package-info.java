// SPDX-License-Identifier: EPL-2.0
/** The mechanics of a written book: looks, cells, page set-up, deterministic packing. Knows nothing of quotes. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.writer;
