// SPDX-License-Identifier: EPL-2.0
/** The sheets of the quote itself: the customer's page and its items. */
@org.jspecify.annotations.NullMarked
package twinfeed.workbook.quote;
