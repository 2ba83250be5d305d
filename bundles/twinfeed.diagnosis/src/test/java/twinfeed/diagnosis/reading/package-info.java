// SPDX-License-Identifier: EPL-2.0
/** Tests of the dead-test readings. */
@NullMarked
package twinfeed.diagnosis.reading;

import org.jspecify.annotations.NullMarked;
