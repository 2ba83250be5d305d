// SPDX-License-Identifier: EPL-2.0
/** Tests of the lines of workings. */
@NullMarked
package twinfeed.calculator.pressure.working;

import org.jspecify.annotations.NullMarked;
