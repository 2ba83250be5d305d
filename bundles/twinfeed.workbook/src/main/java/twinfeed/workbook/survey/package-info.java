// SPDX-License-Identifier: EPL-2.0
/** The record of the visit with its photos, and the sheet of sources. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.survey;
