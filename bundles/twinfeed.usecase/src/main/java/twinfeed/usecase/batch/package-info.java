// SPDX-License-Identifier: EPL-2.0
/**
 * Many dwellings at once: a list of them, judged and priced row by row.
 *
 * <p>More than twenty classes: reading, order, store and sheets of one list, most of them small and none of use to anything else.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.batch;
