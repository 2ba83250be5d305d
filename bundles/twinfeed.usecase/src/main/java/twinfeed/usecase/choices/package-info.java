// SPDX-License-Identifier: EPL-2.0
/**
 * What an estimator decides of a quote by hand. It is kept in the job, as the draft of its quote, and applied to whatever is worked out
 * anew, so that it survives every recalculation.
 */
@org.jspecify.annotations.NullMarked
package twinfeed.usecase.choices;
