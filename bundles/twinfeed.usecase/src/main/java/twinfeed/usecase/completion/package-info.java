// SPDX-License-Identifier: EPL-2.0
/** What is printed when the work is finished: record, page for the customer, notice of an unsafe unit, list of parts. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.completion;
