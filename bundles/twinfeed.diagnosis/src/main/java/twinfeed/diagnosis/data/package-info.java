// SPDX-License-Identifier: EPL-2.0
/** The engineering judgement behind the diagnosis: parts, observations, likelihoods and limits, read from one editable file. */
@NullMarked
package twinfeed.diagnosis.data;

import org.jspecify.annotations.NullMarked;
