// SPDX-License-Identifier: EPL-2.0
/** What the survey and the catalogue say of the water feed and of a unit, read once, in SI. */
@NullMarked
package twinfeed.calculator.pressure.survey;

import org.jspecify.annotations.NullMarked;
