// SPDX-License-Identifier: EPL-2.0
/** Keeps what calculators answered, by all that their answers follow from. */
@NullMarked
package twinfeed.calculator.cache;

import org.jspecify.annotations.NullMarked;
