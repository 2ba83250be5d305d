// SPDX-License-Identifier: EPL-2.0
/** Messages and errors of this bundle. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.text;
