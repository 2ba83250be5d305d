// SPDX-License-Identifier: EPL-2.0
/** One visit: what was observed and measured goes in, the sheet of the fault finding comes out. */
@NullMarked
package twinfeed.diagnosis.visit;

import org.jspecify.annotations.NullMarked;
