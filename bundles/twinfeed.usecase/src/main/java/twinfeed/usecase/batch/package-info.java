// SPDX-License-Identifier: EPL-2.0
/** Many dwellings at once: a list of them, judged and priced row by row. */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.batch;
