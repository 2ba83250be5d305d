// SPDX-License-Identifier: EPL-2.0
/** Dead-test readings, each against the band in which a sound part reads. */
@NullMarked
package twinfeed.diagnosis.reading;

import org.jspecify.annotations.NullMarked;
