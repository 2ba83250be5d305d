// SPDX-License-Identifier: EPL-2.0
/** Tests of the changes that work makes to a water supply. */
@NullMarked
package twinfeed.calculator.pressure.remedy;

import org.jspecify.annotations.NullMarked;
