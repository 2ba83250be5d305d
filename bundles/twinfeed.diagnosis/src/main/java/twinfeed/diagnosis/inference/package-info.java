// SPDX-License-Identifier: EPL-2.0
/** From observations to ranked parts and the next best step, by Bayes' rule. */
@NullMarked
package twinfeed.diagnosis.inference;

import org.jspecify.annotations.NullMarked;
