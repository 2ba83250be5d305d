// SPDX-License-Identifier: EPL-2.0
/**
 * Many dwellings at once: a list of them, judged and priced row by row.
 *
 * <p>More than twenty classes: they read, order, store and print one list, are small, and nothing else uses them.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.batch;
