// SPDX-License-Identifier: EPL-2.0
/** The survey as a workbook that is filled in on site and read back. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.form;
