// SPDX-License-Identifier: EPL-2.0
/** A price book that is being changed: what is wrong in it, and how it is written. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.book;
