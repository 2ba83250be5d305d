// SPDX-License-Identifier: EPL-2.0
/** Tests of the job sheet. */
@NullMarked
package twinfeed.usecase.faults;

import org.jspecify.annotations.NullMarked;
