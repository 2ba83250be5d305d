// SPDX-License-Identifier: EPL-2.0
/** Safe isolation: its procedure and the record of who did which step, and when. */
@NullMarked
package twinfeed.diagnosis.isolation;

import org.jspecify.annotations.NullMarked;
