// SPDX-License-Identifier: EPL-2.0
/** The readings when the work is finished: entered, judged against their bands, and what follows from those that fail. */
@NullMarked
package twinfeed.diagnosis.completion;

import org.jspecify.annotations.NullMarked;
