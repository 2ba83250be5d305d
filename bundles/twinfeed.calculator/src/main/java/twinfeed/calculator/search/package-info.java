// SPDX-License-Identifier: EPL-2.0
/** Finds the least costly set of remedial works with which a heater suits. */
@NullMarked
package twinfeed.calculator.search;

import org.jspecify.annotations.NullMarked;
