// SPDX-License-Identifier: EPL-2.0
/** The use cases: open a job, assess it, find the least costly work, price it, write the quote. The faces call only this. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase;
