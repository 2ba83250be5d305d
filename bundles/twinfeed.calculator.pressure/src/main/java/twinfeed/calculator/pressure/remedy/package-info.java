// SPDX-License-Identifier: EPL-2.0
/** The work that can put a failing check right, as changes of a copy of the survey with the price-book items they need. */
@NullMarked
package twinfeed.calculator.pressure.remedy;

import org.jspecify.annotations.NullMarked;
