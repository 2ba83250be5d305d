// SPDX-License-Identifier: EPL-2.0
/** Tests of the readings when the work is finished. */
@NullMarked
package twinfeed.diagnosis.completion;

import org.jspecify.annotations.NullMarked;
