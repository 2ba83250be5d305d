// SPDX-License-Identifier: EPL-2.0
/** The technician's job sheet. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.jobsheet;
