// SPDX-License-Identifier: EPL-2.0
/** Documents in open formats that other programs of an office take: a quote as UBL Quotation, a visit as iCalendar entry. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.interchange;
