// SPDX-License-Identifier: EPL-2.0
/** What a form asks in a house, page by page, made from the model itself: whoever prints or reads one asks the same. */
@org.jspecify.annotations.NullMarked
package twinfeed.model.form;
