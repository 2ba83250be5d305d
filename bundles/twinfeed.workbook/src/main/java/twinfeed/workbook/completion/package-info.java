// SPDX-License-Identifier: EPL-2.0
/** The readings to take after the work, with the bands in which they are accepted. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.completion;
