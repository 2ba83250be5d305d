// SPDX-License-Identifier: EPL-2.0
/** Tests of the fault data. */
@NullMarked
package twinfeed.diagnosis.data;

import org.jspecify.annotations.NullMarked;
