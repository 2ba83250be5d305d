// SPDX-License-Identifier: EPL-2.0
/**
 * The use cases: open a job, assess it, find the least costly work, price it, write the quote. Window and command line call only this bundle.
 *
 * <p>More than twenty classes: what a use case is asked with and what it answers is public here, the work behind it is hidden, and the
 * two are read together.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase;
